/**
 * Ten years on: a backup, a text editor and the JSON Schema in docs/ are all there is. No code of the app reads the file
 * here; the schema is the one from docs/, and the hashes are recomputed by the script beside it.
 */
import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { fromJSONSchema } from 'zod'
import { DATA_POINT_NAMES } from '@/domain/bench/data-points'
import { sentOrder } from '@tests/support/sent-order'
import type { SentOrder } from '@tests/support/sent-order'
import { textOf } from './backup/backup-of'

interface Line {
  readonly fact?: { readonly kind: string; readonly hash: string; readonly body: Readonly<Record<string, unknown>> }
  readonly event?: { readonly what: string; readonly hash: string; readonly by: string; readonly at: string }
}
type JsonSchema = Exclude<Parameters<typeof fromJSONSchema>[0], boolean>

const SCRIPT = 'docs/verify-backup.mjs'
const schema = JSON.parse(readFileSync('docs/schemas/backup-line.json', 'utf8')) as {
  readonly $defs: Readonly<Record<string, JsonSchema>>
}
const folder = mkdtempSync(join(tmpdir(), 'grainwright-ten-years-'))
const file = join(folder, 'backup.jsonl')

let order: SentOrder
let lines: readonly string[]
beforeAll(async () => {
  order = await sentOrder()
  const text = await textOf(order.repository)
  writeFileSync(file, text)
  lines = text.trimEnd().split('\n')
}, 60_000)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** The name of a line's schema, from its own words. */
function nameOf(text: string): string {
  const line = JSON.parse(text) as Line
  if (line.fact) return `fact.${line.fact.kind}`
  return line.event ? `event.${line.event.what}` : Object.keys(line)[0]!
}

describe('a backup in ten years', () => {
  it('holds no line that the JSON Schema does not describe', () => {
    const validators = new Map(Object.entries(schema.$defs).map(([name, each]) => [name, fromJSONSchema(each)]))
    for (const text of lines) {
      const read = validators.get(nameOf(text))?.safeParse(JSON.parse(text))
      expect(read?.success, `${nameOf(text)} ${text.slice(0, 200)}`).toBe(true)
    }
    const reading = lines.find((text) => nameOf(text) === 'event.read')!
    for (const spoilt of [
      reading.replace('"unit":"gr"', '"unit":"stone"'),
      reading.replace(/"value":[\d.]+/, '"value":"heavy"'),
      reading.replace('"reading":{', '"reading":{"more":1,'),
    ]) {
      expect(spoilt).not.toBe(reading)
      expect(validators.get('event.read')!.safeParse(JSON.parse(spoilt)).success, spoilt).toBe(false)
    }
  })

  it('yields every data point of an arrow: value, unit, who, when and how', () => {
    const facts = lines.flatMap((text) => (JSON.parse(text) as Line).fact ?? [])
    const asBuilt = facts.find((fact) => fact.hash === order.asBuilt)!.body as { arrows: string[] }
    const arrow = facts.find((fact) => fact.hash === asBuilt.arrows[0])!.body as {
      arrow: string
      readings: { event: string; by: string; reading: Record<string, unknown> }[]
    }
    const taken = order.built.bench!.arrows.find((each) => each.id === arrow.arrow)!.readings
    expect(taken.length).toBeGreaterThan(12)
    expect(arrow.readings).toHaveLength(taken.length)
    for (const { event, by, reading } of taken) {
      const { point, value, unit, takenAt, source } = reading
      const there = arrow.readings.find((each) => each.event === event)
      expect(there).toMatchObject({ by, reading: { point, value, unit, takenAt, source } })
    }
    const described = JSON.stringify(schema.$defs['fact.arrowBuilt'])
    for (const point of DATA_POINT_NAMES) expect(described).toContain(`"${point}"`)
  })

  it('fits its hashes by a script of under sixty lines that needs nothing but Node', () => {
    const script = readFileSync(SCRIPT, 'utf8')
    expect(script.split('\n').length).toBeLessThan(60)
    expect([...script.matchAll(/from '([^']+)'/g)].every(([, from]) => from!.startsWith('node:'))).toBe(true)
    expect(execFileSync('node', [SCRIPT, file], { encoding: 'utf8' })).toContain('Every hash fits.')
  })

  it.each([
    ['a reading that was changed', (text: string) => text.replace(/"value":(\d)/, '"value":1$1')],
    ['an event that was taken out', (text: string) => text.replace(/\{"event":.*\n/, '')],
    ['a file that was cut short', (text: string) => text.slice(0, text.lastIndexOf('{"footer"'))],
    ['a count that was changed', (text: string) => text.replace('"counts":{"event":', '"counts":{"event":9')],
  ])('is seen by the script to be %s', (_, spoil) => {
    const spoilt = join(folder, 'spoilt.jsonl')
    const text = readFileSync(file, 'utf8')
    expect(spoil(text)).not.toBe(text)
    writeFileSync(spoilt, spoil(text))
    expect(spawnSync('node', [SCRIPT, spoilt]).status).toBe(1)
  })
})
