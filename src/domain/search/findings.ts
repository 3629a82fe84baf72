/** What a search has to say beside, or instead of, its arrows. Data; the sentences stand in ui/words/findings. */
import type { Id } from '../records/scalars'
import type { Axis } from './axes'
import type { WishName } from './wish-names'

export type SearchFinding =
  /** A figure of the wish is no sensible number. */
  | { readonly code: 'wish-not-a-number'; readonly wish: WishName; readonly at: number }
  | {
      readonly code: 'wish-out-of-range'
      readonly wish: WishName
      readonly at: number
      readonly min: number
      readonly max: number
    }
  | { readonly code: 'window-empty'; readonly wish: WishName; readonly min: number; readonly max: number }
  | { readonly code: 'too-many-combinations'; readonly combinations: number; readonly most: number }
  /** Nothing on the shelf for a place that must be filled. */
  | {
      readonly code: 'nothing-for-axis'
      readonly axis: Axis
      readonly onShelf: number
      readonly short: number
      readonly unfit: number
    }
  /** Left out because too few are free for the whole set. */
  | {
      readonly code: 'short-of-stock'
      readonly axis: Axis
      readonly part: Id
      readonly lot: Id | null
      readonly free: number
      readonly needed: number
    }
  /** Left out because the maker's limit of draw weight is below the bow's. */
  | { readonly code: 'draw-above-shaft-limit'; readonly part: Id; readonly limitLb: number; readonly drawLb: number }
  /** Left out because a bevel and the fletch turn the arrow opposite ways. */
  | {
      readonly code: 'bevel-against-fletch'
      readonly part: Id
      readonly bevel: 'right' | 'left'
      readonly fletch: 'right' | 'left'
    }
  /** The raw shaft cannot be cut to the longest length asked for; shorter ones may do. */
  | { readonly code: 'raw-shaft-too-short'; readonly part: Id; readonly rawLengthIn: number; readonly c2cIn: number }
  /** Every nock holds the shaft's rear end ahead of where the vanes' tails are planned. */
  | { readonly code: 'vanes-behind-shaft'; readonly vaneTailIn: number; readonly standoutIn: number }
  /** Parts there are, but no two that go together. */
  | { readonly code: 'nothing-goes-together'; readonly first: Axis; readonly second: Axis }
  | { readonly code: 'reserve-not-judged' }
  /** Even the lightest, or heaviest, arrow these parts make is on the wrong side of the target. */
  | { readonly code: 'target-below-all'; readonly targetGr: number; readonly lightestGr: number }
  | { readonly code: 'target-above-all'; readonly targetGr: number; readonly heaviestGr: number }
  | { readonly code: 'nothing-fits'; readonly combinations: number; readonly misses: number }
  | { readonly code: 'fewer-than-asked'; readonly found: number; readonly asked: number }
