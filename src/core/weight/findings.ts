import type { Mass } from '../quantity'

/** The pieces weighed so far lie, on the average, outside what the catalogue promises. */
export interface LotOffCatalogue {
  readonly code: 'lot-off-catalogue'
  readonly mean: Mass
  readonly nominal: Mass
  readonly tolerance: Mass
  readonly pieces: number
}

/** A reading that this lot would hardly ever give. Asked about, never dropped. */
export interface SurprisingReading {
  readonly code: 'surprising-reading'
  readonly reading: Mass
  readonly expected: Mass
  readonly low: Mass
  readonly high: Mass
}

/** A forecast without a single part in it. */
export interface NothingToForecast {
  readonly code: 'nothing-to-forecast'
}

/** Glue cannot weigh less than nothing: one of the two weighings is wrong, or a part was left out. */
export interface LighterThanParts {
  readonly code: 'lighter-than-its-parts'
  readonly whole: Mass
  readonly parts: Mass
}

/** The scale shows its check weight wrong by more than its own scatter explains. */
export interface ScaleOff {
  readonly code: 'scale-off'
  readonly by: Mass
  readonly checkWeight: Mass
}

export type WeightFinding = LotOffCatalogue | SurprisingReading | NothingToForecast | LighterThanParts | ScaleOff
