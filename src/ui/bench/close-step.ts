/** What closing a step comes to: confirmed, with the time of a joint that is glued now; or what is in the way. And back. */
import type { Bench } from '../../domain/bench/bench'
import { building } from '../../domain/bench/bench'
import type { CureInTheWay } from '../../domain/bench/cure-state'
import { cureInTheWay, GLUED_AT, JOINT_WORD } from '../../domain/bench/cure-state'
import { cureTimer, roomTemperature } from '../../domain/bench/cure-timer'
import { holdBefore } from '../../domain/bench/hold-before'
import { lastDone } from '../../domain/bench/last-done'
import { leftOf, routeOf } from '../../domain/bench/progress'
import type { NextThing } from '../../domain/bench/progress'
import type { Job } from '../../domain/job/job'
import type { Id } from '../../domain/records/scalars'
import type { Sheet } from '../../domain/sheet/sheet'
import type { AppState } from '../../state/app-store'
import { confirmStep, correctReading, unconfirmStep } from '../../state/bench-actions'
import { endCureEarly, setTimer } from '../../state/timer-actions'
import { stepWords } from '../words/bench-words'
import { doneWords, NOTHING_TO_UNDO, pastHoldWords, takenBackWords, withdrawnWords } from '../words/done-words'
import { cureWaitWords } from '../words/timer-words'

export interface ClosingAt {
  readonly app: AppState
  readonly job: Job
  readonly bench: Bench
  readonly sheet: Sheet
  readonly thing: NextThing
}

export type Closed =
  | { readonly kind: 'done'; readonly said: string }
  | { readonly kind: 'cure'; readonly early: CureInTheWay; readonly said: string }
  /** A hold point that the set is not through. */
  | { readonly kind: 'held'; readonly past: string; readonly said: string }
  | { readonly kind: 'not saved' }

const aboutOf = ({ job, thing: { step, arrow } }: ClosingAt) => ({
  job: job.id,
  arrow: step.confirm === 'set' ? null : (arrow?.id ?? null),
  step: step.key,
})

/** @param pastHold the builder means to go past a hold point; it is a deviation then */
export async function closeStep(at: ClosingAt, pastHold: boolean): Promise<Closed> {
  const { app, bench, sheet, thing } = at
  const { step, arrow } = thing
  const early = cureInTheWay(step.key, bench, sheet, app.now())
  if (early !== undefined) return { kind: 'cure', early, said: cureWaitWords(early, app.now()) }
  const hold = holdBefore(step, bench, sheet)
  const isOpen = bench.deviations.some((each) => each.step === step.key && each.point === null)
  const past = hold === undefined || isOpen ? undefined : stepWords(hold.key).title
  if (past !== undefined && !pastHold) return { kind: 'held', past, said: pastHoldWords(past) }
  const isLast = leftOf(step, bench, sheet).length <= 1
  const isSaved = await confirmStep(app, aboutOf(at), past === undefined ? undefined : `${past}, the whole set`)
  if (!isSaved) return { kind: 'not saved' }
  const unstarted = isLast ? await startCure(at) : ''
  return { kind: 'done', said: doneWords(step.key, step.confirm === 'set' ? undefined : arrow?.no) + unstarted }
}

/** @returns a word about a glue that does not cure in this room */
async function startCure({ app, job, bench, sheet, thing: { step } }: ClosingAt): Promise<string> {
  const joint = GLUED_AT[step.key]
  const timer = joint && cureTimer(sheet, joint, app.now(), roomTemperature(bench))
  if (joint === undefined || timer === undefined) return ''
  if (timer.kind === 'no cure') {
    const { findingWords } = await import('../words/finding-words')
    return ` ${timer.findings.map(findingWords).join(' ')}`
  }
  const { kind: _, ...times } = timer
  await setTimer(app, job.id, { step: step.key, what: JOINT_WORD[joint], ...times })
  return ''
}

const UNDONE = 'undone at the bench'

/** What was done last on this page: the work has gone on to another arrow since, or to another step. */
export interface JustDone {
  readonly step: string
  readonly arrow: Id | null
}

export interface TakenBack {
  /** Undefined when it was not saved. */
  readonly said: string | undefined
  /** It was not done on the arrow at hand. */
  readonly elsewhere: boolean
}

/** @param just taken back where there is nothing on the arrow at hand: *Undo* is pressed for what was done last */
export async function takeBack(at: ClosingAt, just: JustDone | null): Promise<TakenBack> {
  const { app, job, bench, sheet, thing } = at
  const here = lastDone(bench, thing.step, thing.arrow)
  const step = here === undefined ? routeOf(bench, sheet).find(({ key }) => key === just?.step) : thing.step
  const there = building(bench).find(({ id }) => id === just?.arrow) ?? null
  const last = here ?? (step && lastDone(bench, step, there))
  if (step === undefined || last === undefined) return { said: NOTHING_TO_UNDO, elsewhere: false }
  const elsewhere = here === undefined
  const about = { job: job.id, step: step.key }
  if (last.kind === 'confirmed') {
    const saved = await unconfirmStep(app, { ...about, arrow: last.arrow?.id ?? null }, UNDONE)
    return { said: saved ? takenBackWords(step.key, last.arrow?.no) : undefined, elsewhere }
  }
  const { point, raw } = last.kept.reading
  const saved = await correctReading(app, { ...about, arrow: last.arrow.id }, last.kept.event, null, UNDONE)
  return { said: saved ? withdrawnWords(last.arrow.no, point, raw) : undefined, elsewhere }
}

export const endEarly = ({ app, job, thing }: ClosingAt, early: CureInTheWay): Promise<boolean> =>
  endCureEarly(app, job.id, thing.step.key, early)
