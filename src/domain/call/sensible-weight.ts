/**
 * Which finished weight is sensible: the shop's own rule for the quarry, raised by what the guide, the place and the bow's
 * draw weight demand, beside what the client wishes. The working weight is the one every other figure is made for.
 */
import { type Outcome, known, term } from '../../core/outcome'
import type { Term } from '../../core/outcome'
import { type Mass, grains, scaled } from '../../core/quantity'
import type { Rules } from '../shop/rules'
import type { Answers } from './answers'
import type { Follows } from './follows'
import { figure, needs } from './follows'
import { placeRules, quarryRule } from './rules-that-fit'
import { toldNumber, toldText } from './told'

export type WeightReason =
  | { readonly kind: 'quarry'; readonly name: string; readonly minGr: number; readonly maxGr: number }
  | { readonly kind: 'guide'; readonly leastGr: number }
  | { readonly kind: 'place'; readonly place: string; readonly instrument: string; readonly leastGr: number }
  | { readonly kind: 'draw weight'; readonly leastGr: number; readonly perLbGr: number; readonly peakLb: number }
  | { readonly kind: 'wish'; readonly gr: number; readonly is: 'inside' | 'light' | 'heavy' }

export interface SensibleWeight {
  readonly low: Mass
  readonly high: Mass
  readonly working: Mass
  /** Whose number the working weight is. */
  readonly workingFrom: 'wish' | 'middle' | 'least'
  readonly reasons: readonly WeightReason[]
}

const STEP = 5 // gr; a middle is rounded to what people say

export function sensibleWeight(answers: Answers, rules: Rules): Follows<SensibleWeight> {
  const quarry = quarryRule(rules, toldText(answers, 'quarry'))
  const wishGr = toldNumber(answers, 'wishWeightGr')
  const floors = demands(answers, rules)
  const least = Math.max(0, ...floors.map((floor) => floor.leastGr))
  if (quarry === undefined && wishGr === undefined && toldNumber(answers, 'guideLeastGr') === undefined) {
    const said = toldText(answers, 'quarry')?.trim() ?? ''
    if (said === '') return needs('quarry', 'wishWeightGr', 'guideLeastGr')
    return { kind: 'needs', anyOf: ['wishWeightGr', 'guideLeastGr'], noRuleFor: said }
  }
  const base = quarry ?? { minGr: wishGr ?? least, maxGr: wishGr ?? least }
  const low = Math.max(base.minGr, least)
  const high = Math.max(base.maxGr, low)
  const middle = Math.min(high, Math.max(low, Math.round((low + high) / 2 / STEP) * STEP))
  const workingFrom = wishGr !== undefined ? 'wish' : low === high ? 'least' : 'middle'
  const reasons: readonly WeightReason[] = [
    ...(quarry === undefined ? [] : [{ kind: 'quarry' as const, ...quarry }]),
    ...floors,
    ...(wishGr === undefined
      ? []
      : [
          {
            kind: 'wish' as const,
            gr: wishGr,
            is: wishGr < low ? ('light' as const) : wishGr > high ? ('heavy' as const) : ('inside' as const),
          },
        ]),
  ]
  return figure(answered(grains(low), grains(high), grains(wishGr ?? middle), workingFrom, reasons))
}

/** What nobody may go below, each with who says so. */
function demands(answers: Answers, rules: Rules) {
  const guide = toldNumber(answers, 'guideLeastGr')
  const peakLb = toldNumber(answers, 'peakDrawWeightLb') ?? toldNumber(answers, 'labelDrawWeightLb')
  const perLbGr = rules.leastGrainsPerLb
  const places = placeRules(rules, toldText(answers, 'place'), toldText(answers, 'quarry')).flatMap((row) => {
    const perLb = row.leastArrowPerLbGr === undefined || peakLb === undefined ? 0 : row.leastArrowPerLbGr * peakLb
    const leastGr = Math.max(row.leastArrowGr ?? 0, perLb)
    return leastGr === 0 ? [] : [{ kind: 'place' as const, place: row.place, instrument: row.instrument, leastGr }]
  })
  return [
    ...(guide === undefined ? [] : [{ kind: 'guide' as const, leastGr: guide }]),
    ...places,
    ...(peakLb === undefined ? [] : [{ kind: 'draw weight' as const, leastGr: perLbGr * peakLb, perLbGr, peakLb }]),
  ]
}

function answered(
  low: Mass,
  high: Mass,
  working: Mass,
  workingFrom: SensibleWeight['workingFrom'],
  reasons: readonly WeightReason[],
): Outcome<SensibleWeight> {
  const value: SensibleWeight = { low, high, working, workingFrom, reasons }
  return known(value, {
    equation:
      'low = greatest of the rule’s low end and every demand; high = the rule’s high end, or low where that is more',
    inputs: reasons.flatMap(termsOf),
    result: [term('lightest', low, 'gr'), term('heaviest', high, 'gr'), term('working weight', working, 'gr')],
    source: ['CP'],
    ...(workingFrom === 'middle' ? { note: 'Worked with: the middle, to 5 gr, until the client names a weight.' } : {}),
  })
}

function termsOf(reason: WeightReason): readonly Term[] {
  switch (reason.kind) {
    case 'quarry':
      return [
        term(`low end for ${reason.name}`, grains(reason.minGr), 'gr', 'shop rule'),
        term(`high end for ${reason.name}`, grains(reason.maxGr), 'gr', 'shop rule'),
      ]
    case 'guide':
      return [term('demanded by the guide', grains(reason.leastGr), 'gr', 'answered')]
    case 'place':
      return [term(`demanded in ${reason.place}`, grains(reason.leastGr), 'gr', 'shop rule', reason.instrument)]
    case 'draw weight':
      return [term('least for the draw weight', scaled(grains(reason.perLbGr), reason.peakLb), 'gr', 'shop rule')]
    case 'wish':
      return [term('wished for', grains(reason.gr), 'gr', 'answered')]
  }
}
