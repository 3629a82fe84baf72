import type { Arrow } from '../arrow/arrow'
import { known, type Outcome, term } from '../outcome'
import { type Frequency, hertz } from '../quantity'
import { refusal } from '../refusal'
import { arrowProblems } from './arrow-problems'
import { scratchWorkspace } from './beam-mesh'
import { beamOf } from './beam-of'
import { finishedMass } from './critical-force'
import { freeFrequency } from './free-frequency'

/**
 * First bending frequency of the arrow in the air, both ends free, for information.
 *
 *   (EI·v″)″ = (2πf)²·m(s)·v;  even shaft alone: 2πf = 22.3733·√(EI/(m·L³))
 *
 * Masses and rigidities as in {@link criticalForce}; what lies beyond throat or shaft front rides on the end as a point.
 *
 * @returns the frequency, or the findings of {@link arrowProblems}
 *
 * Source: [THOMSON] App. D; finite elements of at least 64 cubic elements.
 * Error: no damping, and a head's own size is not in it.
 */
export function bendingFrequency(arrow: Arrow): Outcome<Frequency> {
  const refused = refusal(arrowProblems(arrow))
  if (refused) return refused
  const frequency = hertz(freeFrequency(beamOf(arrow), scratchWorkspace(arrow.pieces.length)))
  return known(frequency, {
    equation: '(EI·v″)″ = (2πf)²·m(s)·v, both ends free; least f above 0',
    inputs: [
      term('arrow length', arrow.length, 'in'),
      term('shaft rigidity', arrow.shaft.rigidity, 'N·m²'),
      term('shaft weight', arrow.shaft.mass, 'gr'),
      term('finished weight', finishedMass(arrow), 'gr'),
    ],
    result: [term('first bending frequency', frequency, 'Hz')],
    source: ['THOMSON', 'OWN'],
  })
}
