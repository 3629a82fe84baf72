/** The place's rows, each demand beside what the call knows. Guidance only: the law of the place is with its authority. */
import type { Unit } from '../../core/quantity'
import type { Rules } from '../shop/rules'
import type { Answers } from './answers'
import { placeRules } from './rules-that-fit'
import { toldNumber, toldText } from './told'

export interface LawCheck {
  readonly what: 'draw weight' | 'arrow weight' | 'grains per pound' | 'arrow length' | 'head width'
  readonly least: number
  readonly unit: Unit
  readonly value: number | null
  readonly meets: 'meets' | 'does not meet' | 'not known'
}
export interface LawRow {
  readonly rule: Rules['places'][number]
  readonly checks: readonly LawCheck[]
}

export interface LawFacts {
  /** The finished weight worked with, gr. */
  readonly arrowGr: number | null
  /** Throat to shaft front as it is likely to be cut, in. */
  readonly arrowIn: number | null
}

export function lawRows(answers: Answers, rules: Rules, { arrowGr, arrowIn }: LawFacts): readonly LawRow[] {
  const peak = toldNumber(answers, 'peakDrawWeightLb') ?? toldNumber(answers, 'labelDrawWeightLb') ?? null
  const perLb = arrowGr === null || peak === null ? null : arrowGr / peak
  const width = toldNumber(answers, 'cuttingWidthIn') ?? null
  return placeRules(rules, toldText(answers, 'place'), toldText(answers, 'quarry')).map((rule) => ({
    rule,
    checks: [
      ...check('draw weight', rule.leastDrawWeightLb, 'lbf', peak),
      ...check('arrow weight', rule.leastArrowGr, 'gr', arrowGr),
      ...check('grains per pound', rule.leastArrowPerLbGr, 'gr/lb', perLb),
      ...check('arrow length', rule.leastArrowLengthIn, 'in', arrowIn),
      ...check('head width', rule.leastHeadWidthIn, 'in', width),
    ],
  }))
}

function check(
  what: LawCheck['what'],
  least: number | undefined,
  unit: Unit,
  value: number | null,
): readonly LawCheck[] {
  if (least === undefined) return []
  return [
    { what, least, unit, value, meets: value === null ? 'not known' : value >= least ? 'meets' : 'does not meet' },
  ]
}
