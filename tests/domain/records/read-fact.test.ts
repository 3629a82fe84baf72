import { describe, expect, it } from 'vitest'
import * as z from 'zod/mini'
import { factOf } from '@/domain/records/fact'
import { readFact } from '@/domain/records/read-fact'

const SUBJECT = '01987654-3210-7abc-8def-0123456789ab'
const fact = (kind: string, schemaVersion: number, body: Record<string, unknown>) =>
  factOf({ kind, schemaVersion, subject: SUBJECT, parents: [], by: 'Ansa', at: '2031-05-04T09:30:00.000Z', body })

/** A kind at its third version, as an example of the rule. */
const kinds = { gauge: { schemaVersion: 3, body: z.strictObject({ weightGr: z.number(), scale: z.string() }) } }
const migrations = {
  gauge: {
    1: (body: Readonly<Record<string, unknown>>) => ({ weightGr: body['weight'] }),
    2: (body: Readonly<Record<string, unknown>>) => ({ ...body, scale: 'unknown' }),
  },
}

describe('readFact', () => {
  it('brings an old body to today’s version and leaves its hash alone', () => {
    const old = fact('gauge', 1, { weight: 412.3 })
    const read = readFact(old, kinds, migrations)
    expect(read).toMatchObject({
      kind: 'ok',
      fact: { hash: old.hash, schemaVersion: 1, body: { weightGr: 412.3, scale: 'unknown' } },
    })
  })

  it('says too new of a later version and of a kind it does not know', () => {
    expect(readFact(fact('gauge', 4, {}), kinds, migrations)).toMatchObject({ kind: 'too-new', schemaVersion: 4 })
    expect(readFact(fact('quiver', 1, {}), kinds, migrations)).toMatchObject({ kind: 'too-new' })
    expect(readFact(fact('constructor', 1, {}), kinds, migrations)).toMatchObject({ kind: 'too-new' })
  })

  it.each([
    ['nothing', undefined],
    ['a text', 'fact'],
    ['a body that does not fit', fact('gauge', 3, { weightGr: 'heavy', scale: 'Scale 1' })],
    ['a field that has no place', fact('gauge', 3, { weightGr: 1, scale: 'Scale 1', extra: true })],
    ['a fact changed after it was hashed', { ...fact('gauge', 3, { weightGr: 1, scale: 'Scale 1' }), by: 'nobody' }],
    ['half a surrogate pair', { ...fact('gauge', 3, { weightGr: 1, scale: 'Scale 1' }), by: '\ud800' }],
  ])('says unreadable of %s and keeps it', (_, raw) => {
    expect(readFact(raw, kinds, migrations)).toMatchObject({ kind: 'unreadable', raw })
  })
})
