/**
 * An arrow comes back and gets a part replaced: a small job with a beginning, steps, the glue's own time, and an end. What was
 * built stays in the record as it was; the arrow gets a new version of its own with the reason, and the set a new as-built
 * that names it. Its number stays its own.
 */
import type { ArrowBuilt, AsBuilt } from '../bench/built'
import { accepted } from '../bench/bench'
import type { Reading } from '../bench/reading'
import { arrowBuiltOf } from '../bench/sign-off'
import type { Job } from '../job/job'
import { canonical } from '../records/canonical'
import type { AnyFact } from '../records/read-fact'
import type { Hash, Id } from '../records/scalars'
import type { EventDraft, Said } from '../records/write'
import { newEvent, newFact } from '../records/write'
import type { Sheet } from '../sheet/sheet'
import type { Shelf } from '../stock/shelf'
import { inUse, retirements } from './in-use'
import { repairsBuilt } from './repair-built'
import type { RepairStep } from './repair-steps'
import { cureOfRepair, stepLeft } from './repair-steps'
import type { Repair } from './repairs'
import { openRepair } from './repairs'

export interface RepairAsked {
  readonly arrow: Id
  /** The line of the plan whose part is replaced. */
  readonly line: Id
  readonly part: Id
  readonly lot: Id | null
  /** What is done: *nock replaced*. */
  readonly what: string
  readonly reason: string
  /** Weighed as it came back; undefined when it was not. */
  readonly before: Reading | undefined
}

export type RepairProblem =
  | { readonly code: 'not-signed-off' }
  | { readonly code: 'no-such-arrow' }
  | { readonly code: 'retired'; readonly no: number; readonly cause: string }
  | { readonly code: 'under-repair'; readonly no: number; readonly what: string }
  | { readonly code: 'no-such-part' }
  | { readonly code: 'other-kind'; readonly was: string; readonly now: string }
  | { readonly code: 'no-reason' }
  | { readonly code: 'not-weighed-before' }
  | { readonly code: 'not-weighed' }
  | { readonly code: 'step-left'; readonly step: RepairStep }
  | { readonly code: 'still-curing'; readonly what: string; readonly dueAt: string }
  | { readonly code: 'ended' }

/** Everything that stands against beginning a repair; an empty list is leave to write it. */
export function repairProblems(job: Job, sheet: Sheet, shelf: Shelf, asked: RepairAsked): readonly RepairProblem[] {
  if (job.signedOff.length === 0) return [{ code: 'not-signed-off' }]
  const gone = retirements(job).get(asked.arrow)
  const arrow = job.bench?.arrows.find(({ id }) => id === asked.arrow)
  if (arrow === undefined) return [{ code: 'no-such-arrow' }]
  if (gone !== undefined) return [{ code: 'retired', no: arrow.no, cause: gone.cause }]
  if (!inUse(job).includes(arrow)) return [{ code: 'no-such-arrow' }]
  const open = openRepair(job, arrow.id)
  if (open !== undefined) return [{ code: 'under-repair', no: arrow.no, what: open.what }]
  const problems: RepairProblem[] = []
  const line = sheet.plan.lines.find(({ id }) => id === asked.line)
  const was = sheet.parts.find(({ id }) => id === line?.part)?.part
  const now = shelf.parts.get(asked.part)?.body ?? sheet.parts.find(({ id }) => id === asked.part)?.part
  if (was === undefined || now === undefined) problems.push({ code: 'no-such-part' })
  else if (was.kind !== now.kind) problems.push({ code: 'other-kind', was: was.kind, now: now.kind })
  if (asked.reason.trim() === '') problems.push({ code: 'no-reason' })
  if (asked.before === undefined) problems.push({ code: 'not-weighed-before' })
  return problems
}

/** @throws when something stands against it: ask `repairProblems` first */
export function beginRepair(job: Job, sheet: Sheet, shelf: Shelf, asked: RepairAsked, repair: Id): EventDraft {
  if (repairProblems(job, sheet, shelf, asked).length > 0) throw new Error('this repair cannot be begun')
  const { arrow, line, part, lot, what, before } = asked
  const onSheet = sheet.parts.some(({ id }) => id === part) && (lot === null || sheet.lots.some(({ id }) => id === lot))
  const copy = onSheet
    ? {}
    : {
        copy: {
          part: (shelf.parts.get(part)?.body ?? sheet.parts.find(({ id }) => id === part)?.part)!,
          lot: lot === null ? null : (shelf.lots.get(lot)?.body ?? null),
          learned: [],
        },
      }
  const reason = asked.reason.trim()
  return newEvent(
    'repairBegun',
    { job: job.id, arrow },
    { repair, line, part, lot, ...copy, what, reason, before: before! },
  )
}

/** Everything that stands against closing a repair with this weight. */
export function closingProblems(
  job: Job,
  sheet: Sheet,
  repair: Repair,
  finished: Reading | undefined,
  now: string,
): readonly RepairProblem[] {
  if (openRepair(job, repair.arrow)?.repair !== repair.repair) return [{ code: 'ended' }]
  const left = stepLeft(repair, sheet)
  if (left !== 'weigh') return [{ code: 'step-left', step: left }]
  const [curing] = cureOfRepair(repair, now)?.running ?? []
  if (curing !== undefined) return [{ code: 'still-curing', what: curing.what, dueAt: curing.dueAt }]
  return finished === undefined ? [{ code: 'not-weighed' }] : []
}

/** What closing a repair comes to, event by event. @throws when something stands against it: ask `closingProblems` first */
export function closeRepair(
  job: Job,
  sheet: Sheet,
  repair: Repair,
  finished: Reading | undefined,
  now: string,
): readonly EventDraft[] {
  if (closingProblems(job, sheet, repair, finished, now).length > 0) throw new Error('this repair cannot be closed')
  const { arrow: id, line, part, lot, copy, what, reason } = repair
  const about = { job: job.id, arrow: id }
  const arrow = job.bench!.arrows.find((each) => each.id === id)!
  const old = accepted(arrow, 'finishedWeight')
  const planned = sheet.plan.lines.find((each) => each.id === line)
  const own = arrow.fitted.find((each) => each.line === line)
  const before = own ?? planned
  const pieces = own?.count ?? planned?.count ?? 1
  return [
    ...repair.timers
      .filter(({ endedAt }) => endedAt === null)
      .map((timer) => newEvent('timerEnded', about, { timer: timer.id, endedAt: now })),
    newEvent('fitted', about, { line, part, lot, ...(copy === undefined ? {} : { copy }), reason }),
    old === undefined
      ? newEvent('read', about, { step: 'inspect', reading: finished! })
      : newEvent('corrected', about, { target: old.event, reading: finished!, reason }),
    newEvent('confirmed', about, { step: 'inspect' }),
    newEvent('repaired', about, { what, reason, repair: repair.repair, finished: finished! }),
    // What is fitted counts as used; the pieces it replaces are used up as well.
    ...(before === undefined
      ? []
      : [newEvent('stockMoved', { job: job.id }, { part: before.part, lot: before.lot, by: -pieces, why: 'used' })]),
  ]
}

/** The as-built that stands, as it was read: its hash, its body, and its arrows by hash. */
export interface Standing {
  readonly hash: Hash
  readonly body: AsBuilt
  readonly arrows: ReadonlyMap<Hash, ArrowBuilt>
}

/** The arrows whose story has gone on since the as-built that stands; of one under repair it is not told to its end yet. */
export const changedSince = (job: Job, sheet: Sheet, standing: Standing) =>
  [...standing.arrows].flatMap(([hash, before]) => {
    const arrow = job.bench?.arrows.find(({ id }) => id === before.arrow)
    if (arrow === undefined || job.bench === null || openRepair(job, arrow.id) !== undefined) return []
    const body = { ...arrowBuiltOf(arrow, job.bench, sheet), ...repairsBuilt(job, arrow.id) }
    return canonical(body) === canonical(before) ? [] : [{ hash, body }]
  })

/**
 * A new as-built after repairs: changed arrows as new versions of themselves, the others as they were.
 *
 * @returns null when nothing has changed since the one that stands
 */
export function repairedRecord(job: Job, sheet: Sheet, standing: Standing, said: Said, reason: string) {
  const changed = changedSince(job, sheet, standing)
  if (changed.length === 0) return null
  const anew = new Map(
    changed.map(({ hash, body }) => [hash, newFact(said, 'arrowBuilt', body.arrow, body, { parents: [hash], reason })]),
  )
  const version = standing.body.version + 1
  const body: AsBuilt = {
    ...standing.body,
    version,
    arrows: standing.body.arrows.map((hash) => anew.get(hash)?.hash ?? hash),
    signedOffBy: said.by,
  }
  const built = newFact(said, 'asBuilt', job.id, body, { parents: [standing.hash], reason })
  const facts: readonly AnyFact[] = [...anew.values(), built]
  return { facts, events: [newEvent('signedOff', { job: job.id }, { asBuilt: built.hash, version })] }
}
