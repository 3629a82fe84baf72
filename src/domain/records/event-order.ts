/**
 * Events of several logs in one order, the same on every device. Within a log the sequence rules, whatever the clock did;
 * between logs the time said, and where that is equal the log's id.
 */
import type { Event } from './event'

type Placed = Pick<Event, 'log' | 'seq' | 'at'>

export function inOrder<E extends Placed>(events: readonly E[]): readonly E[] {
  const latest = new Map<string, Placed>()
  const timed = events
    .toSorted((a, b) => a.seq - b.seq)
    .map((event) => {
      const place = placed(latest.get(event.log), event)
      latest.set(event.log, place)
      return { event, place }
    })
  return timed.toSorted((a, b) => compare(a.place, b.place)).map(({ event }) => event)
}

/** Where a list that is in order ends, as far as it must be known to tell whether more events come after it. */
export interface OrderEnd {
  /** The last place of each log. */
  readonly logs: ReadonlyMap<string, Placed>
  readonly last: Placed | null
}
export const NO_ORDER: OrderEnd = { logs: new Map(), last: null }

/** The end after one more event; undefined when the event belongs somewhere before it. */
export function endAfter({ logs, last }: OrderEnd, event: Placed): OrderEnd | undefined {
  const own = logs.get(event.log)
  const next = placed(own, event)
  const isAfter = (own?.seq ?? 0) < event.seq && (last === null || compare(last, next) < 0)
  return isAfter ? { logs: new Map([...logs, [event.log, next]]), last: next } : undefined
}

/** @param events in order */
export function orderEnd(events: readonly Placed[]): OrderEnd {
  const logs = new Map<string, Placed>()
  let last: Placed | null = null
  for (const event of events) {
    last = placed(logs.get(event.log), event)
    logs.set(event.log, last)
  }
  return { logs, last }
}

/** A clock set back does not reorder a log: an event counts as said no earlier than the one before it. */
const placed = (before: Placed | undefined, { log, seq, at }: Placed): Placed => ({
  log,
  seq,
  at: before !== undefined && before.at > at ? before.at : at,
})

const compare = (a: Placed, b: Placed) => order(a.at, b.at) || order(a.log, b.log) || a.seq - b.seq
const order = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)
