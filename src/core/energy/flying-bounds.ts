import { bounds } from '../outcome'
import { feetPerSecond, grains } from '../quantity'

/** Weight and speed of anything this core lets fly; wide enough for any arrow, and shared by the forms' hints. */
export const FLYING_BOUNDS = Object.freeze({
  mass: bounds(grains(1), grains(20_000)),
  speed: bounds(feetPerSecond(0), feetPerSecond(2000)),
})
