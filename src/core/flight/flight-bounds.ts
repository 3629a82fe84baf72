import { FLYING_BOUNDS } from '../energy/flying-bounds'
import { bounds } from '../outcome'
import { degrees, feetPerSecond, kilogramsPerCubicMetre, metres, millimetres, perMetre, ratio } from '../quantity'

/** Where the flight models hold; a density or drag of 0 is flight in vacuum. */
export const FLIGHT_BOUNDS = Object.freeze({
  mass: FLYING_BOUNDS.mass,
  speed: bounds(feetPerSecond(10), feetPerSecond(1000)),
  density: bounds(kilogramsPerCubicMetre(0), kilogramsPerCubicMetre(2)),
  drag: bounds(ratio(0), ratio(10)),
  diameter: bounds(millimetres(1), millimetres(30)),
  decay: bounds(perMetre(0), perMetre(1)),
  range: bounds(metres(0), metres(500)),
  angle: bounds(degrees(-80), degrees(80)),
})
