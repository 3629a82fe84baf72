/** Test kits: sent, built on the bench, reported on and decided. Each true once it is on the disk. */
import type { EventBody } from '../domain/job/events'
import type { Job, Kit } from '../domain/job/job'
import type { Id } from '../domain/records/scalars'
import { newEvent } from '../domain/records/write'
import type { KitShaft } from '../domain/send/kit'
import { decideKit, sendKit } from '../domain/send/kit'
import { kitJob, sendBuiltKit, startKit } from '../domain/send/kit-set'
import type { AppState } from './app-store'
import { openJob } from './open-job'

type Store = Pick<AppState, 'write' | 'repository' | 'shelf' | 'open'>

export const sendTestKit = ({ write, shelf }: Store, job: Job, shafts: Parameters<typeof sendKit>[2], on: string) =>
  write((_, ids) => ({ events: sendKit(job, shelf, shafts, on, ids) }))

/** Opens the kit's own job, then begins its set; true once both are on the disk. */
export async function buildKit(get: () => Store, shafts: readonly KitShaft[]): Promise<boolean> {
  const { write, open, repository, shelf } = get()
  if (open === null || repository === null) return false
  let id = ''
  const opened = await write((_, ids) => {
    const kit = kitJob(open.job, shafts, ids)
    id = kit.id
    return { events: kit.events }
  })
  const kit = opened ? await openJob(repository, id) : null
  if (kit === null) return false
  return write((said, ids) =>
    startKit({ order: open.job, kit: kit.job, shafts, client: open.clientFact }, shelf, said, ids),
  )
}

export const sendKitBuilt = (
  { write, shelf }: Store,
  order: Job,
  begun: EventBody<'kitStarted'>,
  kit: Job,
  on: string,
) => write(() => ({ events: sendBuiltKit(order, begun, kit, shelf, on) }))

/** Where rest and riser stand along an arrow at full draw, as the return form has them: an answer of the call from now on. */
export const markAtFullDraw = ({ write }: Store, job: Id, question: 'markAtRestIn' | 'markAtRiserIn', value: number) =>
  write(() => ({ events: [newEvent('answered', { job }, { question, answer: { value, how: 'told' } })] }))

export const decideOnKit = ({ write, shelf }: Store, job: Job, kit: Kit, arrow: Id, reason: string) =>
  write(() => ({ events: decideKit(job, shelf, kit, arrow, reason) }))
