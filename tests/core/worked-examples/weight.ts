import { grains, inches, hours, ratio } from '@/core/quantity'
import { chanceAllReach } from '@/core/weight/chance-all-reach'
import { chanceToReach } from '@/core/weight/chance-to-reach'
import { cutWeight } from '@/core/weight/cut-weight'
import type { ForecastItem } from '@/core/weight/forecast-item'
import { forecastSet } from '@/core/weight/forecast-set'
import type { Forecast } from '@/core/weight/forecast-weight'
import { forecastWeight } from '@/core/weight/forecast-weight'
import { glueByDifference } from '@/core/weight/glue-by-difference'
import { lessHead } from '@/core/weight/less-head'
import { predictedPart } from '@/core/weight/predicted-part'
import { readingSurprise } from '@/core/weight/reading-surprise'
import { readingUncertainty } from '@/core/weight/reading-uncertainty'
import { scaleCheck } from '@/core/weight/scale-check'
import { scaleError } from '@/core/weight/scale-error'
import { toleranceUncertainty } from '@/core/weight/tolerance-uncertainty'
import type { Take, WorkedExamples } from './worked-example'

const items = (n: Take): readonly ForecastItem[] => [
  {
    name: 'cut shaft',
    kind: 'read',
    mean: grains(n(341)),
    ownSd: grains(n(0.07)),
    sharedSd: grains(n(0.1)),
    sharedKey: 'scale',
    origin: 'read',
  },
  {
    name: 'insert',
    kind: 'expected',
    mean: grains(n(152)),
    ownSd: grains(n(0.4)),
    sharedSd: grains(n(0.2)),
    sharedKey: 'lot',
    degrees: n(16),
    origin: 'lot history',
  },
  {
    name: 'post glue',
    kind: 'expected',
    mean: grains(n(1.8)),
    ownSd: grains(n(0.36)),
    sharedSd: grains(n(0.18)),
    origin: 'assumed',
  },
]

/** One gr above the lower edge, own 0.5 gr, shared 0.8 gr. */
const forecast = (n: Take): Forecast => {
  const value = grains(n(825.5))
  const shared = n(0.8)
  const own = n(0.5)
  const sd = grains(Math.hypot(own, shared))
  return {
    total: { value, sd, low: value, high: value },
    ownSd: grains(own),
    sharedSd: grains(shared),
    sharedBy: [{ key: 'lot', sd: grains(shared) }],
    read: value,
    expected: grains(0),
  }
}
const landing = (n: Take) => ({ target: grains(n(825)), tolerance: grains(n(0.5)), trimmable: grains(n(60)) })

export const weightExamples: WorkedExamples = {
  readingUncertainty: (n) => readingUncertainty(grains(n(0.1))),
  toleranceUncertainty: (n) => toleranceUncertainty(grains(n(0.5))),
  scaleError: (n) =>
    scaleError(
      {
        step: grains(n(0.1)),
        repeatability: grains(n(0.07)),
        calibration: grains(n(0.05)),
        driftPerHour: grains(n(0.1)),
      },
      hours(n(2)),
    ),
  scaleCheck: (n) =>
    scaleCheck(
      [grains(n(308.7)), grains(n(308.6)), grains(n(308.8))],
      grains(n(308.647)),
      grains(n(0.01)),
      grains(n(0.1)),
    ),
  cutWeight: (n) =>
    cutWeight(
      {
        mean: grains(n(402.3)),
        ownSd: grains(n(0.076)),
        sharedSd: grains(n(0.1)),
        length: inches(n(33)),
        sd: inches(n(0.04)),
      },
      { length: inches(n(28.5)), sd: inches(n(0.01)) },
      { mean: grains(n(345)), ownSd: grains(n(2.5)), sharedSd: grains(n(0.6)) },
      ratio(n(0.01)),
    ),
  predictedPart: (n) =>
    predictedPart({ nominal: grains(n(150)), tolerance: grains(n(1)), ownShare: ratio(n(0.8)) }, [
      { mass: grains(n(150.6)), pieces: n(1) },
      { mass: grains(n(301.4)), pieces: n(2) },
    ]),
  readingSurprise: (n) => {
    const value = grains(n(150.5))
    const sd = grains(n(0.5))
    return readingSurprise(grains(n(152)), {
      estimate: { value, sd, low: value, high: value },
      ownSd: sd,
      sharedSd: sd,
      degrees: 12.5,
      pieces: 3,
    })
  },
  forecastWeight: (n) => forecastWeight(items(n)),
  forecastSet: (n) => forecastSet([items(n), items(n)]),
  chanceToReach: (n) => chanceToReach(forecast(n), landing(n)),
  chanceAllReach: (n) =>
    chanceAllReach(Array.from({ length: 6 }, () => ({ forecast: forecast(n), landing: landing(n) }))),
  lessHead: (n) => lessHead(grains(n(825)), [grains(n(250.4)), grains(n(249.1)), grains(n(250.9))]),
  glueByDifference: (n) => glueByDifference(grains(n(371.4)), [grains(n(341.2)), grains(n(29))]),
}
