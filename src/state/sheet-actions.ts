/** What the sheet page does: each one command, true once it is on the disk. */
import type { Job } from '../domain/job/job'
import type { Id } from '../domain/records/scalars'
import type { EventBody } from '../domain/job/events'
import { newEvent, newFact } from '../domain/records/write'
import { freeze, startSet } from '../domain/sheet/freeze'
import type { PlanLine } from '../domain/sheet/plan'
import type { Sheet } from '../domain/sheet/sheet'
import type { Part } from '../domain/stock/part'
import type { AppState } from './app-store'

type Write = Pick<AppState, 'write'>

export const setPlan = ({ write }: Write, job: Id, change: EventBody<'planSet'>) =>
  write(() => ({ events: [newEvent('planSet', { job }, change)] }))

export const addLine = ({ write }: Write, job: Id, part: Id, lot: Id | null, count = 1) =>
  write((_, ids) => ({ events: [newEvent('lineSet', { job }, { line: { id: ids.id(), part, lot, count } })] }))

/** A line with another part, lot or number of pieces, in the same place of the plan. */
export const setLine = ({ write }: Write, job: Id, line: PlanLine) =>
  write(() => ({ events: [newEvent('lineSet', { job }, { line })] }))

/** @param lines in the builder's order; none: by position again */
export const orderLines = ({ write }: Write, job: Id, lines: readonly Id[]) =>
  write(() => ({ events: [newEvent('linesOrdered', { job }, { lines: [...lines] })] }))

export const removeLine = ({ write }: Write, job: Id, line: Id) =>
  write(() => ({ events: [newEvent('lineRemoved', { job }, { line })] }))

/**
 * A part typed in on the spot goes to Parts, and onto the sheet at once.
 * @param line the line it takes the place of; a new one without it
 */
export const addPartAndLine = ({ write }: Write, job: Id, part: Part, count: number, line?: Id) =>
  write((said, ids) => {
    const id = ids.id()
    return {
      facts: [newFact(said, 'part', id, part)],
      events: [newEvent('lineSet', { job }, { line: { id: line ?? ids.id(), part: id, lot: null, count } })],
    }
  })

export const freezeSheet = ({ write }: Write, job: Job, sheet: Sheet, reason?: string) =>
  write((said) => freeze(job, sheet, said, reason))

export const beginSet = ({ write }: Write, job: Job, sheet: Sheet) => write((_, ids) => startSet(job, sheet, ids))
