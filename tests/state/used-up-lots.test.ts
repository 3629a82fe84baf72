/** Lots that are used up are not read on opening; whatever still names one must find it all the same. */
import { describe, expect, it } from 'vitest'
import { DEMO_PARTS } from '@/demo/demo-parts'
import { VIEW_RULES } from '@/domain/job/view-rules'
import type { Id } from '@/domain/records/scalars'
import { newEvent, newFact } from '@/domain/records/write'
import { draftSheet } from '@/domain/sheet/draft-sheet'
import { findOnShelf, indexShelf } from '@/domain/stock/find-on-shelf'
import { heldLots } from '@/domain/stock/held-lots'
import { lotsForLine, lotsOf, lotsOfPart } from '@/domain/stock/lots-of-part'
import type { AppRepository } from '@/state/app-repository'
import { createAppStore } from '@/state/app-store'
import { showLotsOf } from '@/state/lot-actions'
import { openRepository } from '@/storage/open-repository'
import { commands, countedIds, engineOf, heldSurroundings } from '@tests/storage/fresh-shop'
import { demoSheet } from '@tests/support/demo-sheet'

const SAID = { by: 'Ansa', at: '2031-05-04T09:30:00.000Z' }

/** A shop with one part and three lots of twelve: two used up, one that a frozen order names and one on hold; one in stock. */
async function shop() {
  const ids = countedIds(21)
  const { surroundings } = heldSurroundings()
  const options = { name: 'grainwright-test', rules: VIEW_RULES, ids, surroundings, engine: engineOf() }
  const open = (): Promise<AppRepository> => openRepository(options)
  const { command } = commands(ids)
  const store = createAppStore({
    clock: { now: () => SAID.at },
    ids,
    memory: { recall: () => null, keep: () => {} },
    open,
    openScale: () => Promise.reject(new Error('no scale here')),
    openSearcher: () => Promise.reject(new Error('no search here')),
    benches: () => ({ hold: () => Promise.resolve(undefined) }),
  })
  const shaft = DEMO_PARTS.find(({ kind }) => kind === 'shaft')!
  const sheetBody = demoSheet({ targetGr: 785, c2cIn: 28 })
  const part = sheetBody.parts.find((each) => each.part.kind === 'shaft')!.id
  const [named, held, left] = [ids.id(), ids.id(), ids.id()]
  const lotFact = (id: Id, code: string, receivedOn: string, hold?: string) =>
    newFact(SAID, 'lot', id, {
      part,
      code,
      receivedOn,
      received: 12,
      numbered: [],
      ...(hold === undefined ? {} : { hold }),
    })
  const moved = (lot: Id, by: number, why: 'received' | 'scrapped') =>
    newEvent('stockMoved', { job: null }, { part, lot, by, why })
  const job = ids.id()
  const line = { ...sheetBody.plan.lines.find((each) => each.part === part)!, lot: named }
  const lines = sheetBody.plan.lines.map((each) => (each.part === part ? line : each))
  const lots = [{ id: named, lot: { part, code: 'S-1', receivedOn: '2030-01-01', received: 12, numbered: [] } }]
  const sheet = newFact(SAID, 'sheet', job, { ...sheetBody, job, plan: { ...sheetBody.plan, lines }, lots })
  const arrow = ids.id()
  const first = await open()
  await first.commit(
    command({
      facts: [
        newFact(SAID, 'part', part, shaft),
        lotFact(named, 'S-1', '2030-01-01', 'bent'),
        lotFact(held, 'S-2', '2030-02-01', 'split'),
        lotFact(left, 'S-3', '2030-03-01'),
        sheet,
      ],
      events: [
        moved(named, 1, 'received'),
        ...[12, -12].map((by) => moved(held, by, by > 0 ? 'received' : 'scrapped')),
        moved(left, 12, 'received'),
        newEvent('opened', { job }, { kind: 'order', of: null }),
        newEvent('lineSet', { job }, { line: { id: line.id, part, lot: named, count: 1 } }),
        newEvent('frozen', { job }, { sheet: sheet.hash, version: 1 }),
        newEvent('setStarted', { job }, { sheet: sheet.hash, arrows: [{ id: arrow, no: 1, code: 'T/1' }] }),
        newEvent('confirmed', { job, arrow }, { step: 'cut' }), // the one shaft of it is used
      ],
    }),
  )
  first.close()
  await store.getState().start('shop')
  const repository = () => store.getState().repository!
  return { store, repository, command, job, part, named, held, left, sheet }
}

describe('a lot that is used up', () => {
  it('is not read on opening', async () => {
    const { store, repository, named, held, left } = await shop()
    expect(await repository().lotView(named)).toMatchObject({ onHand: 0, reserved: 0, used: 1 })
    expect([...store.getState().shelf.lots.keys()]).toEqual([left])
    expect(store.getState().shelf.lotViews.has(held)).toBe(false)
  })

  it('is there with its figures once a job that names it is open, whose draft and whose bench speak of it', async () => {
    const { store, job, named, held, left, sheet } = await shop()
    await store.getState().loadJob(job)
    const { shelf, open } = store.getState()
    expect(shelf.lots.get(named)?.body.code).toBe('S-1')
    expect(shelf.lotViews.get(named)).toMatchObject({ used: 1 })
    expect(shelf.lots.has(held)).toBe(false)
    expect(draftSheet(open!.job, shelf, null).lots.map(({ lot }) => lot.code)).toContain('S-1')
    const line = open!.job.plan.lines.find((each) => each.lot === named)!
    expect(lotsForLine(shelf, line).map(({ id }) => id)).toEqual([named, left])
    expect(lotsForLine(shelf, { ...line, lot: left }).map(({ id }) => id)).toEqual([left])
    expect(heldLots(sheet.body, [], shelf)).toMatchObject([{ code: 'S-1', why: 'bent' }])
  })

  it('stays there when the whole shelf is read anew after a table of parts', async () => {
    const { store, repository, command, job, named } = await shop()
    await store.getState().loadJob(job)
    const facts = Array.from({ length: 41 }, (_, i) => newFact(SAID, 'part', countedIds(50 + i).id(), DEMO_PARTS[0]!))
    await repository().commit(command({ facts }))
    await store.getState().refreshShelf([])
    expect(store.getState().shelf.parts.size).toBe(42)
    expect(store.getState().shelf.lots.has(named)).toBe(true)
  })

  it('is shown on its part’s page with every other, and changes no list by having been read', async () => {
    const { store, part, named, held, left } = await shop()
    const lists = () => {
      const { shelf } = store.getState()
      return { offered: lotsOfPart(shelf, part), parts: findOnShelf(indexShelf(shelf), '') }
    }
    const before = lists()
    await showLotsOf(store.getState(), part)
    const { shelf } = store.getState()
    expect(lotsOf(shelf, part).map(({ id }) => id)).toEqual([left, held, named])
    expect(lists()).toEqual(before)
    expect(before.offered.map(({ id }) => id)).toEqual([left])
    expect(before.parts).toMatchObject([{ parts: [{ onHand: 12, free: 12, held: false }] }])
  })

  it('is back when a count finds some of it, whether it was read before or not', async () => {
    const { store, repository, command, part, held, left } = await shop()
    const counted = newEvent('stockMoved', { job: null }, { part, lot: held, by: 3, why: 'counted' })
    await repository().commit(command({ events: [counted] }))
    await store.getState().refreshLots([])
    expect(store.getState().shelf.lots.get(held)?.body.code).toBe('S-2')
    expect(store.getState().shelf.lotViews.get(held)).toMatchObject({ onHand: 3 })
    await store.getState().start('shop')
    expect([...store.getState().shelf.lots.keys()].toSorted()).toEqual([held, left].toSorted())
  })

  it('is read where the part has no other, so that it is known to be out of stock', async () => {
    const { store, repository, command, part, named, held, left } = await shop()
    const last = newEvent('stockMoved', { job: null }, { part, lot: left, by: -12, why: 'scrapped' })
    await repository().commit(command({ events: [last] }))
    await store.getState().start('shop')
    const { shelf } = store.getState()
    expect([...shelf.lots.keys()]).toEqual([left])
    expect(lotsOfPart(shelf, part).map(({ id }) => id)).toEqual([left])
    expect((await repository().lotsOfPart(part)).toSorted()).toEqual([named, held, left].toSorted())
  })
})
