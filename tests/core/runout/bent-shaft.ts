import { inches, inInches, type Length, metres, radians } from '@/core/quantity'
import type { Spun, Station } from '@/core/runout/centre-line'

/** Where the middle of a bent shaft stands, in its own plane and across it, in by in. */
export type Bend = (at: number) => readonly [up: number, across: number]

/** An even bow, `tir` inches on a span, its high side at an angle. */
export const bowed = (tir: number, span: number, angle = 0): Bend => {
  const curve = (4 * (tir / 2)) / span ** 2
  return (at) => [curve * at * at * -Math.cos(angle), curve * at * at * -Math.sin(angle)]
}
/** Straight but for one place, where it turns by `slope`. */
export const kinked = (where: number, slope: number): Bend => {
  return (at) => [at > where ? slope * (at - where) : 0, 0]
}

/** What an indicator says along a bent shaft on two rollers: twice the distance off the line through them. */
export function spin(bend: Bend, stations: readonly number[], rear = 1, front = 31, raw = 32): Spun {
  const [a, b] = [bend(rear), bend(front)]
  return {
    rawLength: inches(raw),
    rearSupport: inches(rear),
    frontSupport: inches(front),
    stations: stations.map((at): Station => {
      const share = (at - rear) / (front - rear)
      const [up, across] = bend(at).map((off, i) => off - a[i]! - share * (b[i]! - a[i]!)) as [number, number]
      return {
        at: inches(at),
        tir: inches(2 * Math.hypot(up, across)),
        angle: radians(Math.atan2(across, up)),
      }
    }),
  }
}

export const inThousandths = (tir: Length) => 1000 * inInches(tir)
export const NO_GAIN = metres(0)
