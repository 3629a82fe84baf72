/**
 * What a lot's records come to: how many were received, counted and written off, what each job holds and used of it, and
 * every weight taken of it. Sets keyed by event and by job, so that it comes out the same in whatever order they are told.
 */
import type { AnyEvent } from '../records/read-event'
import type { AnyFact } from '../records/read-fact'
import type { Hash, Id } from '../records/scalars'
import type { LotRow } from '../records/view-rules'
import type { JobShare } from './job-share'
import type { Weighing } from './weighing'
import { byTime } from './weighing'

export interface LotView extends LotRow {
  readonly onHand: number
  readonly reserved: number
  readonly used: number
  /** Every weight that stands, of sessions and of the bench, in the order they were taken. */
  readonly weighed: readonly Weighing[]
  /** Weights set aside in a weighing session's list, with the reason; kept for good. */
  readonly setAside: readonly (Weighing & { readonly reason: string })[]
  /** The day of the last stock-take. */
  readonly countedAt: string | null
  /** The jobs that hold, used or weighed some of it. */
  readonly jobs: readonly JobShare[]
  /** What was said outside any job. */
  readonly own: {
    readonly onHand: number
    readonly used: number
    readonly weighed: readonly Weighing[]
    readonly withdrawn: readonly { readonly target: Hash; readonly reason: string }[]
    /** Events already counted: telling one twice changes nothing. */
    readonly counted: readonly Hash[]
  }
}

const noLot = (id: Id): LotView => ({
  id,
  onHand: 0,
  reserved: 0,
  used: 0,
  weighed: [],
  setAside: [],
  countedAt: null,
  jobs: [],
  own: { onHand: 0, used: 0, weighed: [], withdrawn: [], counted: [] },
})

function told(view: LotView, event: AnyEvent): LotView {
  if (view.own.counted.includes(event.hash)) return view
  const own = { ...view.own, counted: [...view.own.counted, event.hash].sort() }
  if (event.what === 'lotWeighed') {
    const { weightGr, pieces } = event.body
    const weighing: Weighing = { event: event.hash, at: event.at, what: 'weight', weightGr, pieces }
    return { ...view, own: { ...own, weighed: [...own.weighed, weighing].sort(byTime) } }
  }
  if (event.what === 'lotWeightSetAside') {
    const { target, reason } = event.body
    const withdrawn = [...own.withdrawn, { target, reason }].sort((a, b) =>
      a.target + a.reason < b.target + b.reason ? -1 : 1,
    )
    return { ...view, own: { ...own, withdrawn } }
  }
  if (event.what !== 'stockMoved') return view
  const { by, why } = event.body
  const moved = { ...own, onHand: own.onHand + by, used: why === 'used' ? own.used - by : own.used }
  const countedAt = why === 'counted' && event.at > (view.countedAt ?? '') ? event.at : view.countedAt
  return { ...view, own: moved, countedAt }
}

const sum = (shares: readonly JobShare[], of: 'reserved' | 'used') => shares.reduce((all, each) => all + each[of], 0)

/**
 * Nothing of it is left and no job waits for any. A lot of which nobody said how many came is not used up, nor are a glue's
 * joints and the shop's passes, which have rows of their own.
 */
export function isUsedUp({ own, onHand, reserved }: Pick<LotView, 'own' | 'onHand' | 'reserved'>): boolean {
  const moved = own.counted.length - own.weighed.length - own.withdrawn.length
  return moved > 0 && onHand <= 0 && reserved <= 0
}

function summed({ onShelf: _, ...view }: LotView): LotView {
  const { own, jobs } = view
  const used = sum(jobs, 'used')
  const reasonOf = new Map(own.withdrawn.map(({ target, reason }) => [target, reason]))
  const all = [...own.weighed, ...jobs.flatMap((share) => share.weighed)].sort(byTime)
  const stock = { onHand: own.onHand - used, reserved: sum(jobs, 'reserved') }
  return {
    ...view,
    ...(isUsedUp({ own, ...stock }) ? {} : { onShelf: 1 }),
    ...stock,
    used: own.used + used,
    weighed: all.filter(({ event }) => !reasonOf.has(event)),
    setAside: all.flatMap((each) => {
      const reason = reasonOf.get(each.event)
      return reason === undefined ? [] : [{ ...each, reason }]
    }),
  }
}

export const lotViewOf = (lot: Id, before: LotView | undefined, records: readonly (AnyFact | AnyEvent)[]): LotView =>
  summed(
    records.reduce<LotView>((view, record) => ('what' in record ? told(view, record) : view), before ?? noLot(lot)),
  )

/**
 * What only teaches (a glue's joints, passes at the grinder) would grow with every job for ever; the newest jobs are kept,
 * as many as a sheet learns from, and a row stays small.
 */
const TEACHING = 240 // weighings

function kept(jobs: readonly JobShare[]): readonly JobShare[] {
  let left = TEACHING
  const isKept = (share: JobShare) => {
    if (share.reserved + share.used + share.arrows.length > 0) return true
    const fits = left > 0
    left -= share.weighed.length
    return fits
  }
  // Ids are in the order the jobs were opened.
  return jobs
    .toSorted((a, b) => (a.job < b.job ? 1 : -1))
    .filter(isKept)
    .toReversed()
}

/** The lot's view with what a job means to it now, in place of what it meant before. */
export function lotWithJob(lot: Id, before: LotView | undefined, job: Id, share: JobShare | undefined): LotView {
  const own = before ?? noLot(lot)
  const others = own.jobs.filter((each) => each.job !== job)
  return summed({ ...own, jobs: kept(share === undefined ? others : [...others, share]) })
}
