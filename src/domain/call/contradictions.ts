// long because each contradiction is a few lines and they are read side by side
/** Answers that cannot both be so, to be asked about at once. How far apart is too far: common practice, no source [CP]. */
import { bowSpeed } from '../../core/bow/bow-speed'
import type { BowSpeed } from '../../core/bow/bow-speed'
import { type Mass, grains, inFeetPerSecond, inGrains, inInches } from '../../core/quantity'
import type { Rules } from '../shop/rules'
import type { Answers } from './answers'
import type { CallBow } from './call-bow'
import type { Contradiction } from './contradiction'
import { daysBetween } from './days-after'
import type { FullDrawTold } from './full-draw-told'
import type { ShipDates } from './ship-dates'
import { toldNumber, toldPairs, toldText } from './told'

export interface Weighed {
  readonly rules: Rules
  readonly today: string
  readonly bow: CallBow
  readonly at: FullDrawTold
  readonly working: Mass | undefined
  readonly speed: BowSpeed | undefined
  readonly front: Mass | undefined
  readonly ship: ShipDates | undefined
  readonly limits: readonly ShaftLimit[]
}

/** A shaft on the shelf of a spine that is called for, with its maker's limits. */
export interface ShaftLimit {
  readonly name: string
  readonly maxDrawWeightLb: number | undefined
  readonly maxFrontWeightGr: number | undefined
}

const MARKS_APART = 0.5 // in
const TOO_LONG = 4 // in past where the shaft front belongs
const OFF_LABEL = 0.05 // of the label
const NOCK = 0.55 // in, throat to shaft rear

type Check = (answers: Answers, weighed: Weighed) => readonly Contradiction[]

const marks: Check = (answers, { at }) => {
  const drawIn = toldNumber(answers, 'drawLengthIn')
  const markIn = toldNumber(answers, 'markAtRestIn')
  if (drawIn === undefined || markIn === undefined) return []
  const expectedIn = inInches(at.restEstimate)
  const allowed = at.restIsTold ? MARKS_APART : 2 * MARKS_APART
  return Math.abs(markIn - expectedIn) > allowed
    ? [{ code: 'marks against draw length', markIn, expectedIn, drawIn, questions: ['markAtRestIn', 'drawLengthIn'] }]
    : []
}

const present: Check = (answers, { at, rules }) => {
  const drawIn = toldNumber(answers, 'drawLengthIn')
  const presentIn = toldNumber(answers, 'presentLengthIn')
  if (drawIn === undefined || presentIn === undefined || !at.places.ok) return []
  const restIn = inInches(at.places.value.rest.at)
  const needed = restIn + rules.clearance.frontAheadOfRestIn
  const questions = ['presentLengthIn', 'drawLengthIn', 'markAtRestIn'] as const
  if (presentIn + NOCK < needed) return [{ code: 'present arrow short', presentIn, drawIn, restIn, questions }]
  return presentIn > needed + TOO_LONG ? [{ code: 'present arrow long', presentIn, drawIn, questions }] : []
}

const riser: Check = (answers) => {
  const [rest, front] = [toldNumber(answers, 'markAtRestIn'), toldNumber(answers, 'markAtRiserIn')]
  const [restAhead, frontAhead] = [
    toldNumber(answers, 'restAheadOfPivotIn'),
    toldNumber(answers, 'riserFrontAheadOfPivotIn'),
  ]
  if (rest === undefined || front === undefined || restAhead === undefined || frontAhead === undefined) return []
  const [apartIn, toldIn] = [front - rest, frontAhead - restAhead]
  return Math.abs(apartIn - toldIn) > MARKS_APART
    ? [
        {
          code: 'riser marks disagree',
          apartIn,
          toldIn,
          questions: ['markAtRestIn', 'markAtRiserIn', 'restAheadOfPivotIn', 'riserFrontAheadOfPivotIn'],
        },
      ]
    : []
}

const moduleMark: Check = (answers) => {
  const drawIn = toldNumber(answers, 'drawLengthIn')
  const markIn = Number((toldText(answers, 'moduleMark') ?? '').replace(',', '.'))
  const isLength = markIn >= 18 && markIn <= 36
  return drawIn !== undefined && isLength && Math.abs(markIn - drawIn) > MARKS_APART
    ? [{ code: 'module against draw length', markIn, drawIn, questions: ['moduleMark', 'drawLengthIn'] }]
    : []
}

const label: Check = (answers) => {
  const [peakLb, labelLb] = [toldNumber(answers, 'peakDrawWeightLb'), toldNumber(answers, 'labelDrawWeightLb')]
  if (peakLb === undefined || labelLb === undefined) return []
  const off = peakLb / labelLb - 1
  return Math.abs(off) > OFF_LABEL
    ? [
        {
          code: 'draw weight off label',
          peakLb,
          labelLb,
          percent: Math.abs(off) * 100,
          questions: ['peakDrawWeightLb', 'labelDrawWeightLb'],
        },
      ]
    : []
}

/** Whether the bow, at its rating, could have shot what the chronograph says. */
const rating: Check = (answers, { bow }) => {
  const rated = toldNumber(answers, 'ratedSpeedFps')
  const readings = toldPairs(answers, 'chronograph')
  if (rated === undefined || bow.peak === undefined || toldNumber(answers, 'drawLengthIn') === undefined) return []
  return readings
    .flatMap(([arrowGr, readFps]): readonly Contradiction[] => {
      const outcome = bowSpeed(grains(arrowGr), { ...bow.known, chronograph: [], forceDraw: [] })
      if (!outcome.ok) return []
      const [lowFps, highFps] = [inFeetPerSecond(outcome.value.speed.low), inFeetPerSecond(outcome.value.speed.high)]
      return readFps < lowFps || readFps > highFps
        ? [
            {
              code: 'rating against chronograph',
              arrowGr,
              readFps,
              lowFps,
              highFps,
              questions: ['ratedSpeedFps', 'chronograph'],
            },
          ]
        : []
    })
    .slice(0, 1)
}

const falling: Check = (answers) => {
  const sorted = toldPairs(answers, 'chronograph').toSorted((a, b) => a[0] - b[0])
  const at = sorted.findIndex((heavy, i) => i > 0 && heavy[0] > sorted[i - 1]![0] && heavy[1] >= sorted[i - 1]![1])
  return at > 0
    ? [{ code: 'heavier is faster', light: sorted[at - 1]!, heavy: sorted[at]!, questions: ['chronograph'] }]
    : []
}

const date: Check = (answers, { ship, today, rules }) => {
  const travelOn = toldText(answers, 'travelOn')
  if (travelOn === undefined) return []
  if (travelOn < today) return [{ code: 'travel is past', travelOn, today, questions: ['travelOn'] }]
  if (ship === undefined || ship.arrivesOn <= travelOn) return []
  const days = daysBetween(travelOn, ship.arrivesOn)
  return [
    {
      code: 'arrives too late',
      arrivesOn: ship.arrivesOn,
      travelOn,
      cureDays: rules.cureDays,
      days,
      questions: ['travelOn', 'rush'],
    },
  ]
}

const bevel: Check = (answers) => {
  const [hand, side] = [toldText(answers, 'bevelHand'), toldText(answers, 'fletchSide')]
  const isSingle = hand === 'right' || hand === 'left'
  return isSingle && (side === 'right' || side === 'left') && hand !== side
    ? [{ code: 'bevel against fletch', bevel: hand, side, questions: ['bevelHand', 'fletchSide'] }]
    : []
}

const limits: Check = (answers, { limits: shafts, front }) => {
  const peakLb = toldNumber(answers, 'peakDrawWeightLb') ?? toldNumber(answers, 'labelDrawWeightLb')
  const names = shafts.map(({ name }) => name)
  const greatestLb = Math.max(...shafts.map((shaft) => shaft.maxDrawWeightLb ?? Infinity))
  const greatestGr = Math.max(...shafts.map((shaft) => shaft.maxFrontWeightGr ?? Infinity))
  const frontGr = front === undefined ? undefined : inGrains(front)
  return [
    ...(shafts.length > 0 && peakLb !== undefined && peakLb > greatestLb
      ? [
          {
            code: 'no shaft for the draw weight' as const,
            peakLb,
            greatestLb,
            names,
            questions: ['peakDrawWeightLb' as const],
          },
        ]
      : []),
    ...(shafts.length > 0 && frontGr !== undefined && frontGr > greatestGr
      ? [
          {
            code: 'no shaft for the front weight' as const,
            frontGr,
            greatestGr,
            names,
            questions: ['wishWeightGr' as const],
          },
        ]
      : []),
  ]
}

const wishes: Check = (answers, { rules, working, speed, front }) => {
  const wishGr = toldNumber(answers, 'wishWeightGr')
  const guideGr = toldNumber(answers, 'guideLeastGr')
  const peakLb = toldNumber(answers, 'peakDrawWeightLb') ?? toldNumber(answers, 'labelDrawWeightLb')
  const leastGr = peakLb === undefined ? 0 : peakLb * rules.leastGrainsPerLb
  const wishFps = toldNumber(answers, 'wishSpeedFps')
  const highFps = speed === undefined ? undefined : inFeetPerSecond(speed.speed.high)
  const headGr = toldNumber(answers, 'headWeightGr')
  const frontGr = front === undefined ? undefined : inGrains(front)
  const found: Contradiction[] = []
  if (wishGr !== undefined && guideGr !== undefined && wishGr < guideGr)
    found.push({ code: 'wish under the guide', wishGr, guideGr, questions: ['wishWeightGr', 'guideLeastGr'] })
  if (wishGr !== undefined && wishGr < leastGr)
    found.push({
      code: 'wish under the floor',
      wishGr,
      leastGr,
      perLbGr: rules.leastGrainsPerLb,
      questions: ['wishWeightGr', 'peakDrawWeightLb'],
    })
  if (wishFps !== undefined && highFps !== undefined && working !== undefined && wishFps > highFps)
    found.push({
      code: 'speed out of reach',
      wishFps,
      lowFps: inFeetPerSecond(speed!.speed.low),
      highFps,
      workingGr: inGrains(working),
      questions: ['wishSpeedFps', 'wishWeightGr'],
    })
  if (headGr !== undefined && frontGr !== undefined && headGr > frontGr)
    found.push({ code: 'head heavier than the front', headGr, frontGr, questions: ['headWeightGr', 'wishWeightGr'] })
  return found
}

const presentFront: Check = (answers) => {
  const [frontGr, presentGr] = [toldNumber(answers, 'presentFrontGr'), toldNumber(answers, 'presentWeightGr')]
  return frontGr !== undefined && presentGr !== undefined && frontGr >= presentGr
    ? [{ code: 'present front too heavy', frontGr, presentGr, questions: ['presentFrontGr', 'presentWeightGr'] }]
    : []
}

const CHECKS: readonly Check[] = [
  marks,
  present,
  riser,
  moduleMark,
  label,
  rating,
  falling,
  date,
  bevel,
  limits,
  wishes,
  presentFront,
]

export const contradictions = (answers: Answers, weighed: Weighed): readonly Contradiction[] =>
  CHECKS.flatMap((check) => check(answers, weighed))
