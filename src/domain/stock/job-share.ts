/**
 * What one job means to a lot (or to a glue, or to the shop's grinder): pieces it still holds reserved, pieces it used,
 * weights it learned. A pure figure of the job, so that stock cannot tell another story than the bench.
 */
import type { BenchArrow } from '../bench/bench'
import { onItsRoute } from '../bench/fletched-last'
import type { Job } from '../job/job'
import type { Hash, Id } from '../records/scalars'
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
    for (const arrow of job.bench.arrows) tell(arrow, own, at)
  }
  return new Map(
    [...tallies].map(([subject, tally]) => [
      subject,
      { job: job.id, code: job.code, ...tally, arrows: [...new Set(tally.arrows)] },
    ]),
  )
}

function tell(arrow: BenchArrow, sheet: Sheet, at: (subject: Id) => Tally): void {
  const lines = arrowLines(sheet, arrow)
  for (const line of lines) {
    if (line.lot === null) continue
    const spent = isSpent(line.part.kind, arrow)
    // A scrapped arrow gives back what can go back.
    if (!spent && arrow.state === 'scrapped') continue
    const own = at(line.lot)
    if (spent || isCounted(line)) own.arrows.push(arrow.code)
    if (!isCounted(line)) continue
    if (spent) own.used += line.count
    else own.reserved += line.count
  }
  for (const { subject, ...weighing } of benchWeighings(arrow, lines, sheet)) at(subject).weighed.push(weighing)
}
