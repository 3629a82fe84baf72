import { expect, it } from 'vitest'
import { newFact } from '@/domain/records/write'
import { freshShop } from './fresh-shop'
import { live } from './random-book'

const LIVED = [
  { do: 'client', name: 'Ilmari Vesa' },
  { do: 'job', client: 0 },
  { do: 'note', job: 0, text: 'rings in the evening' },
  { do: 'photo', job: 0, byte: 7 },
] as const

it('says that a name, a note and a picture are gone which nobody took out', async () => {
  const shop = await freshShop()
  await live(shop, LIVED)
  expect((await shop.repository.archive.verify()).problems).toEqual([])

  await shop.book.open()
  const gone = [
    ...(await shop.book.personal.toCollection().primaryKeys()),
    ...(await shop.book.photos.toCollection().primaryKeys()),
  ]
  expect(gone).toHaveLength(3)
  await Promise.all([shop.book.personal.clear(), shop.book.photos.clear()])
  const { problems } = await shop.repository.archive.verify()
  expect(new Set(problems.map((each) => (each.problem === 'named missing' ? each.named : each)))).toEqual(new Set(gone))

  const [client] = await shop.repository.headsOfKind('client')
  const { subject } = client?.kind === 'ok' ? client.fact : { subject: '' }
  const asked = newFact({ by: 'Ansa', at: '2031-06-01T08:00:00.000Z' }, 'redaction', subject, { forget: gone })
  await shop.repository.commit(shop.command({ facts: [asked] }))
  expect((await shop.repository.archive.verify()).problems, 'nothing is missed that was to be forgotten').toEqual([])
})
