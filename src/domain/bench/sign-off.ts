/** Signing off: what must be so first, and the records that close the set. */
import type { JobEvent } from '../job/events'
import type { Job } from '../job/job'
import type { AnyFact } from '../records/read-fact'
import type { Id } from '../records/scalars'
import { newEvent, newFact } from '../records/write'
import type { Said } from '../records/write'
import { repairsBuilt } from '../send/repair-built'
import type { Sheet } from '../sheet/sheet'
import type { Bench, BenchArrow } from './bench'
import { accepted, building } from './bench'
import type { ArrowBuilt, AsBuilt } from './built'
import type { DataPoint } from './data-points'
import { disputes } from './disputes'

export type SignOffProblem =
  | { readonly code: 'no-set' }
  | { readonly code: 'nothing-built' }
  | { readonly code: 'undecided-deviation'; readonly no: number | null; readonly step: string; readonly deviation: Id }
  | { readonly code: 'disputed-reading'; readonly no: number; readonly point: DataPoint }
  | { readonly code: 'missing-weight'; readonly no: number }
  | { readonly code: 'not-inspected'; readonly no: number }
  | { readonly code: 'decided-scrap-still-in-set'; readonly no: number }
  | {
      readonly code: 'counts-differ'
      readonly started: number
      readonly accepted: number
      readonly scrapped: number
      readonly ordered: number
    }

export function countsOf(bench: Bench): AsBuilt['counts'] {
  const scrapped = bench.arrows.filter((arrow) => arrow.state === 'scrapped').length
  return { started: bench.arrows.length, accepted: bench.arrows.length - scrapped, scrapped, sent: 0 }
}

/**
 * Everything that stands in the way of signing off; an empty list is leave to sign.
 *
 * @param events of the job: they tell which device took a reading
 */
export function signOffProblems(job: Job, sheet: Sheet, events: readonly JobEvent[] = []): readonly SignOffProblem[] {
  const { bench } = job
  if (bench === null) return [{ code: 'no-set' }]
  const arrows = building(bench)
  if (arrows.length === 0) return [{ code: 'nothing-built' }]
  const numberOf = (id: Id | null) => bench.arrows.find((arrow) => arrow.id === id)?.no ?? null
  const problems: SignOffProblem[] = bench.deviations
    .filter((each) => each.decision === null)
    .map((each) => ({ code: 'undecided-deviation', no: numberOf(each.arrow), step: each.step, deviation: each.id }))
  for (const { no, point } of disputes(bench, events)) problems.push({ code: 'disputed-reading', no, point })
  for (const arrow of arrows) {
    if (accepted(arrow, 'finishedWeight') === undefined) problems.push({ code: 'missing-weight', no: arrow.no })
    if (!arrow.confirmed.some((each) => each.step === 'inspect')) problems.push({ code: 'not-inspected', no: arrow.no })
    const scrap = bench.deviations.some((each) => each.arrow === arrow.id && each.decision?.disposition === 'scrap')
    if (scrap) problems.push({ code: 'decided-scrap-still-in-set', no: arrow.no })
  }
  const counts = countsOf(bench)
  const { quantity: ordered, spares } = sheet.plan
  if (counts.accepted < ordered || counts.accepted > ordered + spares)
    problems.push({ code: 'counts-differ', ...counts, ordered })
  return problems
}

export function arrowBuiltOf(arrow: BenchArrow, bench: Bench, sheet: Sheet): ArrowBuilt {
  const fitted = sheet.plan.lines.map((line) => {
    const own = arrow.fitted.find((each) => each.line === line.id)
    return own ?? { line: line.id, part: line.part, lot: line.lot, ...(line.no === undefined ? {} : { no: line.no }) }
  })
  const beside = arrow.fitted.filter((each) => !sheet.plan.lines.some((line) => line.id === each.line))
  return {
    arrow: arrow.id,
    code: arrow.code,
    no: arrow.no,
    sheet: bench.sheet,
    outcome: arrow.state === 'scrapped' ? 'scrapped' : 'accepted',
    ...(arrow.cause === undefined ? {} : { cause: arrow.cause }),
    ...(arrow.replaces === undefined ? {} : { replaces: arrow.replaces }),
    fitted: [...fitted, ...beside],
    readings: [...arrow.readings],
    confirmed: [...arrow.confirmed],
    deviations: bench.deviations
      .filter((each) => each.arrow === arrow.id)
      .map(({ id, step, point, required, found, why, decision }) => ({
        id,
        step,
        point,
        required,
        found,
        why,
        decision,
      })),
  }
}

/** @throws when something still stands in the way: ask `signOffProblems` first */
export function signOff(job: Job, sheet: Sheet, said: Said, reason?: string) {
  const { bench } = job
  if (bench === null || signOffProblems(job, sheet).length > 0) throw new Error('not ready to be signed off')
  const before = job.signedOff.at(-1)
  const arrows = bench.arrows.map((arrow) => {
    const body = { ...arrowBuiltOf(arrow, bench, sheet), ...repairsBuilt(job, arrow.id) }
    return newFact(said, 'arrowBuilt', arrow.id, body)
  })
  const builders = [...new Set(bench.arrows.flatMap((arrow) => arrow.readings.map((kept) => kept.by)))].sort()
  const version = (before?.version ?? 0) + 1
  const body: AsBuilt = {
    job: job.id,
    jobCode: job.code,
    version,
    sheet: bench.sheet,
    arrows: arrows.map((fact) => fact.hash),
    counts: countsOf(bench),
    builders,
    signedOffBy: said.by,
    ...(bench.scaleChecks.length === 0 ? {} : { scaleChecks: bench.scaleChecks.slice(-200) }),
  }
  const built = newFact(said, 'asBuilt', job.id, body, {
    parents: before === undefined ? [] : [before.asBuilt],
    ...(reason === undefined ? {} : { reason }),
  })
  const facts: readonly AnyFact[] = [...arrows, built]
  return { facts, events: [newEvent('signedOff', { job: job.id }, { asBuilt: built.hash, version })] }
}
