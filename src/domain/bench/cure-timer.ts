/** When a joint of a sheet may be shot: an absolute moment, from the glue's own figures at the room's temperature. */
import { celsius, hours, inCelsius, inUnit } from '../../core/quantity'
import { cureTimes } from '../../core/cure/cure-times'
import type { Finding } from '../../core/finding'
import type { Sheet } from '../sheet/sheet'
import type { PartOf } from '../stock/part'
import type { Bench, Timer } from './bench'
import { accepted, building } from './bench'

export type CureTimer =
  | { readonly kind: 'timer'; readonly startedAt: string; readonly dueAt: string; readonly temperatureC: number }
  | { readonly kind: 'no cure'; readonly findings: readonly Finding[] }

export const USUAL_ROOM_C = 20 // where nobody read it: common practice, no source [CP]

/** The room as it was last read at the bench, or undefined. */
export const roomTemperature = (bench: Bench): number | undefined =>
  building(bench)
    .flatMap((arrow) => accepted(arrow, 'roomTemperature') ?? [])
    .toSorted((a, b) => (a.reading.takenAt < b.reading.takenAt ? -1 : 1))
    .at(-1)?.reading.value

export type GluedJoint = 'vanes' | 'front'

/** The sheet's glue for a joint. */
export const glueOf = (sheet: Sheet, joint: GluedJoint): PartOf<'glue'> | undefined =>
  sheet.parts
    .map(({ part }) => part)
    .find((part): part is PartOf<'glue'> => {
      if (part.kind !== 'glue') return false
      return joint === 'vanes'
        ? part.joints.vanes !== undefined
        : (part.joints.post ?? part.joints.collar) !== undefined
    })

export const gluesJoint = (sheet: Sheet, joint: GluedJoint): boolean => glueOf(sheet, joint) !== undefined

/** @returns undefined where the sheet names no glue for these joints */
export function cureTimer(
  sheet: Sheet,
  joint: GluedJoint,
  startedAt: string,
  roomC = USUAL_ROOM_C,
): CureTimer | undefined {
  const glue = glueOf(sheet, joint)
  if (glue === undefined) return undefined
  const temperature = celsius(roomC)
  const times = cureTimes(
    {
      handle: hours(glue.handleH),
      shoot: hours(glue.shootH),
      full: hours(glue.fullH),
      at: celsius(glue.atC),
      least: celsius(glue.leastC),
      most: celsius(glue.mostC),
    },
    temperature,
  )
  if (!times.ok) return { kind: 'no cure', findings: times.findings }
  const dueAt = momentAfter(startedAt, inUnit(times.value.shoot, 's'))
  return { kind: 'timer', startedAt, dueAt, temperatureC: inCelsius(temperature) }
}

/** A moment so many seconds after another; ISO 8601. The moment is handed in, the domain has no clock. */
export const momentAfter = (moment: string, seconds: number): string =>
  new Date(Date.parse(moment) + seconds * 1000).toISOString()

interface Timed {
  readonly timers: readonly Timer[]
}

/** Timers whose time is over and which nobody has put away yet. */
export const due = (bench: Timed, now: string) =>
  bench.timers.filter((timer) => timer.endedAt === null && timer.dueAt <= now)

/** Timers that still run at a moment. */
export const running = (bench: Timed, now: string) =>
  bench.timers.filter((timer) => timer.endedAt === null && timer.dueAt > now)
