/** What the bench knows after one more event. Nothing is overwritten: a correction points at what it corrects. */
import type { JobEvent } from '../job/events'
import type { Id } from '../records/scalars'
import type { Bench, BenchArrow } from './bench'
import type { KeptReading } from './built'

export type BenchEvent = Extract<
  JobEvent,
  {
    what:
      | 'routeSet'
      | 'read'
      | 'corrected'
      | 'confirmed'
      | 'unconfirmed'
      | 'fitted'
      | 'deviationOpened'
      | 'deviationDecided'
      | 'scrapped'
      | 'replaced'
      | 'timerSet'
      | 'timerEnded'
      | 'noted'
      | 'photographed'
      | 'scaleChecked'
      | 'builderChanged'
  }
>

const newArrow = (arrow: { id: Id; no: number; code: string; replaces?: Id }): BenchArrow => ({
  ...arrow,
  state: 'building',
  readings: [],
  confirmed: [],
  fitted: [],
})

export const benchStarted = (event: Extract<JobEvent, { what: 'setStarted' }>): Bench => ({
  sheet: event.body.sheet,
  startedAt: event.at,
  route: null,
  arrows: event.body.arrows.map(newArrow),
  confirmed: [],
  deviations: [],
  timers: [],
  notes: [],
  photos: [],
  scaleChecks: [],
  builder: event.by,
})

const onArrow = (bench: Bench, id: Id | undefined, change: (arrow: BenchArrow) => BenchArrow): Bench => ({
  ...bench,
  arrows: bench.arrows.map((arrow) => (arrow.id === id ? change(arrow) : arrow)),
})

const stamp = (event: BenchEvent) => ({ by: event.by, at: event.at })

function corrected(arrow: BenchArrow, event: Extract<BenchEvent, { what: 'corrected' }>): BenchArrow {
  const { target, reading, reason } = event.body
  const old = arrow.readings.find((kept) => kept.event === target)
  if (old === undefined) return arrow
  const withdrawn = { event: event.hash, by: event.by, at: event.at, reason }
  const kept = arrow.readings.map((each) => (each.event === target ? { ...each, withdrawn } : each))
  const anew: KeptReading[] =
    reading === null ? [] : [{ event: event.hash, by: event.by, step: old.step, reading, withdrawn: null }]
  return { ...arrow, readings: [...kept, ...anew] }
}

export function benchAfter(bench: Bench, event: BenchEvent): Bench {
  const arrow = event.arrow ?? null
  switch (event.what) {
    case 'routeSet':
      return { ...bench, route: event.body.route }
    case 'read':
      return onArrow(bench, event.arrow, (each) => ({
        ...each,
        readings: [
          ...each.readings,
          { event: event.hash, by: event.by, step: event.body.step, reading: event.body.reading, withdrawn: null },
        ],
      }))
    case 'corrected':
      return onArrow(bench, event.arrow, (each) => corrected(each, event))
    case 'confirmed': {
      const confirmation = { step: event.body.step, ...stamp(event) }
      return arrow === null
        ? { ...bench, confirmed: [...bench.confirmed, confirmation] }
        : onArrow(bench, arrow, (each) => ({ ...each, confirmed: [...each.confirmed, confirmation] }))
    }
    case 'unconfirmed': {
      const rest = <C extends { step: string }>(all: readonly C[]) =>
        all.filter((each) => each.step !== event.body.step)
      return arrow === null
        ? { ...bench, confirmed: rest(bench.confirmed) }
        : onArrow(bench, arrow, (each) => ({ ...each, confirmed: rest(each.confirmed) }))
    }
    case 'fitted': {
      const { reason: _, ...fitted } = event.body
      return onArrow(bench, event.arrow, (each) => ({
        ...each,
        fitted: [...each.fitted.filter((old) => old.line !== fitted.line), fitted],
      }))
    }
    case 'deviationOpened':
      return {
        ...bench,
        deviations: [...bench.deviations, { ...event.body, arrow, openedBy: event.by, openedAt: event.at }],
      }
    case 'deviationDecided': {
      const { deviation, disposition, reason } = event.body
      const decision = { disposition, reason, decidedBy: event.by, decidedAt: event.at }
      return {
        ...bench,
        deviations: bench.deviations.map((each) => (each.id === deviation ? { ...each, decision } : each)),
      }
    }
    case 'scrapped':
      return onArrow(bench, event.arrow, (each) => ({ ...each, state: 'scrapped', cause: event.body.cause }))
    case 'replaced': {
      const { arrow: id, ...rest } = event.body
      return { ...bench, arrows: [...bench.arrows, newArrow({ id, ...rest })] }
    }
    case 'timerSet': {
      const { timer, ...rest } = event.body
      return { ...bench, timers: [...bench.timers, { id: timer, arrow, ...rest, endedAt: null }] }
    }
    case 'timerEnded':
      return {
        ...bench,
        timers: bench.timers.map((each) =>
          each.id === event.body.timer ? { ...each, endedAt: event.body.endedAt } : each,
        ),
      }
    case 'noted':
      return { ...bench, notes: [...bench.notes, { arrow, ...event.body, ...stamp(event) }] }
    case 'photographed':
      return { ...bench, photos: [...bench.photos, { arrow, ...event.body, ...stamp(event) }] }
    case 'scaleChecked':
      return { ...bench, scaleChecks: [...bench.scaleChecks, { ...event.body, at: event.at }] }
    case 'builderChanged':
      return { ...bench, builder: event.body.builder }
  }
}
