/** A book that an earlier app wrote, opened by this one: its indexes are what this app would have made, its records as they were. */
import { Dexie } from 'dexie'
import { describe, expect, it } from 'vitest'
import { VIEW_RULES } from '@/domain/job/view-rules'
import { newEvent, newFact } from '@/domain/records/write'
import { Book, SCHEMA } from '@/storage/book'
import { openRepository } from '@/storage/open-repository'
import { FIRST_TABLES } from '@tests/support/first-tables'
import { demoSheet } from '@tests/support/demo-sheet'
import { AT, commands, countedIds, engineOf, heldSurroundings } from './fresh-shop'

const rowsOf = async (book: Dexie) =>
  Object.fromEntries(await Promise.all(book.tables.map(async (table) => [table.name, await table.toArray()] as const)))

describe('a book of schema 1', () => {
  it('gets the index of the lots on the shelf and of their parts, and keeps every record', async () => {
    const ids = countedIds(31)
    const engine = engineOf()
    const options = (name: string) => ({
      name,
      rules: VIEW_RULES,
      ids,
      surroundings: heldSurroundings().surroundings,
      engine,
    })
    const { command } = commands(ids)
    const here = await openRepository(options('grainwright-today'))
    const part = demoSheet({ targetGr: 785, c2cIn: 28 }).parts[0]!
    const lots = ['in stock', 'used up', 'never counted'].map((code) => {
      const body = { part: part.id, code, receivedOn: '2031-05-04', received: 12, numbered: [] }
      return newFact({ by: 'Ansa', at: AT }, 'lot', ids.id(), body)
    })
    const moved = (lot: number, by: number) =>
      newEvent('stockMoved', { job: null }, { part: part.id, lot: lots[lot]!.subject, by, why: 'counted' })
    await here.commit(
      command({
        facts: [newFact({ by: 'Ansa', at: AT }, 'part', part.id, part.part), ...lots],
        events: [moved(0, 12), moved(1, 12), moved(1, -12)],
      }),
    )
    here.close()

    const today = new Book('grainwright-today', engine)
    await today.open()
    const made = await rowsOf(today)
    today.close()
    expect(made['lotView']!.filter((row: { onShelf?: 1 }) => row.onShelf === 1)).toHaveLength(2)

    const first = new Dexie('grainwright-first', engine)
    first.version(1).stores(FIRST_TABLES)
    await first.open()
    for (const [name, rows] of Object.entries(made)) {
      await first.table(name).bulkAdd(rows.map(({ of: _, onShelf: __, ...row }: Record<string, unknown>) => row))
    }
    await first.table('meta').put({ key: 'schema', value: 1 })
    first.close()

    const repository = await openRepository(options('grainwright-first'))
    expect(repository.state()).toEqual({ kind: 'open' })
    const shelf = await repository.lotsOnShelf()
    const codes = shelf.lots.flatMap((read) => (read.kind === 'ok' ? [read.fact.body.code] : []))
    expect(codes.toSorted()).toEqual(['in stock', 'never counted'])
    expect(await repository.lotsOfPart(part.id)).toHaveLength(3)
    repository.close()
    const later = new Book('grainwright-first', engine)
    await later.open()
    expect(await rowsOf(later)).toEqual(made)
    expect(await later.meta.get('schema')).toEqual({ key: 'schema', value: SCHEMA })
    later.close()
  })
})
