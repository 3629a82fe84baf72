import { bounds } from '../outcome'
import { type Angle, degrees, inches, type Length, metres, radians } from '../quantity'

/** Total indicator reading with the angle at which the high side came round, as read off one zero for the whole shaft. */
export interface RunOut {
  readonly tir: Length
  readonly angle: Angle
}

export const RUN_OUT_BOUNDS = Object.freeze({
  tir: bounds(inches(0), inches(0.5)),
  angle: bounds(degrees(-360), degrees(360)),
})

/** A run-out as the two sides of a plane across the shaft, m: twice how far the middle of the shaft stands off. */
export interface Sides {
  readonly up: number
  readonly across: number
}

export const sidesOf = ({ tir, angle }: RunOut): Sides => ({ up: tir * Math.cos(angle), across: tir * Math.sin(angle) })

/** Angle from 0 up to a full turn. */
export const runOutOf = ({ up, across }: Sides): RunOut => {
  const angle = Math.atan2(across, up)
  return { tir: metres(Math.hypot(up, across)), angle: radians(angle < 0 ? angle + 2 * Math.PI : angle) }
}
