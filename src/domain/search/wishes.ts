/** What is asked of an arrow, and what is known of the bow and the shop. Grains, inches, percent. */
import type { Id } from '../records/scalars'
import type { PartKind } from '../stock/part'
import type { Axis, Without } from './axes'
import type { StockItem } from './stock-item'

/** A figure must lie from `min` to `max`; among those that do, the nearer to `aim` the better. */
export interface Wish {
  readonly min: number
  readonly max: number
  /** Left out: anywhere in the window is as good. */
  readonly aim?: number
  /** What counts as one step away. */
  readonly tolerance: number
}

export interface AxisWish {
  /** Left out: every kind of the axis. */
  readonly kinds?: readonly PartKind[]
  /** Only these parts, and where a lot is named only that lot. */
  readonly only?: readonly { readonly part: Id; readonly lot?: Id | null }[]
  readonly without?: Without
  /** How many pieces an arrow takes: vanes, stacked rear weights. */
  readonly counts?: readonly number[]
}

export interface Wishes {
  readonly targetGr: number
  readonly toleranceGr: number
  /** Grains planned over the target, to be trimmed off the post. */
  readonly overGr: { readonly min: number; readonly max: number }
  /** Arrows to build, spares included. */
  readonly quantity: number
  readonly c2cIn: { readonly min: number; readonly max: number; readonly step: number; readonly aim?: number }
  /** Percent. */
  readonly foc?: Wish
  readonly reserve?: Wish
  /** Least reach from the throat: of the shaft front, and of the rear of a broadhead's blades. */
  readonly clearance?: { readonly frontIn: number; readonly bladesIn: number }
  /** Least chance that every arrow of the set can be brought to the target. */
  readonly leastChance?: number
  readonly axes?: Readonly<Partial<Record<Axis, AxisWish>>>
  /** How many arrows to return. */
  readonly most: number
}

export type Joint = 'vanes' | 'post' | 'collar'
/** Expected glue of one joint, and its scatter from arrow to arrow and of what all joints share, 1 s.d. */
export interface JointGlue {
  readonly gr: number
  readonly ownSdGr: number
  readonly sharedSdGr: number
}

export interface SearchProblem {
  readonly stock: readonly StockItem[]
  readonly wishes: Wishes
  /** Left out: nothing is known of the bow, and the reserve is not judged. */
  readonly launch?: { readonly peakDrawLb: number; readonly virtualMassGr: number }
  readonly build: {
    readonly vaneTailIn: number
    readonly fletchSide: 'right' | 'left' | 'straight'
    readonly frontPoint: 'shaft front' | 'outsert shoulder'
  }
  /** What the glue in use leaves at each kind of joint; a fletch counts as one. */
  readonly joints: Readonly<Partial<Record<Joint, JointGlue>>>
  readonly shop: { readonly kerfIn: number; readonly chamferMm: number }
}
