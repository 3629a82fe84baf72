/**
 * Records as they were written, one line each in tests/fixtures/records.jsonl: of every kind at every version of its schema,
 * the choices of which were taken in turn. They are read by every later app, and their hashes stay. No line is ever
 * changed or taken out; when a version is raised, `NEW_RECORDS=1 npx vitest run tests/domain/records/written-so-far.test.ts`
 * adds its lines.
 */
import { appendFileSync, existsSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { fitsHash } from '@/domain/records/chain'
import { hashed } from '@/domain/records/hash-of'
import { EVENT_KINDS, FACT_KINDS } from '@/domain/records/kinds'
import { EVENT_SCHEMA, readEvent } from '@/domain/records/read-event'
import { readFact } from '@/domain/records/read-fact'
import { samplesOf } from '@tests/support/samples-of'
import type { Schema } from '@tests/support/samples-of'

const FILE = 'tests/fixtures/records.jsonl'

interface Written {
  readonly hash: string
  readonly kind?: string
  readonly what?: string
  readonly schemaVersion: number
}
const nameOf = ({ kind, what, schemaVersion }: Written) =>
  `${kind === undefined ? `event.${what}` : `fact.${kind}`} ${schemaVersion}`
const read = (record: Written) => ('what' in record ? readEvent(record) : readFact(record))
const kept = (): readonly Written[] =>
  existsSync(FILE)
    ? readFileSync(FILE, 'utf8')
        .split('\n')
        .filter((line) => line !== '')
        .map((line) => JSON.parse(line) as Written)
    : []

const today = [
  ...Object.entries(FACT_KINDS).map(([kind, { schemaVersion }]) => ({ name: `fact.${kind}`, version: schemaVersion })),
  ...Object.keys(EVENT_KINDS).map((what) => ({ name: `event.${what}`, version: EVENT_SCHEMA })),
]

/** Records of a kind at today's version, from the schema in docs/. */
function madeToday(name: string): readonly Written[] {
  const { $defs } = JSON.parse(readFileSync('docs/schemas/backup-line.json', 'utf8')) as {
    readonly $defs: Readonly<Record<string, Schema>>
  }
  const [outer] = Object.values($defs[name]!.properties!)
  // A part's body stands within other records as well, and is whole in its own.
  const most = ['fact.part', 'event.answered', 'event.planSet'].includes(name) ? Infinity : 10
  return samplesOf(outer!)
    .slice(0, most)
    .map((sample) => {
      const { hash: _, ...record } = sample as Written
      return hashed(record) as Written
    })
}

if (process.env['NEW_RECORDS'] !== undefined) {
  const there = new Set(kept().map(nameOf))
  const lines = today
    .filter(({ name, version }) => !there.has(`${name} ${version}`))
    .flatMap(({ name }) => madeToday(name))
  appendFileSync(FILE, lines.map((record) => `${JSON.stringify(record)}\n`).join(''))
}

describe('records written so far', () => {
  const records = kept()

  it('are there of every kind at every version', () => {
    const there = new Set(records.map(nameOf))
    const all = today.flatMap(({ name, version }) => Array.from({ length: version }, (_, i) => `${name} ${i + 1}`))
    expect(all.filter((name) => !there.has(name))).toEqual([])
  })

  it('still read, and keep their hash', () => {
    for (const record of records) {
      expect(fitsHash(record), nameOf(record)).toBe(true)
      const now = read(record)
      expect(now, `${nameOf(record)} ${JSON.stringify(record)}`).toMatchObject({ kind: 'ok' })
      if (now.kind === 'ok') expect('event' in now ? now.event.hash : now.fact.hash).toBe(record.hash)
    }
  })
})
