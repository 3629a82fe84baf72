/** Repairs of arrows that came back: begun, done step by step, closed or given up. Each true once it is on the disk. */
import type { Reading } from '../domain/bench/reading'
import type { Job } from '../domain/job/job'
import { readable } from '../domain/records/read-fact'
import { newEvent } from '../domain/records/write'
import type { RepairAsked, Standing } from '../domain/send/repair'
import { beginRepair, changedSince, closeRepair, repairedRecord } from '../domain/send/repair'
import { repairStepDone } from '../domain/send/repair-steps'
import type { Repair } from '../domain/send/repairs'
import type { Sheet } from '../domain/sheet/sheet'
import type { AppState } from './app-store'

type Store = Pick<AppState, 'write' | 'repository' | 'shelf' | 'open' | 'now'>

async function standingOf({ repository, open }: Store): Promise<Standing | null> {
  const hash = open?.job.signedOff.at(-1)?.asBuilt
  const body = hash === undefined ? undefined : open?.asBuilts.get(hash)
  if (repository === null || hash === undefined || body === undefined) return null
  const facts = readable((await repository.facts(body.arrows)).flatMap((each) => each ?? []))
  return {
    hash,
    body,
    arrows: new Map(facts.flatMap((fact) => (fact.kind === 'arrowBuilt' ? [[fact.hash, fact.body]] : []))),
  }
}

/** The new version of the record, where an arrow's story has gone on; true when there is nothing left to record. */
export async function recordRepairs(store: Store, sheet: Sheet, reason: string): Promise<boolean> {
  const standing = await standingOf(store)
  if (standing === null || store.open === null) return false
  const { job } = store.open
  if (repairedRecord(job, sheet, standing, { by: '', at: '' }, reason) === null) return true
  return store.write((said) => repairedRecord(job, sheet, standing, said, reason)!)
}

/** Numbers of the arrows whose story has gone on since the as-built that stands: the second write of a repair is missing. */
export async function unrecorded(store: Store, sheet: Sheet): Promise<readonly number[]> {
  const standing = await standingOf(store)
  if (standing === null || store.open === null) return []
  return changedSince(store.open.job, sheet, standing).map(({ body }) => body.no)
}

export const beginRepairOf = ({ write, shelf }: Store, job: Job, sheet: Sheet, asked: RepairAsked) =>
  write((_, ids) => ({ events: [beginRepair(job, sheet, shelf, asked, ids.id())] }))

export const doRepairStep = (
  { write }: Store,
  job: Job,
  repair: Repair,
  done: Parameters<typeof repairStepDone>[2],
  what: string,
) => write((_, ids) => ({ events: repairStepDone(job, repair, done, { timer: ids.id(), what }) }))

/** What happened first, then the record's new version; the second can be made up for when only the first was saved. */
export async function closeRepairOf(
  get: () => Store,
  sheet: Sheet,
  repair: Repair,
  finished: Reading,
  now: string,
): Promise<boolean> {
  const { write, open } = get()
  if (open === null) return false
  if (!(await write(() => ({ events: closeRepair(open.job, sheet, repair, finished, now) })))) return false
  return recordRepairs(get(), sheet, repair.reason)
}

/** Given up, as an arrow that was not the one meant; what was done to it all the same goes into its record. */
export async function leaveRepair(get: () => Store, sheet: Sheet, repair: Repair, reason: string): Promise<boolean> {
  const { write, open } = get()
  if (open === null) return false
  const about = { job: open.job.id, arrow: repair.arrow }
  const left = newEvent('repairLeft', about, { repair: repair.repair, reason })
  const events = repair.timers
    .filter(({ endedAt }) => endedAt === null)
    .map((timer) => newEvent('timerEnded', about, { timer: timer.id, endedAt: get().now() }))
  if (!(await write(() => ({ events: [...events, left] })))) return false
  return recordRepairs(get(), sheet, reason)
}
