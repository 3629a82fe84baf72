import { FLYING_BOUNDS } from '../energy/flying-bounds'
import type { Finding } from '../finding'
import { bounds } from '../outcome'
import { type Mass, type Speed, feetPerSecond } from '../quantity'
import { outside } from '../refusal'

/** One chronograph reading: an arrow's weight and its speed at the bow, or the mean of several shots of it. */
export interface ChronographReading {
  readonly mass: Mass
  readonly speed: Speed
}

/** Speeds a chronograph can have read off a bow. */
export const READING_BOUNDS = Object.freeze({
  mass: FLYING_BOUNDS.mass,
  speed: bounds(feetPerSecond(10), feetPerSecond(1000)),
  speedSd: bounds(feetPerSecond(0.01), feetPerSecond(50)),
})

/** Standard error of one reading where nothing is said: 1.5 ft/s, common practice, no source [CP]. */
export const CHRONOGRAPH_SD = feetPerSecond(1.5)

export const readingProblems = (readings: readonly ChronographReading[], speedSd: Speed): readonly Finding[] => [
  ...outside('chronograph error', speedSd, READING_BOUNDS.speedSd, 'ft/s'),
  ...readings.flatMap(({ mass, speed }, i) => [
    ...outside(`weight of reading ${i + 1}`, mass, READING_BOUNDS.mass, 'gr'),
    ...outside(`speed of reading ${i + 1}`, speed, READING_BOUNDS.speed, 'ft/s'),
  ]),
]
