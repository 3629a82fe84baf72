/** What is written after a set has left: repairs, retirements, weights of survivors, and test kits. Each true once it is on the disk. */
import type { EventBody } from '../domain/job/events'
import type { Job, Kit } from '../domain/job/job'
import { readable } from '../domain/records/read-fact'
import type { Id } from '../domain/records/scalars'
import { newEvent } from '../domain/records/write'
import type { KitShaft } from '../domain/send/kit'
import { decideKit, sendKit } from '../domain/send/kit'
import { kitJob, sendBuiltKit, startKit } from '../domain/send/kit-set'
import type { RepairAsked, Standing } from '../domain/send/repair'
import { changedSince, repairedRecord, repairEvents } from '../domain/send/repair'
import type { Sheet } from '../domain/sheet/sheet'
import type { AppState } from './app-store'
import { openJob } from './open-job'

type Store = Pick<AppState, 'write' | 'repository' | 'shelf' | 'open'>

async function standingOf({ repository, open }: Store): Promise<Standing | null> {
  const hash = open?.job.signedOff.at(-1)?.asBuilt
  const body = hash === undefined ? undefined : open?.asBuilts.get(hash)
  if (repository === null || hash === undefined || body === undefined) return null
  const facts = readable((await repository.facts(body.arrows)).flatMap((each) => each ?? []))
  return {
    hash,
    body,
    arrows: new Map(facts.flatMap((fact) => (fact.kind === 'arrowBuilt' ? [[fact.hash, fact.body]] : []))),
  }
}

/** The new version of the record, where an arrow's story has gone on; true when there is nothing left to record. */
export async function recordRepairs(store: Store, sheet: Sheet, reason: string): Promise<boolean> {
  const standing = await standingOf(store)
  if (standing === null || store.open === null) return false
  const { job } = store.open
  if (repairedRecord(job, sheet, standing, { by: '', at: '' }, reason) === null) return true
  return store.write((said) => repairedRecord(job, sheet, standing, said, reason)!)
}

/** Numbers of the arrows whose story has gone on since the as-built that stands: the second write of a repair is missing. */
export async function unrecorded(store: Store, sheet: Sheet): Promise<readonly number[]> {
  const standing = await standingOf(store)
  if (standing === null || store.open === null) return []
  return changedSince(store.open.job, sheet, standing).map(({ body }) => body.no)
}

/** What happened first, then the record's new version; the second can be made up for when only the first was saved. */
export async function repairArrow(get: () => Store, sheet: Sheet, asked: RepairAsked): Promise<boolean> {
  const { write, open, shelf } = get()
  if (open === null) return false
  if (!(await write(() => ({ events: repairEvents(open.job, sheet, shelf, asked) })))) return false
  return recordRepairs(get(), sheet, asked.reason.trim())
}

export const retireArrow = ({ write }: Store, job: Id, arrow: Id, body: EventBody<'retired'>) =>
  write(() => ({ events: [newEvent('retired', { job, arrow }, body)] }))

export const report = ({ write }: Store, job: Id, arrow: Id, point: EventBody<'reported'>['point'], value: number) =>
  write(() => ({ events: [newEvent('reported', { job, arrow }, { point, value })] }))

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
