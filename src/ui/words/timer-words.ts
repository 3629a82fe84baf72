/** Words of the timers at the bench. */
import type { CureInTheWay } from '../../domain/bench/cure-state'
import { JOINT_WORD } from '../../domain/bench/cure-state'
import { USUAL_ROOM_C } from '../../domain/bench/cure-timer'
import type { Timer } from '../../domain/bench/bench'
import type { DurationEntry } from '../../domain/entry/parse-duration'
import { dayOfMoment, showClock, showDay } from './dates'

export const NO_ALARM = 'No browser can promise an alarm while it is closed.'

/** The clock on the wall; the day before it where it is another. */
export function clockWords(moment: string, now: string): string {
  const day = dayOfMoment(moment)
  return day === dayOfMoment(now) ? showClock(moment) : `${showDay(day)}, ${showClock(moment)}`
}

/** @param isRead whether anybody read the room's temperature */
export function timerWords({ dueAt, temperatureC }: Timer, now: string, isRead: boolean): string {
  const isAssumed = !isRead && temperatureC === USUAL_ROOM_C
  const at = temperatureC === null ? '' : `, at ${temperatureC} °C${isAssumed ? ', which nobody read' : ''}`
  return `ready ${clockWords(dueAt, now)}${at}`
}

export const dueWords = ({ dueAt }: Timer, now: string): string => `ready since ${clockWords(dueAt, now)}`

export function cureWaitWords({ running, unstarted }: CureInTheWay, now: string): string {
  const waits = running.map(({ what, dueAt }) => `${what} is ready ${clockWords(dueAt, now)}`)
  const none = unstarted.map((joint) => `no time was started for the ${JOINT_WORD[joint]}`)
  return `Not yet: ${[...waits, ...none].join('; ')}. Ending a cure early has to be decided as a deviation.`
}

export function durationWords(problem: Extract<DurationEntry, { kind: 'problem' }>['problem'], typed: string): string {
  switch (problem) {
    case 'empty':
      return 'How long: say it as 20 min, 1 h 30 or 24 h.'
    case 'not a duration':
      return `How long: “${typed}” is no length of time. Say it as 20 min, 1 h 30 or 24 h.`
    case 'too long':
      return `How long: “${typed}” is longer than two months. Is the unit right?`
  }
}
