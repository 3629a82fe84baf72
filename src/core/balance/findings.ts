import type { Length, Ratio } from '../quantity'

/**
 * The length was read to the tip of the head, where [F1435] ends it at the shaft front. `foc` is what the right length
 * gives; without the head's length there is none.
 */
export interface LengthToHeadTip {
  readonly code: 'length-to-head-tip'
  readonly length: Length
  readonly focAsRead: Ratio
  readonly foc?: Ratio
}

/** The balance point on the knife and the one worked out from the parts lie further apart than both can be wrong. */
export interface BalanceDisagrees {
  readonly code: 'balance-disagrees'
  readonly measured: Length
  readonly computed: Length
  /** How far apart they may be, 95 %. */
  readonly allowed: Length
}

export type BalanceFinding = LengthToHeadTip | BalanceDisagrees
