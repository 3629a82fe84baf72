import type { Pressure, Temperature } from '../quantity'

/** The air is outside the range its density equation was published for; the equation is used all the same. */
export interface AirBeyondPublished {
  readonly code: 'air-beyond-published-range'
  readonly temperature: Temperature
  readonly pressure: Pressure
}

export type AirFinding = AirBeyondPublished
