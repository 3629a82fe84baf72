import type { Density, Length } from '../quantity'

/** A straight stretch of a post or of a rear weight stacked on it. */
export interface PostSection {
  readonly name: string
  readonly length: Length
  readonly outerDiameter: Length
  /** 0 for a solid one. */
  readonly bore: Length
  readonly density: Density
  /** Whether it is glued to the shaft; a stacked rear weight is not. */
  readonly bonded: boolean
}

/** What stands behind the shoulder: sections from the rear, where it is trimmed, forward. */
export interface Post {
  readonly sections: readonly PostSection[]
  /** The bond that must stay. */
  readonly leastBond: Length
}
