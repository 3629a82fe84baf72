/**
 * What the answers so far imply, all at once and from nothing but what is handed in: the same answers give the same
 * figures on the page, in a test and headless. Useful from two answers on; what is assumed is marked in each working.
 */
import { type Mass, type Length, grainsPerInch, inGrains, inInches, inches } from '../../core/quantity'
import type { Rules } from '../shop/rules'
import type { Shelf } from '../stock/shelf'
import { partsOfKind } from '../stock/shelf'
import type { Answers } from './answers'
import { callBow } from './call-bow'
import type { Contradiction } from './contradiction'
import { contradictions } from './contradictions'
import type { FlightFollows } from './flight-follows'
import { flightFollows } from './flight-follows'
import type { Follows } from './follows'
import { figure, needs, valueIn } from './follows'
import { fullDrawTold } from './full-draw-told'
import type { LawRow } from './law-rows'
import { lawRows } from './law-rows'
import type { SensibleWeight } from './sensible-weight'
import { sensibleWeight } from './sensible-weight'
import type { ShipDates } from './ship-dates'
import { shipDates } from './ship-dates'
import type { ShortestCut } from './shortest-cut'
import { NOCK_STANDOUT, shortestCut } from './shortest-cut'
import type { CalledFor, LongestCut, ShaftOnShelf } from './stiffness-follows'
import { calledFor, longestCut, reserveBand, stiffnessQuestion } from './stiffness-follows'
import type { StockReach } from './stock-reach'
import { stockReach } from './stock-reach'
import type { TestKitReason } from './test-kit-advice'
import { isTestKitAdvisable, testKitReasons } from './test-kit-advice'
import { toldText } from './told'

export interface Implications {
  readonly weight: Follows<SensibleWeight>
  readonly flight: FlightFollows
  readonly spine: Follows<CalledFor>
  readonly shortest: Follows<ShortestCut>
  readonly longest: Follows<LongestCut>
  readonly reach: Follows<StockReach>
  readonly testKit: { readonly isAdvisable: boolean; readonly reasons: readonly TestKitReason[] }
  readonly ship: Follows<ShipDates>
  readonly law: readonly LawRow[]
  readonly contradictions: readonly Contradiction[]
  /** Throat to shaft front as the arrow is likely to be cut. */
  readonly likelyLength: Length
}

const CUT_STEP = 0.25 // in; a likely cut is the shortest, rounded up to what a saw stop is set to

/** @param today an ISO day, handed in */
export function implications(answers: Answers, rules: Rules, shelf: Shelf, today: string): Implications {
  const bow = callBow(answers)
  const at = fullDrawTold(answers, bow)
  const weight = sensibleWeight(answers, rules)
  const flight = flightFollows(bow, weight)
  const working: Mass | undefined = valueIn(weight)?.working
  const shortest =
    at.isTold || bow.peak !== undefined
      ? figure(shortestCut(at, rules, toldText(answers, 'headKind') !== 'field point'))
      : needs('drawLengthIn', 'markAtRestIn')
  const likelyLength = likely(valueIn(shortest)?.c2c)
  const shafts = partsOfKind(shelf, 'shaft').filter(({ body }) => !body.discontinued)
  const onShelf: readonly ShaftOnShelf[] = shafts.map(({ body }) => ({
    name: body.name,
    spine: inches(body.staticSpineIn),
    weightPerLength: grainsPerInch(body.weightPerInchGr),
    rawLength: inches(body.rawLengthIn),
  }))

  const isLengthTold = at.isTold
  const question = stiffnessQuestion(bow, weight, flight.speed, reserveBand(answers, bow, rules), likelyLength, {
    'arrow length': isLengthTold ? { origin: 'computed' } : { origin: 'assumed', ref: 'CP' },
  })
  const spine = 'kind' in question ? question : calledFor(question)
  const called = valueIn(spine)
  const longest =
    'kind' in question || called === undefined ? (spine as Follows<never>) : longestCut(question, called, onShelf)
  const inRange = called === undefined ? [] : shafts.filter(({ body }) => isWithin(called, inches(body.staticSpineIn)))
  const speed = valueIn(flight.speed)
  const ship = figure(shipDates(answers, rules, today))
  const reasons = testKitReasons(answers, {
    workingGr: working === undefined ? undefined : inGrains(working),
    speed,
    called,
    shafts: onShelf,
  })
  return {
    weight,
    flight,
    spine,
    shortest,
    longest,
    reach: stockReach(
      answers,
      shelf,
      inInches(likelyLength) - inInches(NOCK_STANDOUT),
      called && { stiffest: inInches(called.stiffest), softest: inInches(called.softest) },
    ),
    testKit: { isAdvisable: isTestKitAdvisable(reasons), reasons },
    ship,
    law: lawRows(answers, rules, {
      arrowGr: working === undefined ? null : inGrains(working),
      arrowIn: shortest.kind === 'figure' ? inInches(likelyLength) : null,
    }),
    contradictions: contradictions(answers, {
      rules,
      today,
      bow,
      at,
      working,
      speed,
      front: called?.front,
      ship: valueIn(ship),
      limits: inRange.map(({ body }) => ({
        name: body.name,
        maxDrawWeightLb: body.maxDrawWeightLb,
        maxFrontWeightGr: body.maxFrontWeightGr,
      })),
    }),
    likelyLength,
  }
}

const isWithin = ({ stiffest, softest }: CalledFor, spine: Length) => spine >= stiffest && spine <= softest

const TYPICAL_C2C = inches(28) // common practice, no source [CP]

function likely(shortest: Length | undefined): Length {
  const c2c = shortest === undefined ? inInches(TYPICAL_C2C) : Math.ceil(inInches(shortest) / CUT_STEP) * CUT_STEP
  return inches(c2c + inInches(NOCK_STANDOUT))
}
