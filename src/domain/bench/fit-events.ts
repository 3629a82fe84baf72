/**
 * What choosing a mend writes. Readings of the part that comes off no longer count; the whole arrow counts on with the
 * difference, marked as derived, until it is weighed again; and what was done with the weight it had is to be done again.
 * A post that is replaced begins anew, untrimmed.
 */
import type { Mass } from '../../core/quantity'
import { inGrains } from '../../core/quantity'
import type { Id } from '../records/scalars'
import { newEvent } from '../records/write'
import type { EventDraft } from '../records/write'
import type { BenchArrow } from './bench'
import { standing } from './bench'
import type { KeptReading } from './built'
import type { DataPoint } from './data-points'
import type { PartChange } from './mend-options'
import { stalePoints } from './mends-for'

const WHOLES: readonly DataPoint[] = ['dryWeight', 'dryLessHead', 'trimWeight', 'edgeWeight']
const FINISHED: readonly DataPoint[] = ['finishedWeight', 'weightLessHead', 'balancePoint', 'overallLength']

/** @param gain what the change adds; `reason` goes into the record; `line` is the id of a part more */
export function fitEvents(
  job: Id,
  arrow: BenchArrow,
  { change, gain, reason, now, line }: { change: PartChange; gain: Mass; reason: string; now: string; line: Id },
): readonly EventDraft[] {
  const about = { job, arrow: arrow.id }
  const standingAt = (points: readonly DataPoint[]) => points.flatMap((point) => standing(arrow, point))
  const withdraw = (kept: KeptReading) => newEvent('corrected', about, { target: kept.event, reading: null, reason })
  const derive = (kept: KeptReading) => {
    const gr = Math.round(inGrains(gain) * 10) / 10
    const { reading } = kept
    return newEvent('corrected', about, {
      target: kept.event,
      reading: {
        ...reading,
        value: Math.round((reading.value + gr) * 10) / 10,
        raw: `${reading.value} + ${gr}`,
        source: 'derived',
        attempt: reading.attempt + 1,
        takenAt: now,
      },
      reason,
    })
  }
  const isPost = change.kind === 'insert'
  const isBonded = arrow.confirmed.some((each) => each.step === 'bond')
  const again = isBonded ? ['inspect'] : ['trim', 'edge', 'inspect']
  return [
    newEvent('fitted', about, { ...change.fitted, ...(change.was === null ? { line } : {}), reason }),
    ...standingAt([...stalePoints(change), ...FINISHED]).map(withdraw),
    ...standingAt(WHOLES).map(isPost ? withdraw : derive),
    ...again
      .filter((step) => arrow.confirmed.some((each) => each.step === step))
      .map((step) => newEvent('unconfirmed', about, { step, reason })),
  ]
}
