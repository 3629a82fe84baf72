import { grains, type Mass, type Ratio, ratio } from '../quantity'

export interface TypicalSpread {
  /** Standard deviation of one piece of any lot about the catalogue's figure. */
  readonly sd: Mass
  /** Which share of that variance is piece to piece within a lot; the rest is lot to lot. */
  readonly ownShare: Ratio
}

/**
 * Where nothing tells the two apart: a lot's mean strays from the catalogue half as far as its pieces stray from each
 * other, variances 1 : 4.
 */
export const USUAL_OWN_SHARE = ratio(0.8)

const shaft = (withinGr: number, betweenGr: number): TypicalSpread => ({
  sd: grains(Math.hypot(withinGr, betweenGr)),
  ownShare: ratio(withinGr ** 2 / (withinGr ** 2 + betweenGr ** 2)),
})
const usual = (gr: number): TypicalSpread => ({ sd: grains(gr), ownShare: USUAL_OWN_SHARE })

/** Usual scatter of a part's weight where the catalogue gives no tolerance: common practice, no source [CP]. */
export const TYPICAL_SPREAD = {
  'matched shaft': shaft(1, 4),
  'unsorted shaft': shaft(2.5, 4),
  vane: usual(0.1), // four together 0.2
  nock: usual(0.1),
  'lighted nock': usual(0.4),
  wrap: usual(0.2),
  insert: usual(0.4),
  collar: usual(0.2),
  broadhead: usual(1),
  'field point': usual(0.7),
} as const satisfies Record<string, TypicalSpread>

/** Usual glue of a joint, a whole fletch counting as one: common practice, no source [CP]. */
export const TYPICAL_GLUE = {
  vanes: { nominal: grains(1.2), ...usual(0.25) },
  post: { nominal: grains(1.8), ...usual(0.4) },
  collar: { nominal: grains(0.8), ...usual(0.25) },
} as const
