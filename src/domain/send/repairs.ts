/**
 * Repairs of arrows that came back, each a small job between its beginning and its end. What the bench says of an arrow in
 * between belongs to its repair: confirmed steps, timers. The bench keeps them; here stands only which are whose.
 */
import type { Confirmation, Timer } from '../bench/bench'
import type { Reading } from '../bench/reading'
import type { EventBody } from '../job/events'
import type { Afterward, Job } from '../job/job'
import type { Id } from '../records/scalars'

export type Repair = EventBody<'repairBegun'> & {
  readonly arrow: Id
  readonly begunAt: string
  readonly begunBy: string
  readonly done: readonly Confirmation[]
  readonly timers: readonly Timer[]
  readonly ended: {
    readonly how: 'closed' | 'left' | 'retired'
    readonly at: string
    readonly by: string
    /** What it weighed at the end; null where it was given up. */
    readonly finished: Reading | null
  } | null
}

type Jobs = Pick<Job, 'afterwards' | 'bench'>
const HOW = { repaired: 'closed', repairLeft: 'left', retired: 'retired' } as const

/** Whether this ends a repair of its arrow. */
const ends = ({ what, body }: Afterward, repair: Id): boolean =>
  what === 'retired' || ((what === 'repaired' || what === 'repairLeft') && 'repair' in body && body.repair === repair)

/** In the order of their beginning. Where two devices each began one of the same arrow, the first is the one that is done. */
export function repairsOf({ afterwards, bench }: Jobs): readonly Repair[] {
  const repairs: Repair[] = []
  for (const [at, begun] of afterwards.entries()) {
    const { arrow: id, body } = begun
    if (begun.what !== 'repairBegun' || id === null || !('before' in body)) continue
    if (repairs.some((each) => each.arrow === id && each.ended === null)) continue
    const end = afterwards.slice(at).find((each) => each.arrow === id && ends(each, body.repair))
    const arrow = bench?.arrows.find((each) => each.id === id)
    repairs.push({
      ...body,
      arrow: id,
      begunAt: begun.at,
      begunBy: begun.by,
      done: arrow?.confirmed.slice(begun.confirmed, end?.confirmed) ?? [],
      timers: bench?.timers.slice(begun.timers, end?.timers).filter((timer) => timer.arrow === id) ?? [],
      ended: end === undefined ? null : endOf(end),
    })
  }
  return repairs
}

function endOf({ what, at, by, body }: Afterward): NonNullable<Repair['ended']> {
  const finished = 'finished' in body ? (body.finished ?? null) : null
  return { how: HOW[what as keyof typeof HOW], at, by, finished }
}

/** The repair that an arrow is under, or undefined. */
export const openRepair = (job: Jobs, arrow: Id): Repair | undefined =>
  repairsOf(job).find((each) => each.arrow === arrow && each.ended === null)
