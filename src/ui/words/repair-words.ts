/** Words of an arrow that came back: the steps of its repair and what stands against one. */
import type { GluedJoint } from '../../domain/bench/cure-timer'
import type { RepairProblem } from '../../domain/send/repair'
import type { RepairStep } from '../../domain/send/repair-steps'
import type { Sheet } from '../../domain/sheet/sheet'
import type { PartKind } from '../../domain/stock/part'
import { partKindWord } from './part-kind-words'
import { clockWords } from './timer-words'

export const isFletch = (kind: PartKind | undefined): boolean => kind === 'vane' || kind === 'feather'

export const repairTitle = (no: number, kind: PartKind | undefined): string =>
  isFletch(kind)
    ? `Refletch of no. ${no}`
    : `Repair of no. ${no}${kind === undefined ? '' : `: ${partKindWord(kind).toLowerCase()}`}`

/** What was done, as the record has it. */
export const repairedWhat = (kind: PartKind): string =>
  isFletch(kind) ? 'refletched' : `${partKindWord(kind).toLowerCase()} replaced`

export interface RepairStepWords {
  readonly title: string
  readonly what: string
  /** On the button that confirms it. */
  readonly done: string
}

const STRIP = {
  vanes:
    'Peel the old vanes off with a dull edge, away from yourself; never a blade into the carbon, no flame, no solvent soak, warm to the hand at most. Clean and degrease, gloves on; look for scratches across the shaft.',
  front:
    'Warm the old glue gently, never above 75 °C, no flame, no solvent soak; draw the part out straight, the head off. Clean the bore, degrease it, let it dry, gloves on.',
} as const

/** @param joint that is glued anew; undefined where the part is pressed or screwed in */
export function repairStepWords(
  step: RepairStep | 'weigh',
  sheet: Sheet,
  joint: GluedJoint | undefined,
): RepairStepWords {
  const { plan } = sheet
  switch (step) {
    case 'look':
      return {
        title: 'Flex and twist',
        what: 'Head off, glasses and gloves on, away from you and others; look it over and listen. One that creaks or shows a crack is retired, not repaired.',
        done: 'It is sound',
      }
    case 'strip':
      return {
        title: 'Take the old part off',
        what:
          joint === undefined
            ? 'Draw or unscrew it; a broadhead only with its wrench. Nothing of it may stay in the shaft.'
            : STRIP[joint],
        done: 'It is off, and clean',
      }
    case 'fit':
      if (joint === 'vanes')
        return {
          title: 'Glue the new vanes on',
          what: `Set the jig: ${plan.jig === '' ? 'the one of the set' : plan.jig}, ${plan.fletchSide}, ${plan.fletchDegrees}°, tail ${plan.vaneTailIn} in from the throat, cock vane at ${plan.cockVaneDeg}°. One vane at a time.`,
          done: 'Glued: start its time',
        }
      if (joint === 'front')
        return {
          title: 'Bond the new part',
          what: 'Gloves on. Spread the glue on the part and on its seat, turn it in, wipe the squeeze-out; index it, spin it wet on a dummy, stand it upright.',
          done: 'Bonded: start its time',
        }
      return {
        title: 'Put the new part on',
        what: 'Press or screw it home, thread greased; see that it is straight and indexed as on the sheet.',
        done: 'It is on',
      }
    case 'weigh':
      return {
        title: 'Weigh it and close the repair',
        what: 'Flex and twist it once more, spin it, then weigh it, head on.',
        done: 'Close the repair',
      }
  }
}

export function repairProblemWords(problem: RepairProblem, now: string): string {
  switch (problem.code) {
    case 'not-signed-off':
      return 'A repair belongs to a finished arrow: sign the set off first.'
    case 'no-such-arrow':
      return 'This arrow is not among those that left: choose another.'
    case 'retired':
      return `No. ${problem.no} is retired, ${problem.cause}: it is not repaired any more.`
    case 'under-repair':
      return `No. ${problem.no} is on the bench already, to be ${problem.what}: close or leave that first.`
    case 'no-such-part':
      return 'Choose the part that was fitted; one that is not on the shelf is added under Parts first.'
    case 'other-kind':
      return `A ${problem.now} does not take the place of a ${problem.was}: choose a ${problem.was}.`
    case 'no-reason':
      return 'Say why: the reason stands in the record for good.'
    case 'not-weighed-before':
      return 'Weigh it first as it came back, head on: its weight is part of the record.'
    case 'not-weighed':
      return 'Weigh the repaired arrow, head on: its weight is part of the record.'
    case 'step-left':
      return 'A step before this one is not done yet.'
    case 'still-curing':
      return `The ${problem.what} is ready ${clockWords(problem.dueAt, now)}. Ending a cure early needs a reason, and is kept as a deviation.`
    case 'ended':
      return 'This repair has ended already, perhaps on another device.'
  }
}
