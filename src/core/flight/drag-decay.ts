import { type Outcome, known, term } from '../outcome'
import { type Density, type Length, type Mass, type Ratio, type Wavenumber, perMetre } from '../quantity'
import { outside, refusal } from '../refusal'
import { FLIGHT_BOUNDS } from './flight-bounds'

/** What slows an arrow. The drag coefficient is on the shaft's section, π·d²/4. */
export interface Slowed {
  readonly mass: Mass
  readonly diameter: Length
  readonly density: Density
  readonly drag: Ratio
}

/** 1/m, from SI numbers. */
export const decayOf = (mass: number, diameter: number, density: number, drag: number) =>
  (density * drag * Math.PI * diameter ** 2) / (8 * mass)

export const slowedProblems = ({ mass, diameter, density, drag }: Slowed) => [
  ...outside('arrow weight', mass, FLIGHT_BOUNDS.mass, 'gr'),
  ...outside('shaft diameter', diameter, FLIGHT_BOUNDS.diameter, 'mm'),
  ...outside('air density', density, FLIGHT_BOUNDS.density, 'kg/m³'),
  ...outside('drag coefficient', drag, FLIGHT_BOUNDS.drag, '1'),
]

/**
 * How fast drag takes an arrow's speed: over a distance 1/k it falls to 1/e.
 *
 *   D = ½ρv²·C_d·πd²/4 = m·k·v²  ⇒  k = ρ·C_d·A/(2m)
 *
 * @returns k, or `outside-model` where an input is not within {@link FLIGHT_BOUNDS}
 *
 * Source: [MECHANICS]; drag coefficients [MIYAZAKI20], [ORTIZ20].
 */
export function dragDecay(arrow: Slowed): Outcome<Wavenumber> {
  const refused = refusal(slowedProblems(arrow))
  if (refused) return refused
  const { mass, diameter, density, drag } = arrow
  const decay = perMetre(decayOf(mass, diameter, density, drag))
  return known(decay, {
    equation: 'k = ρ·C_d·(π·d²/4) / (2·m)',
    inputs: [
      term('arrow weight', mass, 'gr'),
      term('shaft diameter', diameter, 'mm'),
      term('air density', density, 'kg/m³'),
      term('drag coefficient', drag, '1'),
    ],
    result: [term('loss of speed with distance', decay, '1/m')],
    source: ['MECHANICS', 'MIYAZAKI20', 'ORTIZ20'],
  })
}
