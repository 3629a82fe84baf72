/** Words of what comes after the sending: repairs, retired arrows, test kits. */
import type { Job } from '../../domain/job/job'
import type { Retirement } from '../../domain/send/in-use'
import type { KitRefusal, KitSample } from '../../domain/search/test-kit'
import type { KitProblem, KitResult } from '../../domain/send/kit'
import type { RepairProblem } from '../../domain/send/repair'
import type { Sheet } from '../../domain/sheet/sheet'
import { showDayAndYear } from './dates'
import { counted, showNumber, showPlain } from './format'

export function repairProblemWords(problem: RepairProblem): string {
  switch (problem.code) {
    case 'not-signed-off':
      return 'A repair belongs to a finished arrow: sign the set off first.'
    case 'no-such-arrow':
      return 'This arrow is not among those that left: choose another.'
    case 'retired':
      return `No. ${problem.no} is retired, ${problem.cause}: it is not repaired any more.`
    case 'no-such-part':
      return 'Choose the part that was fitted; one that is not on the shelf is added under Parts first.'
    case 'other-kind':
      return `A ${problem.now} does not take the place of a ${problem.was}: choose a ${problem.was}.`
    case 'no-reason':
      return 'Say why: the reason stands in the record for good.'
    case 'not-weighed':
      return 'Weigh the repaired arrow, head on: its weight is part of the record.'
  }
}

export const retirementWords = ({ cause, shots, at }: Retirement): string =>
  `retired ${showDayAndYear(at.slice(0, 10))}: ${cause}${shots === null ? '' : `, after ${counted(shots, 'shot')}`}`

export const recordBehindWords = (nos: readonly number[]): string =>
  `The as-built record does not say yet what happened to no. ${nos.join(', ')}.`

/** Why it was repaired last; what the record's new version gives as its reason. */
export function lastRepairReason({ afterwards }: Job): string {
  const last = afterwards.findLast(({ what }) => what === 'repaired')?.body
  return last !== undefined && 'reason' in last ? last.reason : 'changed after signing off'
}

export const refletchSteps = ({ plan }: Sheet): readonly string[] => [
  'Peel the old vanes off with a dull edge, away from yourself; never a blade into the carbon, no flame, no solvent soak, warm to the hand at most.',
  'Clean and degrease, gloves on; look the shaft over for scratches across it.',
  `Set the jig: ${plan.jig === '' ? 'the one of the set' : plan.jig}, ${plan.fletchSide}, ${plan.fletchDegrees}°, tail ${plan.vaneTailIn} in from the throat, cock vane at ${plan.cockVaneDeg}°. One vane at a time.`,
  'Let the glue cure as its bottle says before the arrow is shot. Weigh it again, head on.',
]

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
