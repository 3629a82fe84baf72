import type { Temperature, Time } from '../quantity'

/** Below the glue's lowest temperature it does not cure, however long it lies. */
export interface TooColdToCure {
  readonly code: 'too-cold-to-cure'
  readonly at: Temperature
  readonly least: Temperature
}

/** Above its highest temperature glue and carbon take harm: never speed a cure up so far. */
export interface TooHotToCure {
  readonly code: 'too-hot-to-cure'
  readonly at: Temperature
  readonly most: Temperature
}

/** A glue must be fit to handle before it is fit to shoot, and that before it is fully cured. */
export interface CureTimesReversed {
  readonly code: 'cure-times-reversed'
  readonly handle: Time
  readonly shoot: Time
  readonly full: Time
}

export type CureFinding = TooColdToCure | TooHotToCure | CureTimesReversed
