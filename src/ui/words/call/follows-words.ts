/** What stands under each figure that follows from the call: why it is so, what is assumed, what it still needs. */
import type { Term } from '../../../core/outcome'
import type { BowSpeed } from '../../../core/bow/bow-speed'
import { inGrains, inInches } from '../../../core/quantity'
import type { LawCheck } from '../../../domain/call/law-rows'
import type { QuestionId } from '../../../domain/call/questions'
import type { SensibleWeight, WeightReason } from '../../../domain/call/sensible-weight'
import type { ShortestCut } from '../../../domain/call/shortest-cut'
import type { CalledFor, LongestCut } from '../../../domain/call/stiffness-follows'
import type { StockReach } from '../../../domain/call/stock-reach'
import type { TestKitReason } from '../../../domain/call/test-kit-advice'
import { showDay } from '../dates'
import { counted, showIn, showNumber, showPlain } from '../format'
import { termValue } from '../working-words'
import { QUESTION_WORDS } from './question-words'

const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1)
const gr = (n: number) => showNumber(n, 0)

/** `needs the quarry, or the finished weight`. */
export function needsWords(anyOf: readonly QuestionId[], noRuleFor?: string): string {
  const names = anyOf.map((id) => lower(QUESTION_WORDS[id].label))
  if (names.length === 0) return 'no parts on the shelf yet'
  const needed = `needs ${names.join(', or ')}`
  return noRuleFor === undefined ? needed : `the shop has no weights for “${noRuleFor}”: add them in Shop, or ${needed}`
}

function reasonWords(reason: WeightReason): string {
  switch (reason.kind) {
    case 'quarry':
      return `the shop’s rule for ${reason.name}`
    case 'guide':
      return `the guide asks for ${gr(reason.leastGr)}`
    case 'place':
      return `${reason.place} asks for ${gr(reason.leastGr)}`
    case 'draw weight':
      return `never below ${gr(reason.leastGr)} for ${showPlain(reason.peakLb)} lb`
    case 'wish':
      return `client asks for ${gr(reason.gr)}${reason.is === 'inside' ? '' : `, ${reason.is} for that`}`
  }
}
export const weightWords = ({ reasons }: SensibleWeight): string => reasons.map(reasonWords).join('; ')

const PROVENANCE: Readonly<Record<BowSpeed['provenance'], string>> = {
  chronograph: 'from his chronograph',
  'one weight': 'from one chronograph weight',
  'force-draw curve': 'from the force-draw curve',
  rating: 'from the rating',
}
export const speedWords = ({ provenance }: BowSpeed): string => PROVENANCE[provenance]

export const calledForWords = ({ length, front }: CalledFor): string =>
  `at ${showNumber(inInches(length), 1)} in with ${gr(inGrains(front))} gr in front`

export function shortestWords({ by, isEstimated }: ShortestCut): string {
  const sets =
    by === 'rest' ? 'shaft front clear of the rest' : `blades clear of the ${by === 'hand' ? 'hand' : 'riser'}`
  return isEstimated ? `${sets}, estimated until the full-draw marks are known` : `${sets}, by the marks`
}

const ENDS: Readonly<Record<LongestCut['endsBy'], string>> = {
  stiffness: 'until it is too soft',
  'raw length': 'all of its raw length',
  'front weight': 'until too little weight is left in front',
}
export const longestWords = ({ shaft, isAssumed, endsBy }: LongestCut): string =>
  `${isAssumed ? 'a shaft from the middle of the range' : shaft.name}, ${ENDS[endsBy]}`

export function reachWords({ missing }: StockReach): string {
  return missing.length === 0
    ? 'lightest and heaviest of each kind, before fit is asked'
    : `no ${missing.join(', no ')} on the shelf`
}

export function kitReasonWords(reason: TestKitReason): string {
  switch (reason.kind) {
    case 'speed not measured':
      return 'the speed is not measured'
    case 'fingers':
      return 'he looses with the fingers'
    case 'short of centre':
      return 'the bow is cut short of centre'
    case 'tunes badly':
      return `his arrow ${reason.how}`
    case 'far from what is shot':
      return `${gr(reason.workingGr)} gr is far from the ${gr(reason.presentGr)} he shoots`
    case 'several spines fit':
      return `more than one shaft fits: ${reason.names.join(', ')}`
  }
}

export function toSpareWords(travelOn: string, days: number): string {
  const day = showDay(travelOn)
  if (days < 0) return `travel ${day}: ${counted(-days, 'day')} too late`
  return `travel ${day}: ${counted(days, 'day')} to spare after transit`
}

/** `draw length 29 in, rated speed 325 ft/s`. */
export const assumedWords = (terms: readonly Term[]): string =>
  terms.map((term) => `${term.name} ${termValue({ ...term, value: toSay(term.value) })}`).join(', ')

/** An assumption needs no more places than a builder measures. */
const toSay = (n: number) => (Math.abs(n) < 1 ? n : Math.round(n * 100) / 100)

const MEETS: Readonly<Record<LawCheck['meets'], string>> = {
  meets: 'meets it',
  'does not meet': 'does not meet it',
  'not known': 'not known yet',
}
/** `draw weight 50 lb or more: 72 lb meets it`. */
export function lawCheckWords({ what, least, unit, value, meets }: LawCheck): string {
  const has = value === null ? '' : `${showIn(Math.round(value * 100) / 100, unit, decimalsOf(value))} `
  return `${what} ${showPlain(least)}${showIn(0, unit, 0).slice(1)} or more: ${has}${MEETS[meets]}`
}
const decimalsOf = (n: number) => (Number.isInteger(n) ? 0 : 2)
