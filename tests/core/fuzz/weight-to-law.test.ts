// long because each function has its row
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Arrow } from '@/core/arrow/arrow'
import { balanceCheck } from '@/core/balance/balance-check'
import { balanceForFoc } from '@/core/balance/balance-for-foc'
import { balancePoint } from '@/core/balance/balance-point'
import { balanceUncertainty } from '@/core/balance/balance-uncertainty'
import { foc } from '@/core/balance/foc'
import { focClass } from '@/core/balance/foc-class'
import { measuredFoc } from '@/core/balance/measured-foc'
import { cureProgress } from '@/core/cure/cure-progress'
import { cureTimes } from '@/core/cure/cure-times'
import { lawCheck } from '@/core/law/law-check'
import { PLACE_RULES } from '@/core/law/place-rules'
import type { Outcome } from '@/core/outcome'
import {
  celsius,
  grains,
  gramsPerCubicCentimetre,
  hours,
  inches,
  millimetres,
  newtonSquareMetres,
  poundsForce,
  ratio,
} from '@/core/quantity'
import { capability } from '@/core/statistics/capability'
import { controlLimits } from '@/core/statistics/control-limits'
import { setStatistics } from '@/core/statistics/set-statistics'
import { chamferWeight } from '@/core/trim/chamfer-weight'
import { gapGlue } from '@/core/trim/gap-glue'
import { glueToLand } from '@/core/trim/glue-to-land'
import { mends } from '@/core/trim/mends'
import { neededTrim } from '@/core/trim/needed-trim'
import { nextPass } from '@/core/trim/next-pass'
import { passRemoval, STEEL_PASSES } from '@/core/trim/pass-removal'
import { planTrim } from '@/core/trim/plan-trim'
import { trimLength } from '@/core/trim/trim-length'
import { weightPerLength } from '@/core/trim/weight-per-length'
import { chanceAllReach } from '@/core/weight/chance-all-reach'
import { chanceToReach } from '@/core/weight/chance-to-reach'
import { cutWeight } from '@/core/weight/cut-weight'
import { forecastSet } from '@/core/weight/forecast-set'
import { forecastWeight } from '@/core/weight/forecast-weight'
import { glueByDifference } from '@/core/weight/glue-by-difference'
import { lessHead } from '@/core/weight/less-head'
import { predictedPart } from '@/core/weight/predicted-part'
import { readingSurprise } from '@/core/weight/reading-surprise'
import { readingUncertainty } from '@/core/weight/reading-uncertainty'
import { scaleCheck } from '@/core/weight/scale-check'
import { scaleError } from '@/core/weight/scale-error'
import { toleranceUncertainty } from '@/core/weight/tolerance-uncertainty'
import { anyNumber, expectHonest } from '@tests/support/honest'

/** Takes the next number of a run, the first again when they are used up. */
type Take = () => number
const uncertain = (n: Take) => ({ value: grains(n()), sd: grains(n()) })
const many = <T>(n: Take, make: () => T): T[] => Array.from({ length: Math.trunc(Math.abs(n())) % 4 || 0 }, make)

const item = (n: Take) => ({
  name: 'part',
  kind: 'expected' as const,
  mean: grains(n()),
  ownSd: grains(n()),
  sharedSd: grains(n()),
  ...(n() > 1 ? { sharedKey: 'lot' } : {}),
  ...(n() > 1 ? { degrees: n() } : {}),
  origin: 'given' as const,
})
const forecast = (n: Take) => {
  const [value, sd, own] = [grains(n()), grains(n()), grains(n())]
  return {
    total: { value, sd, low: value, high: value },
    ownSd: own,
    sharedSd: sd,
    sharedBy: many(n, () => ({ key: `lot ${n() > 1 ? 1 : 2}`, sd: grains(n()) })),
    read: value,
    expected: value,
  }
}
const landing = (n: Take) => ({ target: grains(n()), tolerance: grains(n()), trimmable: grains(n()) })
const arrow = (n: Take): Arrow => ({
  length: inches(n()),
  shaft: { mass: grains(n()), rear: inches(n()), rigidity: newtonSquareMetres(n()) },
  pieces: many(n, () => ({ name: 'part', mass: grains(n()), from: inches(n()), to: inches(n()) })),
})
const section = (n: Take) => ({
  name: 'post',
  length: millimetres(n()),
  outerDiameter: millimetres(n()),
  bore: millimetres(n()),
  density: gramsPerCubicCentimetre(n()),
  bonded: n() > 1,
})
const post = (n: Take) => ({ sections: many(n, () => section(n)), leastBond: millimetres(n()) })
const glue = (n: Take) => ({
  handle: hours(n()),
  shoot: hours(n()),
  full: hours(n()),
  at: celsius(n()),
  least: celsius(n()),
  most: celsius(n()),
})
const inch = (n: Take) => ({ value: inches(n()), sd: inches(n()) })
const read = (n: Take) => ({ value: inches(n()), step: inches(n()) })

/** Wild only now and then: three lengths that must fit each other seldom do by chance. */
const inchesOr = (tame: number, n: Take) => inches(n() > 0 ? tame : n())

const MODELS: Readonly<Record<string, (n: Take) => Outcome<unknown>>> = {
  readingUncertainty: (n) => readingUncertainty(grains(n())),
  toleranceUncertainty: (n) => toleranceUncertainty(grains(n())),
  scaleError: (n) =>
    scaleError(
      { step: grains(n()), repeatability: grains(n()), calibration: grains(n()), driftPerHour: grains(n()) },
      hours(n()),
    ),
  scaleCheck: (n) =>
    scaleCheck(
      many(n, () => grains(n())),
      grains(n()),
      grains(n()),
      grains(n()),
    ),
  cutWeight: (n) =>
    cutWeight(
      { mean: grains(n()), ownSd: grains(n()), sharedSd: grains(n()), length: inchesOr(33, n), sd: inchesOr(0.04, n) },
      { length: inchesOr(28.5, n), sd: inchesOr(0.01, n) },
      { mean: grains(n()), ownSd: grains(n()), sharedSd: grains(n()) },
      ratio(n()),
    ),
  predictedPart: (n) =>
    predictedPart(
      { nominal: grains(n()), tolerance: grains(n()), ...(n() > 1 ? { ownShare: ratio(n()) } : {}) },
      many(n, () => ({ mass: grains(n()), pieces: n() })),
    ),
  readingSurprise: (n) => {
    const [value, sd] = [grains(n()), grains(n())]
    const degrees = n() > 500 ? { degrees: 12.5 } : {}
    return readingSurprise(grains(n()), {
      estimate: { value, sd, low: value, high: value },
      ownSd: sd,
      sharedSd: sd,
      pieces: 1,
      ...degrees,
    })
  },
  glueByDifference: (n) =>
    glueByDifference(
      grains(n()),
      many(n, () => grains(n())),
    ),
  lessHead: (n) =>
    lessHead(
      grains(n()),
      many(n, () => grains(n())),
    ),
  forecastWeight: (n) => forecastWeight(many(n, () => item(n))),
  forecastSet: (n) => forecastSet(many(n, () => many(n, () => item(n)))),
  chanceToReach: (n) => chanceToReach(forecast(n), landing(n)),
  chanceAllReach: (n) => chanceAllReach(many(n, () => ({ forecast: forecast(n), landing: landing(n) }))),
  balancePoint: (n) => balancePoint(arrow(n)),
  balanceUncertainty: (n) => {
    const given = arrow(n)
    return balanceUncertainty(given, {
      shaft: grains(n()),
      pieces: given.pieces.map(() => grains(n())),
      place: inches(n()),
    })
  },
  foc: (n) => foc(inches(n()), inches(n())),
  balanceForFoc: (n) => balanceForFoc(ratio(n()), inches(n())),
  focClass: (n) => focClass(ratio(n())),
  measuredFoc: (n) =>
    measuredFoc({
      balance: read(n),
      length: read(n),
      frontPoint: n() > 1 ? 'head tip' : 'shaft front',
      ...(n() > 1 ? { headAhead: inches(n()) } : {}),
    }),
  balanceCheck: (n) => balanceCheck(inch(n), inch(n)),
  weightPerLength: (n) => weightPerLength(section(n)),
  trimLength: (n) => trimLength(grains(n()), post(n)),
  chamferWeight: (n) => chamferWeight(millimetres(n()), section(n)),
  planTrim: (n) => planTrim(grains(n()), post(n), millimetres(n())),
  gapGlue: (n) => gapGlue(millimetres(n()), millimetres(n()), millimetres(n()), gramsPerCubicCentimetre(n())),
  neededTrim: (n) => neededTrim(uncertain(n), uncertain(n), grains(n())),
  passRemoval: (n) => passRemoval(gramsPerCubicCentimetre(n())),
  glueToLand: (n) =>
    glueToLand({
      needed: grains(n()),
      on: n() > 1 ? grains(n()) : undefined,
      usual: uncertain(n),
      tolerance: grains(n()),
    }),
  nextPass: (n) =>
    nextPass(
      { remaining: uncertain(n), chamfer: grains(n()), tolerance: grains(n()), available: grains(n()) },
      { ...STEEL_PASSES, usual: { mean: grains(n()), sd: grains(n()) } },
    ),
  mends: (n) =>
    mends({ arrow: arrow(n), short: grains(n()), tolerance: grains(n()), trimmable: grains(n()), fixed: [] }, [
      { kind: 'longer shaft', name: 'longer', change: { does: 'lengthen', by: inches(n()) } },
      {
        kind: 'collar',
        name: 'collar',
        change: { does: 'add', piece: { name: 'collar', mass: grains(n()), from: inches(n()), to: inches(n()) } },
      },
    ]),
  setStatistics: (n) =>
    setStatistics(
      many(n, () => grains(n())),
      'gr',
      grains(n()),
    ),
  capability: (n) =>
    capability({ mean: grains(n()), sd: grains(n()), count: n(), lower: grains(n()), upper: grains(n()) }, 'gr'),
  controlLimits: (n) =>
    controlLimits(
      many(n, () => grains(n())),
      'gr',
    ),
  cureTimes: (n) => cureTimes(glue(n), celsius(n()), hours(n())),
  cureProgress: (n) =>
    cureProgress(
      glue(n),
      many(n, () => ({ temperature: celsius(n()), lasted: hours(n()) })),
    ),
  lawCheck: (n) =>
    lawCheck(PLACE_RULES[Math.trunc(Math.abs(n())) % 5 || 0]!, {
      drawWeight: poundsForce(n()),
      arrowWeight: grains(n()),
      arrowLength: inches(n()),
      head: { kind: 'broadhead', width: inches(n()) },
    }),
}

describe('whatever is handed in, finite numbers or findings come out', () => {
  it.each(Object.entries(MODELS))('of %s', (_, model) => {
    let answered = 0
    fc.assert(
      fc.property(fc.array(anyNumber, { minLength: 24, maxLength: 24 }), (numbers) => {
        let i = 0
        const outcome = model(() => numbers[i++ % numbers.length]!)
        expectHonest(outcome)
        if (outcome.ok) answered++
      }),
      { numRuns: 1000 },
    )
    // The sensible numbers among them must get through, or nothing was tried.
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1.01, max: 20, noNaN: true }), { minLength: 24, maxLength: 24 }),
        (numbers) => {
          let i = 0
          const outcome = model(() => numbers[i++ % numbers.length]!)
          expectHonest(outcome)
          if (outcome.ok) answered++
        },
      ),
      { numRuns: 300 },
    )
    expect(answered).toBeGreaterThan(0)
  })
})
