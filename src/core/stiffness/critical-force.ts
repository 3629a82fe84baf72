import type { Arrow } from '../arrow/arrow'
import { known, type Outcome, term, type Term } from '../outcome'
import { type Force, type Mass, newtons, newtonSquareMetres, sum } from '../quantity'
import { refusal } from '../refusal'
import { arrowProblems } from './arrow-problems'
import { scratchWorkspace } from './beam-mesh'
import { beamOf } from './beam-of'
import { criticalNockForce } from './critical-nock-force'
import { stiffeningOf } from './tube-rigidity'

/** Everything that leaves the bow: the shaft and all that is on it. */
export const finishedMass = ({ shaft, pieces }: Arrow): Mass => sum(shaft.mass, ...pieces.map(({ mass }) => mass))

/**
 * Force at the nock under which the arrow, held straight by string and inertia, first bows out as a column.
 *
 *   (EI·v″)″ + F·(n(s)·v′)′ = 0,   v = v″ = 0 at throat and shaft front,
 *   n(s) = mass ahead of s / finished mass
 *
 * EI is the shaft's throughout, and a bonded part's on top of it over its interval; every mass is spread evenly over its
 * interval; what lies ahead of the shaft front acts there.
 *
 * @returns the least such force; findings of {@link arrowProblems} when the arrow cannot be one
 *
 * Source: [TIMO] for the equation; finite elements of at least 64 cubic elements, within 1e-5 of its closed forms.
 * Error: a column of its own is an index, not a flight: a launch is over before a column has time to fold.
 */
export function criticalForce(arrow: Arrow): Outcome<Force> {
  const refused = refusal(arrowProblems(arrow))
  if (refused) return refused
  const force = newtons(criticalNockForce(beamOf(arrow), scratchWorkspace(arrow.pieces.length)))
  return known(force, {
    equation:
      '(EI·v″)″ + F·(n(s)·v′)′ = 0 with v = v″ = 0 at both ends, n(s) = mass ahead of s / finished mass; least F',
    inputs: [
      term('arrow length', arrow.length, 'in'),
      term('shaft rigidity', arrow.shaft.rigidity, 'N·m²'),
      term('shaft weight', arrow.shaft.mass, 'gr'),
      term('shaft rear', arrow.shaft.rear, 'in'),
      ...arrow.pieces.flatMap(pieceTerms),
    ],
    result: [term('critical force at the nock', force, 'lbf')],
    source: ['TIMO', 'OWN'],
  })
}

const pieceTerms = ({ name, mass, from, to, bonded }: Arrow['pieces'][number]): Term[] => [
  term(`${name}, weight`, mass, 'gr'),
  term(`${name}, from`, from, 'in'),
  term(`${name}, to`, to, 'in'),
  ...(bonded === undefined ? [] : [term(`${name}, rigidity`, newtonSquareMetres(stiffeningOf(bonded)), 'N·m²')]),
]
