/**
 * An arrow comes back and gets a part replaced. What was built stays in the record as it was; the arrow gets a new version
 * of its own with the reason, and the set a new as-built that names it. Its number stays its own.
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

export interface RepairAsked {
  readonly arrow: Id
  /** The line of the plan whose part is replaced. */
  readonly line: Id
  readonly part: Id
  readonly lot: Id | null
  /** What was done: *nock replaced*. */
  readonly what: string
  readonly reason: string
  /** Weighed after the repair; undefined when it was not. */
  readonly finished: Reading | undefined
}

export type RepairProblem =
  | { readonly code: 'not-signed-off' }
  | { readonly code: 'no-such-arrow' }
  | { readonly code: 'retired'; readonly no: number; readonly cause: string }
  | { readonly code: 'no-such-part' }
  | { readonly code: 'other-kind'; readonly was: string; readonly now: string }
  | { readonly code: 'no-reason' }
  | { readonly code: 'not-weighed' }

/** Everything that stands against a repair; an empty list is leave to write it. */
export function repairProblems(job: Job, sheet: Sheet, shelf: Shelf, asked: RepairAsked): readonly RepairProblem[] {
  if (job.signedOff.length === 0) return [{ code: 'not-signed-off' }]
  const gone = retirements(job).get(asked.arrow)
  const arrow = job.bench?.arrows.find(({ id }) => id === asked.arrow)
  if (arrow === undefined) return [{ code: 'no-such-arrow' }]
  if (gone !== undefined) return [{ code: 'retired', no: arrow.no, cause: gone.cause }]
  if (!inUse(job).includes(arrow)) return [{ code: 'no-such-arrow' }]
  const problems: RepairProblem[] = []
  const line = sheet.plan.lines.find(({ id }) => id === asked.line)
  const was = sheet.parts.find(({ id }) => id === line?.part)?.part
  const now = shelf.parts.get(asked.part)?.body ?? sheet.parts.find(({ id }) => id === asked.part)?.part
  if (was === undefined || now === undefined) problems.push({ code: 'no-such-part' })
  else if (was.kind !== now.kind) problems.push({ code: 'other-kind', was: was.kind, now: now.kind })
  if (asked.reason.trim() === '') problems.push({ code: 'no-reason' })
  if (asked.finished === undefined) problems.push({ code: 'not-weighed' })
  return problems
}

/** What happened, event by event. @throws when something stands against it: ask `repairProblems` first */
export function repairEvents(job: Job, sheet: Sheet, shelf: Shelf, asked: RepairAsked): readonly EventDraft[] {
  if (repairProblems(job, sheet, shelf, asked).length > 0) throw new Error('this repair cannot be recorded')
  const about = { job: job.id, arrow: asked.arrow }
  const { line, part, lot, what, finished } = asked
  const reason = asked.reason.trim()
  const arrow = job.bench!.arrows.find(({ id }) => id === asked.arrow)!
  const old = accepted(arrow, 'finishedWeight')
  const before = arrow.fitted.find((each) => each.line === line) ?? sheet.plan.lines.find(({ id }) => id === line)
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
  return [
    newEvent('fitted', about, { line, part, lot, ...copy, reason }),
    ...(finished === undefined
      ? []
      : [
          old === undefined
            ? newEvent('read', about, { step: 'inspect', reading: finished })
            : newEvent('corrected', about, { target: old.event, reading: finished, reason }),
        ]),
    newEvent('repaired', about, { what, reason }),
    // What is fitted counts as used; the piece it replaces is used up as well.
    ...(before === undefined
      ? []
      : [newEvent('stockMoved', { job: job.id }, { part: before.part, lot: before.lot, by: -1, why: 'used' })]),
  ]
}

/** The as-built that stands, as it was read: its hash, its body, and its arrows by hash. */
export interface Standing {
  readonly hash: Hash
  readonly body: AsBuilt
  readonly arrows: ReadonlyMap<Hash, ArrowBuilt>
}

/** The arrows whose story has gone on since the as-built that stands. */
export const changedSince = (job: Job, sheet: Sheet, standing: Standing) =>
  [...standing.arrows].flatMap(([hash, before]) => {
    const arrow = job.bench?.arrows.find(({ id }) => id === before.arrow)
    if (arrow === undefined || job.bench === null) return []
    const body = arrowBuiltOf(arrow, job.bench, sheet)
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
