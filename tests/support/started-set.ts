/** A book with a set begun on a frozen sheet: where the tests of the bench start. What is shown of it is worked out here. */
import { DEMO_PARTS } from '@/demo/demo-parts'
import { DEMO_RULES } from '@/demo/demo-rules'
import type { EventBody, JobEvent } from '@/domain/job/events'
import type { Job } from '@/domain/job/job'
import { jobAfter } from '@/domain/job/job'
import { VIEW_RULES } from '@/domain/job/view-rules'
import type { EventDraft } from '@/domain/records/write'
import { newEvent, newFact } from '@/domain/records/write'
import { RULES_SUBJECT } from '@/domain/shop/rules-subject'
import { draftSheet } from '@/domain/sheet/draft-sheet'
import { freeze, startSet } from '@/domain/sheet/freeze'
import { loadShelf } from '@/state/load-shelf'
import { openRepository } from '@/storage/open-repository'
import { backupOf } from '@tests/storage/backup/backup-of'
import { countedIds, engineOf, heldSurroundings } from '@tests/storage/fresh-shop'
import { USUAL_LINES } from './demo-sheet'

const PARTS = [...USUAL_LINES, 'Broad vane 2.6']

/** @param targetGr the planned arrow is expected at about 792 */
export async function startedSet(quantity: number, targetGr = 785) {
  const said = { by: 'Ilse', at: '2026-03-02T09:00:00.000Z' }
  const ids = countedIds(97)
  const repository = await openRepository({
    name: 'grainwright-started',
    rules: VIEW_RULES,
    ids,
    surroundings: heldSurroundings().surroundings,
    engine: engineOf(),
  })
  let job: Job | null = null
  const commit = async (records: Pick<Parameters<typeof repository.commit>[0], 'facts' | 'events'>) => {
    const receipt = await repository.commit({ id: ids.id(), ...said, ...records })
    if (receipt.kind !== 'saved') throw new Error(`not saved: ${receipt.detail}`)
    job = (receipt.events as readonly JobEvent[]).reduce<Job | null>(jobAfter, job)
    return job!
  }
  const lots = new Map<string, string>()
  const stocked = DEMO_PARTS.flatMap((part, i) => {
    const [id, lot] = [ids.id(), ids.id()]
    lots.set(id, lot)
    const received = { part: id, code: `L-${i + 11}`, receivedOn: '2026-01-05', received: 36, numbered: [] }
    return [newFact(said, 'part', id, part), newFact(said, 'lot', lot, received)]
  })
  await repository.commit({
    id: ids.id(),
    ...said,
    facts: [newFact(said, 'rules', RULES_SUBJECT, DEMO_RULES), ...stocked],
  })
  const shelf = await loadShelf(repository)
  const about = { job: ids.id() }
  const fields = { targetGr, c2cIn: 28, quantity }
  const planned: readonly EventDraft[] = [
    newEvent('opened', about, { kind: 'order', of: null }),
    newEvent('answered', about, { question: 'peakDrawWeightLb', answer: { value: 72, how: 'told' } }),
    newEvent('answered', about, { question: 'drawLengthIn', answer: { value: 28, how: 'told' } }),
    ...Object.entries(fields).map(([field, value]) =>
      newEvent('planSet', about, { field, value } as EventBody<'planSet'>),
    ),
    ...PARTS.map((name) => {
      const { id, body } = [...shelf.parts.values()].find((each) => each.body.name === name)!
      const count = body.kind === 'vane' ? 4 : 1
      return newEvent('lineSet', about, { line: { id: ids.id(), part: id, lot: lots.get(id) ?? null, count } })
    }),
  ]
  const draft = await commit({ events: planned })
  const sheet = draftSheet(draft, shelf, null)
  const ready = await commit(freeze(draft, sheet, said))
  const started = await commit(startSet(ready, sheet, ids))
  return { sheet, job: started, shelf, backup: Buffer.from(await backupOf(repository)) }
}
export type StartedSet = Awaited<ReturnType<typeof startedSet>>
