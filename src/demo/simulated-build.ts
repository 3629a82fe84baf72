/**
 * A builder who does what the bench says: reads each point off a true set, takes passes off the post until the coach says
 * stop, weighs the wiped joint wet and touches it up until the coach says done, confirms, and goes on. For the demo shop's
 * past orders, and for tests of the bench as a whole.
 */
import { inGrains, inInches } from '../core/quantity'
import type { Bench, BenchArrow } from '../domain/bench/bench'
import type { DataPoint } from '../domain/bench/data-points'
import { DATA_POINTS } from '../domain/bench/data-points'
import { deviationOf } from '../domain/bench/deviation-of'
import { glueAdvice } from '../domain/bench/glue-advice'
import { isWithin } from '../domain/bench/limits'
import { nextThing } from '../domain/bench/progress'
import { setLanding } from '../domain/bench/set-forecast'
import { landedWet, ownLimit } from '../domain/bench/taking-at'
import { takeReading } from '../domain/bench/take-reading'
import { trimAdvice } from '../domain/bench/trim-advice'
import type { Job } from '../domain/job/job'
import type { Id } from '../domain/records/scalars'
import { newEvent } from '../domain/records/write'
import type { EventDraft } from '../domain/records/write'
import { sheetFigures } from '../domain/sheet/sheet-figures'
import type { SheetFigures } from '../domain/sheet/sheet-figures'
import type { Sheet } from '../domain/sheet/sheet'
import type { Dice } from './dice'
import { DRIFT_SD, PASSES, TOUCH, trueSet, truth, typed } from './true-set'
import type { TrueArrow } from './true-set'

/** Writes the events and gives the job as it is then. */
export type Perform = (events: readonly EventDraft[]) => Promise<Job>

export interface Habits {
  /** The step to stop before; left out, the route is walked to its end. */
  readonly until?: string
  /** Wipes the squeeze-out by eye and weighs no joint wet. */
  readonly wipesByEye?: boolean
}

export interface Built {
  readonly job: Job
  readonly truths: ReadonlyMap<Id, TrueArrow>
  /** Arrows that came out off their number by a scale that had wandered, and were weighed again once it was checked. */
  readonly weighedAgain: ReadonlySet<Id>
}

const SOME_DAY = '2026-01-01T00:00:00.000Z' // of a build nobody asks the date of
const MOST_ACTIONS = 2000 // a set of twelve takes about four hundred

interface AtBench {
  readonly arrow: BenchArrow
  readonly real: TrueArrow
  /** Reads a point off the true arrow, as the scale of this step shows it. */
  readonly read: (point: DataPoint) => Promise<Job>
  readonly confirm: () => Promise<Job>
}

interface Hand {
  readonly perform: Perform
  /** Of a new deviation. */
  readonly id: () => Id
  /** When the readings were taken. */
  readonly takenAt?: string
}

export async function simulatedBuild(
  started: Job,
  sheet: Sheet,
  dice: Dice,
  { perform, id, takenAt = SOME_DAY }: Hand,
  { until, wipesByEye = false }: Habits = {},
): Promise<Built> {
  const worked = sheetFigures(sheet)
  if (worked === undefined || started.bench === null) throw new Error('nothing is under way to be built')
  const truths = new Map<Id, TrueArrow>()
  const set = trueSet(worked.items, sheet, started.bench.arrows.length, dice)
  started.bench.arrows.forEach((arrow, i) => truths.set(arrow.id, set[i]!))
  const weighedAgain = new Set<Id>()
  const drifts = new Map<string, number>()
  let job = started
  for (let action = 0; action < MOST_ACTIONS; action++) {
    const thing = nextThing(job.bench!, sheet)
    if (thing === null || thing.step.key === until) return { job, truths, weighedAgain }
    const { step, arrow, point } = thing
    if (!drifts.has(step.key)) drifts.set(step.key, dice.normal(0, DRIFT_SD))
    const about = { job: job.id, ...(arrow === null || step.confirm === 'set' ? {} : { arrow: arrow.id }) }
    const confirm = () => perform([newEvent('confirmed', about, { step: step.key })])
    if (arrow === null) {
      job = await confirm()
      continue
    }
    const real = truths.get(arrow.id)!
    const read = (at: DataPoint) => {
      const value = at === 'balancePoint' ? balanceIn(worked) : truth(at, real, worked.items, sheet)
      const own = { bench: job.bench!, arrow, sheet, worked }
      const shown = typed(at, value, dice, drifts.get(step.key))
      const landed = at === 'finishedWeight' ? landedWet(forecastOf(own), sheet) : undefined
      if (landed === undefined || isWithin(Number(shown), landed.limit))
        return perform(readEvents(own, { job: job.id, step: step.key, point: at, raw: shown, id, takenAt }))
      // The bench asks; the scale is checked with its weight, and the arrow weighed again.
      drifts.set(step.key, 0)
      weighedAgain.add(arrow.id)
      return perform(
        readEvents(own, { job: job.id, step: step.key, point: at, raw: typed(at, value, dice), id, takenAt }),
      )
    }
    const at: AtBench = { arrow, real, read, confirm }
    if (point !== null) job = await read(point)
    else if (step.key === 'trim') job = await trimmed(job, at, { sheet, worked, dice })
    else if (step.key === 'edge') job = await edged(job, at, { sheet, worked })
    else if (step.key === 'bond' && !wipesByEye) job = await landed(at, { sheet, worked, dice })
    else job = await confirm()
  }
  throw new Error('the route has no end')
}

/** An arrow that lands on its number balances where the plan says it does. */
function balanceIn({ figures }: SheetFigures): number {
  const balance = figures?.balance
  if (balance?.ok !== true) throw new Error('the plan has no balance point')
  return inInches(typeof balance.value === 'number' ? balance.value : balance.value.value)
}

interface Own {
  readonly bench: Bench
  readonly arrow: BenchArrow
  readonly sheet: Sheet
  readonly worked: SheetFigures
}
const forecastOf = ({ bench, arrow, sheet, worked }: Own) =>
  setLanding(bench, sheet, worked.items).arrows.get(arrow.id)!

interface Typed extends Required<Pick<Hand, 'id' | 'takenAt'>> {
  readonly job: Id
  readonly step: string
  readonly point: DataPoint
  readonly raw: string
}

/** The reading, and out of its limits the deviation that it opens and how it was decided. */
function readEvents(own: Own, { job, step, point, raw, id, takenAt }: Typed): readonly EventDraft[] {
  const scale = DATA_POINTS[point].unit === 'gr' ? 'Scale 1' : ''
  const taking = {
    point,
    source: 'typed',
    scale,
    stable: true,
    attempt: 1,
    takenAt,
  } as const
  const answer = takeReading(raw, taking, true)
  if (answer.kind !== 'taken') throw new Error(`the bench did not take ${raw} at ${point}`)
  const about = { job, arrow: own.arrow.id }
  const read = newEvent('read', about, { step, reading: answer.reading })
  const limit = point === 'finishedWeight' ? ownLimit(point, forecastOf(own), own.sheet) : undefined
  const deviation = deviationOf(answer.reading, step, own.sheet, id(), limit)
  if (deviation === null) return [read]
  const decided = {
    deviation: deviation.id,
    disposition: 'use as is',
    reason: 'near enough for this hunt; named on the sheet',
  } as const
  return [read, newEvent('deviationOpened', about, deviation), newEvent('deviationDecided', { job }, decided)]
}

interface With {
  readonly sheet: Sheet
  readonly worked: SheetFigures
}

/** Passes until the coach says stop; each is weighed, dry and cool. */
async function trimmed(started: Job, at: AtBench, { dice, ...own }: With & { readonly dice: Dice }): Promise<Job> {
  let { bench } = started
  for (let pass = 0; pass < MOST_ACTIONS; pass++) {
    const { advice } = trimAdvice(forecastOf({ bench: bench!, arrow: at.arrow, ...own }), own.worked, own.sheet)
    const next = advice?.ok ? advice.value.next : 'stop'
    if (next === 'chamfer' || next === 'stop') return at.confirm()
    const [mean, sd] = PASSES[next]
    at.real.trimmedGr += Math.max(0.05, dice.normal(mean, sd))
    bench = (await at.read('trimWeight')).bench
  }
  throw new Error('the post has no end')
}

/** Breaking the edge takes what its geometry says; then the arrow is weighed, for the last time dry. */
async function edged({ bench }: Job, at: AtBench, own: With): Promise<Job> {
  const advice = trimAdvice(forecastOf({ bench: bench!, arrow: at.arrow, ...own }), own.worked, own.sheet)
  at.real.trimmedGr += inGrains(advice.chamfer)
  await at.read('edgeWeight')
  return at.confirm()
}

/** Wipes and adds while the glue is open, weighing each time, until the coach says that it lands or that it cannot. */
async function landed(at: AtBench, { dice, ...own }: With & { readonly dice: Dice }): Promise<Job> {
  for (let touch = 0; touch < MOST_ACTIONS; touch++) {
    const { bench } = await at.read('bondWeight')
    const glue = glueAdvice(forecastOf({ bench: bench!, arrow: at.arrow, ...own }), own.worked, own.sheet)
    const next = glue?.advice.ok ? glue.advice.value.next : 'question'
    if (next !== 'wipe' && next !== 'add') return at.confirm()
    const [mean, sd] = TOUCH
    at.real.touchedGr += (next === 'add' ? 1 : -1) * Math.max(0.03, dice.normal(mean, sd))
  }
  throw new Error('the glue has no end')
}
