import { cureProgress } from '@/core/cure/cure-progress'
import { cureTimes } from '@/core/cure/cure-times'
import { celsius, grains, hours } from '@/core/quantity'
import { capability } from '@/core/statistics/capability'
import { controlLimits } from '@/core/statistics/control-limits'
import { setStatistics } from '@/core/statistics/set-statistics'
import type { Take, WorkedExamples } from './worked-example'

const FINISHED = [825.1, 824.9, 825.3, 825.0, 824.8, 825.2]
const weights = (n: Take) => FINISHED.map((gr) => grains(n(gr)))
const glue = (n: Take) => ({
  handle: hours(n(12)),
  shoot: hours(n(24)),
  full: hours(n(168)),
  at: celsius(n(22)),
  least: celsius(n(13)),
  most: celsius(n(45)),
})

export const statisticsExamples: WorkedExamples = {
  setStatistics: (n) => setStatistics(weights(n), 'gr', grains(n(1))),
  capability: (n) =>
    capability(
      { mean: grains(n(825.05)), sd: grains(n(0.187)), count: n(6), lower: grains(n(824)), upper: grains(n(826)) },
      'gr',
    ),
  controlLimits: (n) => controlLimits(weights(n), 'gr'),
}

export const cureExamples: WorkedExamples = {
  cureTimes: (n) => cureTimes(glue(n), celsius(n(18)), hours(n(3))),
  cureProgress: (n) =>
    cureProgress(glue(n), [
      { temperature: celsius(n(22)), lasted: hours(n(8)) },
      { temperature: celsius(n(16)), lasted: hours(n(12)) },
    ]),
}
