/**
 * What this tab remembers of the jobs it last wrote to, so that a save adds its own events and does not tell the whole
 * story again. It holds for one state of the records only: after anybody else's write it is not asked.
 */
import type { OrderEnd } from '../domain/records/event-order'
import type { Hash, Id } from '../domain/records/scalars'
import type { JobStory, ViewRules } from '../domain/records/view-rules'

export interface KnownJob {
  readonly story: JobStory
  readonly end: OrderEnd
  /** What the view must be made again for: subjects and personal data. */
  readonly standsOn: readonly string[]
  /** The personal data and notes that were asked for. */
  readonly named: ReadonlySet<Hash>
  /** The views as they are stored. */
  readonly views: ReturnType<ViewRules['jobViews']>
}
export type KnownJobs = ReadonlyMap<Id, KnownJob>

export interface JobMemory {
  /**
   * Whether a command cannot have been written before: this tab wrote the last, and this page gives this one for the first
   * time. Commands do not outlive their page; after anybody else's write, and at the beginning, the book is asked all the same.
   */
  isNew(command: Id, stamp: string): boolean
  recall(stamp: string): KnownJobs
  /** @param before the state that a write found, `now` the one it left, `jobs` what it made anew */
  keep(before: string, now: string, jobs: KnownJobs): void
}

const KEPT = 8 // jobs: more benches are not worked at from one tab
/** Every command that was given in this page, to whichever book, whether it was written or not. */
const given = new Set<Id>()
const NONE: KnownJobs = new Map()

export function jobMemory(): JobMemory {
  let stamp = ''
  let known = NONE
  return {
    isNew(command, asked) {
      const isFirst = !given.has(command)
      given.add(command)
      return isFirst && asked === stamp
    },
    recall: (asked) => (asked === stamp ? known : NONE),
    keep(before, now, jobs) {
      const older = before === stamp ? [...known].filter(([id]) => !jobs.has(id)) : []
      known = new Map([...older, ...jobs].slice(-KEPT))
      stamp = now
    },
  }
}
