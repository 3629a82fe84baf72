/** Words of what comes after the sending: repairs, retired arrows, test kits. */
import type { RepairBuilt } from '../../domain/bench/built'
import type { Job } from '../../domain/job/job'
import type { Repair } from '../../domain/send/repairs'
import type { Retirement } from '../../domain/send/in-use'
import type { KitRefusal, KitSample } from '../../domain/search/test-kit'
import type { KitProblem, KitResult } from '../../domain/send/kit'
import { showDayAndYear, showMoment } from './dates'
import { counted, showNumber, showPlain } from './format'

export const retirementWords = ({ cause, shots, at }: Retirement): string =>
  `retired ${showDayAndYear(at.slice(0, 10))}: ${cause}${shots === null ? '' : `, after ${counted(shots, 'shot')}`}`

const DONE = / (replaced)$/ // *nock replaced*; a fletch is *refletched*

/** `refletched 9 Dec 2026: torn on the butt`; what is under way says so. */
export const repairStoryWords = ({ what, reason, ended }: Repair): string =>
  ended === null
    ? `on the bench, ${DONE.test(what) ? what.replace(DONE, ' to be $1') : `to be ${what}`}: ${reason}`
    : ended.how === 'closed'
      ? `${what} ${showDayAndYear(ended.at.slice(0, 10))}: ${reason}`
      : `${DONE.test(what) ? what.replace(DONE, ' not $1') : `not ${what}`}: ${ended.how === 'retired' ? 'retired instead' : reason}`

const cureWords = ({ what, startedAt, dueAt, endedAt, temperatureC }: RepairBuilt['cures'][number], zone?: string) =>
  `${what} from ${showMoment(startedAt, zone)}, ready ${showMoment(dueAt, zone)}${
    temperatureC === null ? '' : ` at ${temperatureC} °C`
  }${endedAt !== null && endedAt < dueAt ? `, ended early ${showMoment(endedAt, zone)}` : ''}`

/** A repair as a paper has it: all that the record knows of it. */
export function repairRecordWords(repair: RepairBuilt, zone?: string): string {
  const { what, reason, before, finished, begunAt, endedAt, endedBy, cures } = repair
  const end =
    finished === null
      ? `Given up ${showMoment(endedAt, zone)} by ${endedBy}.`
      : `${showNumber(finished.value, 1)} gr after it, closed ${showMoment(endedAt, zone)} by ${endedBy}.`
  const glue = cures.length === 0 ? '' : ` ${cures.map((cure) => cureWords(cure, zone)).join('; ')}.`
  return `${finished === null ? `To be ${what}` : what[0]!.toUpperCase() + what.slice(1)}: ${reason}. Begun ${showMoment(begunAt, zone)} at ${showNumber(before.value, 1)} gr.${glue} ${end}`
}

export const recordBehindWords = (nos: readonly number[]): string =>
  `The as-built record does not say yet what happened to no. ${nos.join(', ')}.`

/** Why it was repaired last; what the record's new version gives as its reason. */
export function lastRepairReason({ afterwards }: Job): string {
  const last = afterwards.findLast(({ what }) => what === 'repaired')?.body
  return last !== undefined && 'reason' in last ? last.reason : 'changed after signing off'
}

export function kitProblemWords(problem: KitProblem): string {
  switch (problem.code) {
    case 'no-shaft-line':
      return 'The sheet has no shaft yet: put the likeliest one on it first.'
    case 'no-cut-length':
      return 'The sheet has no cut length yet: a kit is cut to the length of the set.'
    case 'too-few':
      return 'A kit needs two shafts at least: one alone tells nothing apart.'
    case 'not-a-shaft':
      return `${problem.name} is no shaft: choose shafts only.`
    case 'not-weighed':
      return `No. ${problem.no} has no finished weight yet: weigh it at the final inspection.`
    case 'all-alike':
      return 'These are all the same shaft: choose shafts that differ in spine.'
  }
}

export function kitRefusalWords(refusal: KitRefusal): string {
  switch (refusal) {
    case 'no shaft in the plan':
      return 'Nothing to propose: the sheet has no shaft yet. Put the likeliest one on it first.'
    case 'no cut length':
      return 'Nothing to propose: the sheet has no cut length yet.'
    case 'no draw weight':
      return 'Nothing to propose: the draw weight of the bow is not known, so no stiffness is called for.'
    case 'nothing on the shelf fits':
      return 'Nothing to propose: no shaft that is counted free on the shelf and fits this front end comes inside the reserve called for. Count the lots, or choose below.'
  }
}

/** `Heron 200, cut to 28.5 in`. */
export const sampleWords = ({ name, c2cIn }: Pick<KitSample, 'name' | 'c2cIn'>): string =>
  `${name}, cut to ${showPlain(c2cIn, 2)} in`

const way = (value: number, plus: string, minus: string) =>
  value === 0 ? '' : `${showNumber(Math.abs(value), 1)} in ${value > 0 ? plus : minus}`

/** Where a bare shaft hit, from the fletched ones. */
export function impactWords({ reported }: KitResult): string {
  const { bareHighIn: high, bareLeftIn: left } = reported
  if (high === undefined || left === undefined) return 'not reported yet'
  const parts = [way(high, 'high', 'low'), way(left, 'left', 'right')].filter((part) => part !== '')
  return parts.length === 0 ? 'with the fletched ones' : parts.join(', ')
}

export const nearestWords = (nearest: KitResult | undefined): string =>
  nearest === undefined
    ? 'No verdict yet: it takes the bare-shaft impacts of two arrows at least, one nearer than the others.'
    : `No. ${nearest.arrow.no} hits nearest with its bare shaft, ${showNumber(nearest.bareOffIn!, 1)} in away. The archer decides; broadheads with field points are the last word.`

export function likedWords(liked: { min: number | null; max: number | null }): string {
  const { min, max } = liked
  if (min !== null && max !== null) {
    return `This bow likes a column reserve between ${showNumber(min, 2)} and ${showNumber(max, 2)}.`
  }
  if (min !== null) return `This bow likes a column reserve above ${showNumber(min, 2)}; nothing stiffer was tried.`
  if (max !== null) return `This bow likes a column reserve below ${showNumber(max, 2)}; nothing softer was tried.`
  return 'Only one shaft was tried: nothing is narrowed.'
}
