import { balanceExamples } from './balance'
import { bowExamples } from './bow'
import { cutExamples } from './cut'
import { energyExamples } from './energy'
import { airExamples, flightExamples } from './flight'
import { envelopeExamples, lawExamples } from './law-and-envelope'
import { runOutExamples } from './run-out'
import { cureExamples, statisticsExamples } from './set'
import { stiffnessExamples } from './stiffness'
import { trimExamples } from './trim'
import { weightExamples } from './weight'
import type { WorkedExamples } from './worked-example'

/** Every model of the core, by the folder of src/core it stands in. */
export const ALL_EXAMPLES = {
  weight: weightExamples,
  balance: balanceExamples,
  energy: energyExamples,
  bow: bowExamples,
  stiffness: stiffnessExamples,
  cut: cutExamples,
  runout: runOutExamples,
  trim: trimExamples,
  air: airExamples,
  flight: flightExamples,
  envelope: envelopeExamples,
  statistics: statisticsExamples,
  cure: cureExamples,
  law: lawExamples,
} as const satisfies Record<string, WorkedExamples>
