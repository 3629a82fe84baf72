/** What adds up over the parts of a group, whatever they are. Plain numbers: gr, gr², cents. */
import type { Option } from './options'
import type { Joint, JointGlue, SearchProblem } from './wishes'

export interface Sums {
  readonly weightGr: number
  /** Variances: each arrow's own, and what the set shares. Different lots err independently. */
  readonly ownVar: number
  readonly sharedVar: number
  /** How many more such arrows the stock would be enough for: the scarcest part decides. */
  readonly spare: number
  readonly priceCents: number
}

const NO_GLUE: JointGlue = { gr: 0, ownSdGr: 0, sharedSdGr: 0 }

/** Glue that a joint takes, where there is the joint. */
export const glueOf = ({ joints }: SearchProblem, joint: Joint, isThere: boolean): JointGlue =>
  (isThere ? joints[joint] : undefined) ?? NO_GLUE

export function sumsOf(options: readonly (Option | undefined)[], glue: readonly JointGlue[] = []): Sums {
  const used = options.filter((option) => option !== undefined)
  const total = (of: (option: Option) => number) => used.reduce((sum, option) => sum + of(option), 0)
  return {
    weightGr: total((o) => o.weightGr) + glue.reduce((sum, { gr }) => sum + gr, 0),
    ownVar: total((o) => o.ownVar) + glue.reduce((sum, { ownSdGr }) => sum + ownSdGr ** 2, 0),
    sharedVar: total((o) => o.sharedVar) + glue.reduce((sum, { sharedSdGr }) => sum + sharedSdGr ** 2, 0),
    spare: used.reduce((least, { spare }) => Math.min(least, spare), Infinity),
    priceCents: total((o) => o.priceCents),
  }
}
