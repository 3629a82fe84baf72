import { describe, expect, it } from 'vitest'
import { shelfChange, loadShelf } from '@/state/load-shelf'
import type { AppRepository } from '@/state/app-repository'
import { newEvent, newFact } from '@/domain/records/write'
import { DEFAULT_RULES } from '@/domain/shop/rules'
import { RULES_SUBJECT } from '@/domain/shop/rules-subject'
import { VIEW_RULES } from '@/domain/job/view-rules'
import { openRepository } from '@/storage/open-repository'
import { DEMO_PARTS } from '@/demo/demo-parts'
import { commands, countedIds, engineOf, heldSurroundings } from '@tests/storage/fresh-shop'
import { testId } from '@tests/support/test-id'

const SAID = { by: 'Ansa', at: '2031-05-04T09:30:00.000Z' }

async function shop() {
  const ids = countedIds(7)
  const { surroundings } = heldSurroundings()
  const options = { name: 'grainwright-test', rules: VIEW_RULES, ids, surroundings, engine: engineOf() }
  const repository: AppRepository = await openRepository(options)
  return { repository, ...commands(ids) }
}

describe('the shelf after a change', () => {
  it('is what the whole shelf read anew is: a part changed, a lot received and weighed, a hold', async () => {
    const { repository, command } = await shop()
    const [vane, nock] = [testId(11), testId(12)]
    const part = newFact(SAID, 'part', vane, DEMO_PARTS.find(({ kind }) => kind === 'vane')!)
    const other = newFact(SAID, 'part', nock, DEMO_PARTS.find(({ kind }) => kind === 'nock')!)
    await repository.commit(command({ facts: [part, other] }))
    let shelf = await loadShelf(repository)
    const after = async (subjects: readonly string[]) => {
      shelf = (await shelfChange(repository, subjects))!(shelf)
      expect(shelf).toEqual(await loadShelf(repository))
    }

    const second = newFact(SAID, 'part', vane, { ...part.body, priceCents: 120 }, { parents: [part.hash] })
    await repository.commit(command({ facts: [second] }))
    await after([vane])

    const body = { part: vane, code: 'V-1', receivedOn: '2031-05-04', received: 100, numbered: [] }
    const lot = newFact(SAID, 'lot', testId(13), body)
    const moved = newEvent('stockMoved', { job: null }, { part: vane, lot: testId(13), by: 100, why: 'received' })
    const weight = { lot: testId(13), weightGr: 7.1, pieces: 1, raw: '7.1', scale: 'Scale 1' }
    await repository.commit(command({ facts: [lot], events: [moved, newEvent('lotWeighed', { job: null }, weight)] }))
    await after([testId(13)])
    expect(shelf.lotViews.get(testId(13))).toMatchObject({ onHand: 100, weighed: [{ weightGr: 7.1 }] })

    const held = newFact(SAID, 'lot', testId(13), { ...body, hold: 'bent' }, { parents: [lot.hash] })
    await repository.commit(command({ facts: [held] }))
    await after([testId(13)])
    expect(shelf.lots.get(testId(13))?.body.hold).toBe('bent')
  })

  it('is read whole where the rules changed or a table came in', async () => {
    const { repository, command } = await shop()
    await repository.commit(command({ facts: [newFact(SAID, 'rules', RULES_SUBJECT, DEFAULT_RULES)] }))
    expect(await shelfChange(repository, [RULES_SUBJECT])).toBeUndefined()
    expect(
      await shelfChange(
        repository,
        Array.from({ length: 41 }, (_, i) => testId(i)),
      ),
    ).toBeUndefined()
  })
})
