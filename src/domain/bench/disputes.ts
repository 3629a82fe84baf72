/**
 * Readings that two devices took apart: the same point of the same arrow, each as the first or each in place of the same
 * older one. Both stand until a person keeps one; neither is dropped.
 */
import type { JobEvent } from '../job/events'
import type { Hash, Id } from '../records/scalars'
import { disputed } from '../records/standing'
import type { Bench } from './bench'
import type { KeptReading } from './built'
import type { DataPoint } from './data-points'

export interface Dispute {
  readonly arrow: Id
  readonly no: number
  readonly point: DataPoint
  /** In the order they were told; two or more. */
  readonly readings: readonly KeptReading[]
}

export function disputes(bench: Bench, events: readonly JobEvent[]): readonly Dispute[] {
  const logs = new Map(events.map(({ hash, log }) => [hash, log]))
  return disputed(events.flatMap(claimOf)).flatMap((claims): readonly Dispute[] => {
    // One device may weigh again as often as it likes: its own order says which counts.
    if (new Set(claims.map(({ hash }) => logs.get(hash))).size < 2) return []
    const arrow = bench.arrows.find(({ id, state }) => id === claims[0]!.arrow && state === 'building')
    const readings = (arrow?.readings ?? []).filter(({ event }) => claims.some(({ hash }) => hash === event))
    return arrow === undefined || readings.length < 2
      ? []
      : [{ arrow: arrow.id, no: arrow.no, point: readings[0]!.reading.point, readings }]
  })
}

function claimOf(
  event: JobEvent,
): readonly { hash: Hash; about: string; arrow: Id; withdraws?: Hash; silent?: boolean }[] {
  const { hash, arrow } = event
  if (arrow === undefined) return []
  if (event.what === 'read') {
    const { point, attempt } = event.body.reading
    return [{ hash, arrow, about: `${arrow} ${point} ${attempt}` }]
  }
  if (event.what !== 'corrected') return []
  const { target, reading } = event.body
  return [{ hash, arrow, about: `${arrow} instead of ${target}`, withdraws: target, silent: reading === null }]
}
