/**
 * Slips at the scale that are asked about, never refused: grams for grains, a decimal point misplaced, the last arrow's
 * weight still showing, a tare gone wrong, parts that do not add up to the whole. Common practice, no source [CP].
 */
import { UNITS } from '../../core/quantity'
import { isWithin } from './limits'
import type { Limit } from './limits'

export type Slip =
  | { readonly code: 'grams-for-grains'; readonly value: number; readonly expected: number; readonly meant: number }
  | { readonly code: 'decimal-moved'; readonly value: number; readonly expected: number; readonly meant: number }
  | { readonly code: 'same-as-last'; readonly value: number; readonly no: number }
  | { readonly code: 'negative'; readonly value: number }
  /** As good as nothing on the scale. */
  | { readonly code: 'nothing-on-it'; readonly value: number }
  /** Far off what the others of its kind weigh: kept if it is meant, never dropped. */
  | { readonly code: 'unlike-the-others'; readonly value: number; readonly expected: number; readonly by: number }
  /** Not what its own raw weight and the cut make it: another shaft, or another length. */
  | { readonly code: 'unlike-its-raw'; readonly value: number; readonly expected: number; readonly by: number }
  /** It landed when it was weighed wet, and glue loses nothing as it cures: rather the scale has wandered. */
  | { readonly code: 'off-since-wet'; readonly value: number; readonly wet: number }
  /** Heavier after a pass than before it: water on it, or a draught, or another arrow. */
  | { readonly code: 'gained'; readonly value: number; readonly was: number; readonly by: number }
  /** Lighter by more than a pass takes: another arrow, a piece left off, or a post still hot and lifting the pan. */
  | { readonly code: 'lost-much'; readonly value: number; readonly was: number; readonly by: number }
  | { readonly code: 'does-not-add-up'; readonly value: number; readonly expected: number; readonly by: number }

export interface Expectation {
  readonly value: number
  /** Half the width of the 95 % band about it, in the same unit. */
  readonly half: number
  /** What the expectation is made of, when it is a sum of weighed parts. */
  readonly closure: boolean
  /** It stands on what this very piece weighed before it was cut. */
  readonly fromRaw?: true
}

/** The same arrow before the last pass at the grinder. */
export interface BeforePass {
  readonly was: number
  /** A heavy pass of this shop, gr. */
  readonly heavyGr: number
}

/** An arrow that was on its number wet. */
export interface LandedWet {
  readonly wet: number
  readonly limit: Limit
}

export interface BeforeIt {
  readonly no: number
  readonly value: number
}

const GRAINS_PER_GRAM = UNITS.g.si / UNITS.gr.si
const LEAST_PART = 0.5 // gr; nothing that is weighed at the bench is lighter [CP]
const NEAR = 0.04 // share of the ratio: wider than any part's scatter, narrower than the gap to the next likely slip
const isNear = (value: number, wanted: number) => Math.abs(value / wanted - 1) <= NEAR
const UNLIKE = 2 // half widths of the 95 % band, about four standard deviations
const CLOSURE_LEAST = 0.6 // gr: six steps of a 0.1 gr scale over several weighings

const GAINED = 0.25 // gr: two readings of a 0.1 gr scale differ by less, 2·√2·0.07
const MOST_PASSES = 3 // heavy ones, between two weighings

/** What else is known of a reading before it is taken. */
export interface Before {
  readonly expected?: Expectation | undefined
  readonly last?: BeforeIt | undefined
  readonly landed?: LandedWet | undefined
  readonly pass?: BeforePass | undefined
}

/**
 * @param value in the point's own unit
 * @param expected what the forecast said, or undefined where nothing is expected
 * @param last the arrow read just before at the same point
 * @param landed how it weighed wet, when that was on its number
 * @param pass how it weighed before the pass
 */
export function slipsOf(value: number, unit: string, { expected, last, landed, pass }: Before): readonly Slip[] {
  if (value < 0) return [{ code: 'negative', value }]
  if (unit === 'gr' && value < LEAST_PART) return [{ code: 'nothing-on-it', value }]
  const slips: Slip[] = []
  if (expected !== undefined && expected.value > 0 && value > 0) {
    const { value: wanted, half } = expected
    const ratio = wanted / value
    if (unit === 'gr' && isNear(ratio, GRAINS_PER_GRAM)) {
      slips.push({ code: 'grams-for-grains', value, expected: wanted, meant: value * GRAINS_PER_GRAM })
    } else if (isNear(ratio, 10) || isNear(ratio, 0.1)) {
      slips.push({ code: 'decimal-moved', value, expected: wanted, meant: ratio > 1 ? value * 10 : value / 10 })
    } else if (expected.closure && Math.abs(value - wanted) > Math.max(CLOSURE_LEAST, 2 * half)) {
      slips.push({ code: 'does-not-add-up', value, expected: wanted, by: value - wanted })
    } else if (
      unit === 'gr' &&
      !expected.closure &&
      Math.abs(value - wanted) > Math.max(CLOSURE_LEAST, UNLIKE * half)
    ) {
      const code = expected.fromRaw ? 'unlike-its-raw' : 'unlike-the-others'
      slips.push({ code, value, expected: wanted, by: value - wanted })
    }
  }
  if (slips.length === 0 && pass !== undefined) {
    const by = value - pass.was
    if (by > GAINED) slips.push({ code: 'gained', value, was: pass.was, by })
    else if (-by > MOST_PASSES * pass.heavyGr) slips.push({ code: 'lost-much', value, was: pass.was, by: -by })
  }
  if (slips.length === 0 && landed !== undefined && !isWithin(value, landed.limit)) {
    slips.push({ code: 'off-since-wet', value, wet: landed.wet })
  }
  if (unit === 'gr' && last !== undefined && last.value === value) {
    slips.push({ code: 'same-as-last', value, no: last.no })
  }
  return slips
}
