/**
 * The shop's own rules: tolerances, reserve bands, clearances, scales, jigs, prices, place rules. A sheet copies the rules
 * it stands on, so a changed rule never changes an old record. Defaults: common practice, no source [CP].
 */
import * as z from 'zod/mini'
import { step, DEFAULT_ROUTE } from '../bench/route'
import { amount, count, day, line, positive } from '../records/scalars'

const band = z.strictObject({ min: amount, max: positive })

export const placeRule = z.strictObject({
  place: line,
  game: line,
  instrument: line,
  readOn: day,
  leastDrawWeightLb: z.optional(amount),
  leastArrowGr: z.optional(amount),
  leastArrowPerLbGr: z.optional(amount),
  leastArrowLengthIn: z.optional(amount),
  leastHeadWidthIn: z.optional(amount),
  note: z.optional(line),
})

export const rules = z.strictObject({
  shopName: line,
  builders: z.array(line).check(z.maxLength(30)),
  units: z.enum(['trade', 'metric']),
  /** Grains either side of the finished target that still count as on the number. */
  toleranceGr: positive,
  setSpreadGr: positive,
  focTolerancePoints: positive,
  reserve: z.strictObject({ compound: band, recurve: band, longbow: band, fingers: band }),
  leastGrainsPerLb: positive,
  planOverGr: z.strictObject({ min: amount, max: amount }),
  runOut: z.strictObject({
    shaftIn: positive,
    cutIn: positive,
    cutStopIn: positive,
    finishedIn: positive,
    broadheadIn: positive,
  }),
  squarenessIn: positive,
  cutSdIn: positive,
  kerfIn: amount,
  chamferMm: amount,
  passes: z.strictObject({ lightGr: positive, usualGr: positive, heavyGr: positive }),
  clearance: z.strictObject({
    frontAheadOfRestIn: amount,
    bladesAheadOfRiserIn: amount,
    bladesOffRiserIn: amount,
    vaneOffCableIn: amount,
    vaneTailIn: amount,
  }),
  scales: z
    .array(
      z.strictObject({
        name: line,
        resolutionGr: positive,
        capacityGr: positive,
        calibrationGr: amount,
        checkWeightGr: z.optional(positive),
      }),
    )
    .check(z.maxLength(10)),
  jigs: z.array(line).check(z.maxLength(20)),
  /** How far from the throat the clamp of the jig reaches; absent: {@link USUAL_CLAMP_IN}. */
  clampIn: z.optional(positive),
  /** Hours and days that the date promise is made of. */
  benchDays: count,
  /** Bench days of an order that is let past the others; absent: no faster. */
  rushBenchDays: z.optional(count),
  cureDays: count,
  transitDays: count,
  currency: line,
  prices: z.strictObject({
    perArrowCents: count,
    indexingCents: count,
    testKitCents: count,
    rushCents: count,
    depositPercent: amount,
    taxPercent: amount,
  }),
  /** Sensible finished weights by quarry, as the shop sees it. */
  quarry: z.array(z.strictObject({ name: line, minGr: positive, maxGr: positive })).check(z.maxLength(60)),
  places: z.array(placeRule).check(z.maxLength(200)),
  route: z.array(step).check(z.maxLength(40)),
})
export type Rules = z.infer<typeof rules>

/** Reach of a common jig's clamp, common practice, no source [CP]. */
export const USUAL_CLAMP_IN = 6.5

/** What an empty shop starts with; each figure is common practice [CP] and the shop's to change. */
export const DEFAULT_RULES: Rules = {
  shopName: 'My shop',
  builders: ['Builder'],
  units: 'trade',
  toleranceGr: 0.5,
  setSpreadGr: 1,
  focTolerancePoints: 0.2,
  reserve: {
    compound: { min: 0.75, max: 1.3 },
    recurve: { min: 0.75, max: 1.3 },
    longbow: { min: 0.75, max: 1.3 },
    fingers: { min: 0.6, max: 1.1 },
  },
  leastGrainsPerLb: 5,
  planOverGr: { min: 6, max: 9 },
  runOut: { shaftIn: 0.003, cutIn: 0.003, cutStopIn: 0.005, finishedIn: 0.006, broadheadIn: 0.01 },
  squarenessIn: 0.002,
  cutSdIn: 0.01,
  kerfIn: 0.04,
  chamferMm: 0.5,
  passes: { lightGr: 0.6, usualGr: 1.2, heavyGr: 3 },
  clearance: {
    frontAheadOfRestIn: 1,
    bladesAheadOfRiserIn: 0.75,
    bladesOffRiserIn: 0.25,
    vaneOffCableIn: 0.12,
    vaneTailIn: 0.8,
  },
  scales: [{ name: 'Scale 1', resolutionGr: 0.1, capacityGr: 1500, calibrationGr: 0.1 }],
  jigs: ['Jig 1'],
  benchDays: 3,
  rushBenchDays: 1,
  cureDays: 7,
  transitDays: 5,
  currency: 'USD',
  prices: { perArrowCents: 0, indexingCents: 0, testKitCents: 0, rushCents: 0, depositPercent: 50, taxPercent: 0 },
  quarry: [
    { name: 'deer', minGr: 450, maxGr: 650 },
    { name: 'elk', minGr: 550, maxGr: 750 },
    { name: 'moose', minGr: 600, maxGr: 800 },
    { name: 'bison', minGr: 750, maxGr: 950 },
    { name: 'buffalo', minGr: 850, maxGr: 1100 },
    { name: 'elephant', minGr: 1000, maxGr: 1200 },
  ],
  places: [],
  route: [...DEFAULT_ROUTE],
}
