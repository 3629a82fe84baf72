/** Timers at the bench: started, put away, set anew by the room, and a cure ended before its time as a deviation. */
import type { Timer } from '../domain/bench/bench'
import type { CureInTheWay } from '../domain/bench/cure-state'
import { JOINT_WORD } from '../domain/bench/cure-state'
import type { Id } from '../domain/records/scalars'
import { newEvent } from '../domain/records/write'
import type { AppState } from './app-store'

type Writer = Pick<AppState, 'write'>
type Clocked = Pick<AppState, 'write' | 'now'>

export interface TimerAsked {
  readonly step: string
  readonly what: string
  readonly startedAt: string
  readonly dueAt: string
  readonly temperatureC: number | null
}

export const setTimer = ({ write }: Writer, job: Id, asked: TimerAsked) =>
  write((_, ids) => ({ events: [newEvent('timerSet', { job }, { timer: ids.id(), ...asked })] }))

const aboutOf = (job: Id, { arrow }: Pick<Timer, 'arrow'>) => ({ job, ...(arrow === null ? {} : { arrow }) })

/** One whose time is over, or that stands for no cure. */
export const endTimer = ({ write, now }: Clocked, job: Id, timer: Timer) =>
  write(() => ({ events: [newEvent('timerEnded', aboutOf(job, timer), { timer: timer.id, endedAt: now() })] }))

/** The same start, another end: the room turned out warmer or colder. */
export const setAnew = ({ write, now }: Clocked, job: Id, timer: Timer, dueAt: string, temperatureC: number) =>
  write((_, ids) => {
    const { step, what, startedAt } = timer
    return {
      events: [
        newEvent('timerEnded', aboutOf(job, timer), { timer: timer.id, endedAt: now() }),
        newEvent('timerSet', aboutOf(job, timer), { timer: ids.id(), step, what, startedAt, dueAt, temperatureC }),
      ],
    }
  })

/** A cure ended before its time is a deviation, open until it is decided; the step is done all the same. */
export const endCureEarly = ({ write, now }: Clocked, job: Id, step: string, { running, unstarted }: CureInTheWay) =>
  write((_, ids) => {
    const at = now()
    const opened = (required: string, found: string) =>
      newEvent(
        'deviationOpened',
        { job },
        { id: ids.id(), step, point: null, required, found, why: '', decision: null },
      )
    return {
      events: [
        ...running.flatMap(({ id, what, dueAt }) => [
          newEvent('timerEnded', { job }, { timer: id, endedAt: at }),
          opened(`${what} until ${dueAt}`, `ended ${at}`),
        ]),
        ...unstarted.map((joint) => opened(`${JOINT_WORD[joint]} cured`, 'no cure was timed')),
        newEvent('confirmed', { job }, { step }),
      ],
    }
  })

/** The same for an arrow under repair: nobody decides it later, so it is decided with its reason in the same command. */
export const endRepairCureEarly = ({ write, now }: Clocked, job: Id, { running }: CureInTheWay, reason: string) =>
  write((_, ids) => ({
    events: running.flatMap((timer) => {
      const at = now()
      const about = aboutOf(job, timer)
      const deviation = ids.id()
      const opened = {
        id: deviation,
        step: timer.step,
        point: null,
        required: `${timer.what} until ${timer.dueAt}`,
        found: `ended ${at}`,
        why: reason,
        decision: null,
      }
      return [
        newEvent('timerEnded', about, { timer: timer.id, endedAt: at }),
        newEvent('deviationOpened', about, opened),
        newEvent('deviationDecided', about, { deviation, disposition: 'use as is', reason }),
      ]
    }),
  }))
