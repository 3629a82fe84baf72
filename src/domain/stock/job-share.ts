/**
 * What one job means to a lot (or to a glue, or to the shop's grinder): pieces it still holds reserved, pieces it used,
 * weights it learned. A pure figure of the job, so that stock cannot tell another story than the bench.
 */
import type { BenchArrow } from '../bench/bench'
import { onItsRoute } from '../bench/fletched-last'
import type { Job } from '../job/job'
import type { Hash, Id } from '../records/scalars'
import { remembered } from '../remembered'
import type { Sheet } from '../sheet/sheet'
import type { ArrowLine } from './arrow-lines'
import { arrowLines } from './arrow-lines'
import { benchWeighings } from './bench-weighings'
import { isSpent } from './spent'
import type { Weighing } from './weighing'

export interface JobShare {
  readonly job: Id
  readonly code: string
  readonly reserved: number
  readonly used: number
  /** Codes of the arrows that have a piece of it. */
  readonly arrows: readonly string[]
  readonly weighed: readonly Weighing[]
}

/** Glue is counted by the bottle, and no joint says how much of one it took. */
const isCounted = (line: ArrowLine): boolean => line.part.kind !== 'glue'

interface Tally {
  reserved: number
  used: number
  readonly arrows: string[]
  readonly weighed: Weighing[]
}

/** @returns by lot; by the glue's part for joints; by the shop's rules for passes */
export function jobShares(job: Job, sheetOf: (hash: Hash) => Sheet | undefined): ReadonlyMap<Id, JobShare> {
  const hash = job.bench?.sheet ?? job.frozen.at(-1)?.sheet
  const sheet = hash === undefined ? undefined : sheetOf(hash)
  const tallies = new Map<Id, Tally>()
  const at = (subject: Id): Tally => {
    const known = tallies.get(subject) ?? { reserved: 0, used: 0, arrows: [], weighed: [] }
    tallies.set(subject, known)
    return known
  }
  if (sheet !== undefined && job.bench === null) {
    const arrows = sheet.plan.quantity + sheet.plan.spares
    for (const line of arrowLines(sheet).filter(isCounted)) {
      if (line.lot !== null) at(line.lot).reserved += line.count * arrows
    }
  }
  if (sheet !== undefined && job.bench !== null) {
    const own = onItsRoute(sheet, job.bench)
    for (const arrow of job.bench.arrows) for (const share of sharesOf(arrow, own)) add(at(share.subject), arrow, share)
  }
  return new Map(
    [...tallies].map(([subject, tally]) => [
      subject,
      { job: job.id, code: job.code, ...tally, arrows: [...new Set(tally.arrows)] },
    ]),
  )
}

/** What one arrow has of a lot, or says of a subject; not more than one of these at a time. */
interface ArrowShare {
  readonly subject: Id
  readonly reserved?: number
  readonly used?: number
  readonly isOnIt?: boolean
  readonly weighed?: Weighing
}

/** A save changes one arrow of the set; the others' need not be worked out again. */
const sharesOf = remembered((arrow: BenchArrow, sheet: Sheet): readonly ArrowShare[] => {
  const lines = arrowLines(sheet, arrow)
  const held = lines.flatMap((line): readonly ArrowShare[] => {
    if (line.lot === null) return []
    const spent = isSpent(line.part.kind, arrow)
    // A scrapped arrow gives back what can go back.
    if (!spent && arrow.state === 'scrapped') return []
    const counted = isCounted(line)
    const pieces = !counted ? {} : spent ? { used: line.count } : { reserved: line.count }
    return [{ subject: line.lot, isOnIt: spent || counted, ...pieces }]
  })
  const said = benchWeighings(arrow, lines, sheet).map(({ subject, ...weighed }) => ({ subject, weighed }))
  return [...held, ...said]
})

function add(tally: Tally, arrow: BenchArrow, { reserved = 0, used = 0, isOnIt = false, weighed }: ArrowShare): void {
  tally.reserved += reserved
  tally.used += used
  if (isOnIt) tally.arrows.push(arrow.code)
  if (weighed !== undefined) tally.weighed.push(weighed)
}
