import type { Temperature, Time } from '../quantity'
import { celsius, hours, quantity } from '../quantity'

/** When a glue is fit for what, at the temperature its maker states, and within which temperatures it cures at all. */
export interface CuringGlue {
  readonly handle: Time
  readonly shoot: Time
  readonly full: Time
  readonly at: Temperature
  readonly least: Temperature
  readonly most: Temperature
}

/** Slow epoxy: common practice, no source [CP]. The pack's own figures stand above these. */
export const SLOW_EPOXY: CuringGlue = Object.freeze({
  handle: hours(12),
  shoot: hours(24),
  full: quantity(7, 'day'),
  at: celsius(22),
  least: celsius(13),
  most: celsius(45),
})
