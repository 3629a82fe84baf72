import type { Finding } from '../finding'
import { bounds } from '../outcome'
import { inches, type Length } from '../quantity'
import { outside } from '../refusal'
import { type RunOut, RUN_OUT_BOUNDS, type Sides, sidesOf } from './run-out'

/** A run-out read along the raw shaft, `at` from its nock end. */
export interface Station extends RunOut {
  readonly at: Length
}

/** How a raw shaft was read: where the rollers stood, from its nock end, and what the indicator said between them. */
export interface Spun {
  readonly rawLength: Length
  readonly rearSupport: Length
  readonly frontSupport: Length
  readonly stations: readonly Station[]
}

export const SHAFT_LENGTH_BOUNDS = bounds(inches(10), inches(60))
const LEAST_SPAN = inches(5)
/** Stations nearer to each other, or to a roller, say more about the indicator than about the shaft. */
const LEAST_APART = inches(0.25)

/** What keeps readings from being a shape: nothing, or each thing wrong with them. */
export function spunProblems({ rawLength, rearSupport, frontSupport, stations }: Spun): readonly Finding[] {
  const along = bounds(inches(0), rawLength)
  const raw = outside('raw length', rawLength, SHAFT_LENGTH_BOUNDS, 'in')
  if (raw.length > 0) return raw
  const each = [
    ...outside('rear support', rearSupport, along, 'in'),
    ...outside('front support', frontSupport, along, 'in'),
    ...stations.flatMap(({ at, tir, angle }) => [
      ...outside('station', at, along, 'in'),
      ...outside('run-out', tir, RUN_OUT_BOUNDS.tir, 'in'),
      ...outside('angle', angle, RUN_OUT_BOUNDS.angle, '°'),
    ]),
  ]
  if (each.length > 0) return each
  if (stations.length === 0) return [{ code: 'no-stations' }]
  if (frontSupport - rearSupport < LEAST_SPAN) {
    return [{ code: 'supports-too-close', rear: rearSupport, front: frontSupport, least: LEAST_SPAN }]
  }
  const places = [rearSupport, frontSupport, ...stations.map(({ at }) => at)].sort((a, b) => a - b)
  const close = places.find((at, i) => i > 0 && at - places[i - 1]! < LEAST_APART)
  return close === undefined ? [] : [{ code: 'stations-coincide', at: close, least: LEAST_APART }]
}

/** Twice how far the middle of the shaft stands off the line through the rollers, at any place, m. */
export type CentreLine = (at: number) => Sides

interface Knot extends Sides {
  readonly at: number
}

/**
 * The shape of the shaft from its readings: on the rollers it stands on the line; between two neighbouring places it goes
 * over from the parabola through the one's neighbourhood to that through the other's; beyond the last, the last parabola.
 * An even bow comes out exactly, a kink is felt no further than its neighbours.
 */
export function centreLine({ rearSupport, frontSupport, stations }: Spun): CentreLine {
  const knots: Knot[] = [
    { at: rearSupport, up: 0, across: 0 },
    { at: frontSupport, up: 0, across: 0 },
    ...stations.map((station) => ({ at: station.at, ...sidesOf(station) })),
  ].sort((a, b) => a.at - b.at)
  const last = knots.length - 2 // index of the last knot with a neighbour on either side
  return (at) => {
    const before = knots.findLastIndex((knot) => knot.at <= at)
    const rear = Math.min(last, Math.max(1, before))
    const front = Math.min(last, Math.max(1, before + 1))
    const one = parabola(knots, rear, at)
    if (rear === front) return one
    const other = parabola(knots, front, at)
    const share = (at - knots[rear]!.at) / (knots[front]!.at - knots[rear]!.at)
    return {
      up: one.up + share * (other.up - one.up),
      across: one.across + share * (other.across - one.across),
    }
  }
}

/** Through the knot and its two neighbours, by Lagrange. */
function parabola(knots: readonly Knot[], middle: number, at: number): Sides {
  const three = [knots[middle - 1]!, knots[middle]!, knots[middle + 1]!] as const
  let up = 0
  let across = 0
  for (const knot of three) {
    const weight = three.reduce((w, other) => (other === knot ? w : (w * (at - other.at)) / (knot.at - other.at)), 1)
    up += weight * knot.up
    across += weight * knot.across
  }
  return { up, across }
}
