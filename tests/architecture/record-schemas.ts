/** The JSON Schema of every line that a backup can hold, made from the very schemas by which the app reads it. */
import * as z from 'zod/mini'
import { eventEnvelope } from '@/domain/records/event'
import { factEnvelope } from '@/domain/records/fact'
import { EVENT_KINDS, FACT_KINDS } from '@/domain/records/kinds'
import { personal } from '@/domain/records/personal'
import { EVENT_SCHEMA } from '@/domain/records/read-event'
import { footer, header, photoLine } from '@/storage/backup/format'

type Schema = Readonly<Record<string, unknown>>

const plain = (schema: z.ZodMiniType): Schema => {
  const { $schema: _, ...rest } = z.toJSONSchema(schema) as Record<string, unknown>
  return rest
}
const line = (kind: string, record: z.ZodMiniType): Schema => plain(z.strictObject({ [kind]: record }))

const facts = Object.entries(FACT_KINDS).map(([kind, { schemaVersion, body }]) => [
  `fact.${kind}`,
  line(
    'fact',
    z.extend(factEnvelope, {
      kind: z.literal(kind),
      schemaVersion: z.literal(schemaVersion),
      body: body as z.ZodMiniType,
    }),
  ),
])
const events = Object.entries(EVENT_KINDS).map(([what, body]) => [
  `event.${what}`,
  line(
    'event',
    z.extend(eventEnvelope, {
      what: z.literal(what),
      schemaVersion: z.literal(EVENT_SCHEMA),
      body: body as z.ZodMiniType,
    }),
  ),
])

/** By kind: `fact.sheet`, `event.read`, `personal`, `photo`, `header`, `footer`. */
const RECORD_SCHEMAS = Object.fromEntries([
  ['header', plain(header)],
  ...events,
  ...facts,
  ['personal', line('personal', personal)],
  ['photo', line('photo', photoLine)],
  ['footer', plain(footer)],
]) as Readonly<Record<string, Schema>>

export const backupLineSchema = `${JSON.stringify(
  {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'One line of a Grainwright backup',
    description: 'What each record means, and how its hash is made, stands in docs/records.md.',
    oneOf: Object.keys(RECORD_SCHEMAS).map((name) => ({ $ref: `#/$defs/${name}` })),
    $defs: RECORD_SCHEMAS,
  },
  null,
  1,
)}\n`
