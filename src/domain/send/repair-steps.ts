/**
 * The steps of a repair: look the shaft over, take the old part off, glue or fit the new one, let the glue cure, weigh it.
 * Which of them is next follows from what was confirmed and from the timers, so that a reload loses none. Common practice,
 * no source [CP].
 */
import { GLUED_AT } from '../bench/cure-state'
import type { CureInTheWay } from '../bench/cure-state'
import type { CureTimer, GluedJoint } from '../bench/cure-timer'
import { gluesJoint, running } from '../bench/cure-timer'
import type { Job } from '../job/job'
import type { Id } from '../records/scalars'
import type { EventDraft } from '../records/write'
import { newEvent } from '../records/write'
import type { Sheet } from '../sheet/sheet'
import type { PartKind } from '../stock/part'
import type { Repair } from './repairs'

export type RepairStep = 'look' | 'strip' | 'fit'

/** As the record names them; a joint that is glued anew is confirmed at the bench's own step for it. */
const NAMED = { look: 'own:flexed and twisted', strip: 'own:old part off', fit: 'own:new part on' } as const

/** Joints that hold a part; what is not here is pressed or screwed in. */
const HELD_BY: Readonly<Partial<Record<PartKind, GluedJoint>>> = {
  vane: 'vanes',
  feather: 'vanes',
  wrap: 'vanes',
  insert: 'front',
  'half-out': 'front',
  outsert: 'front',
  collar: 'front',
  sleeve: 'front',
  footing: 'front',
}

/** Of the plan's line that is being repaired. @returns undefined where nothing is glued, or the sheet names no glue for it */
export function jointOf({ line }: Pick<Repair, 'line'>, sheet: Sheet): GluedJoint | undefined {
  const planned = sheet.plan.lines.find(({ id }) => id === line)
  const kind = sheet.parts.find(({ id }) => id === planned?.part)?.part.kind
  const joint = kind === undefined ? undefined : HELD_BY[kind]
  return joint !== undefined && gluesJoint(sheet, joint) ? joint : undefined
}

const gluedAt = (joint: GluedJoint): string => Object.keys(GLUED_AT).find((step) => GLUED_AT[step] === joint)!

/** What a step of this repair is confirmed as. */
export function namedStep(repair: Repair, step: RepairStep, sheet: Sheet): string {
  const joint = step === 'fit' ? jointOf(repair, sheet) : undefined
  return joint === undefined ? NAMED[step] : gluedAt(joint)
}

/** The first step that nobody confirmed, or the weighing. */
export const stepLeft = (repair: Repair, sheet: Sheet): RepairStep | 'weigh' =>
  (['look', 'strip', 'fit'] as const).find(
    (step) => !repair.done.some((each) => each.step === namedStep(repair, step, sheet)),
  ) ?? 'weigh'

/** @returns undefined when its glue has had its time, or there is none */
export function cureOfRepair(repair: Repair, now: string): CureInTheWay | undefined {
  const open = running(repair, now)
  return open.length === 0 ? undefined : { running: open, unstarted: [] }
}

/**
 * A step is done; where it is the gluing, the glue's time begins in the same command.
 *
 * @param cure of the joint that is glued now; null for any other step
 * @throws for a glue that does not cure here, and for a joint without its time: ask `cureTimer` first
 */
export function repairStepDone(
  job: Job,
  repair: Repair,
  { step, sheet, cure }: { readonly step: RepairStep; readonly sheet: Sheet; readonly cure: CureTimer | null },
  named: { readonly timer: Id; readonly what: string },
): readonly EventDraft[] {
  const about = { job: job.id, arrow: repair.arrow }
  const key = namedStep(repair, step, sheet)
  const confirmed = newEvent('confirmed', about, { step: key })
  if (GLUED_AT[key] === undefined) return [confirmed]
  if (cure?.kind !== 'timer') throw new Error('a joint that is glued has its time')
  const { startedAt, dueAt, temperatureC } = cure
  return [confirmed, newEvent('timerSet', about, { ...named, step: key, startedAt, dueAt, temperatureC })]
}
