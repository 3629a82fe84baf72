/** Every kind of record there is: its present schema version and the schema of its body. Migrations stand in migrations.ts. */
import type * as z from 'zod/mini'
import { arrowBuilt, asBuilt } from '../bench/built'
import { bow } from '../call/bow'
import { client } from '../call/client'
import { EVENT_BODIES } from '../job/events'
import { sheet } from '../sheet/sheet'
import { rules } from '../shop/rules'
import { lot } from '../stock/lot'
import { part } from '../stock/part'
import { redaction } from './redaction'

export const FACT_KINDS = {
  client: { schemaVersion: 1, body: client },
  bow: { schemaVersion: 1, body: bow },
  part: { schemaVersion: 1, body: part },
  lot: { schemaVersion: 1, body: lot },
  rules: { schemaVersion: 1, body: rules },
  sheet: { schemaVersion: 1, body: sheet },
  arrowBuilt: { schemaVersion: 1, body: arrowBuilt },
  asBuilt: { schemaVersion: 1, body: asBuilt },
  redaction: { schemaVersion: 1, body: redaction },
} as const

export type FactKind = keyof typeof FACT_KINDS
export type FactBody<K extends FactKind> = z.infer<(typeof FACT_KINDS)[K]['body']>

export const EVENT_KINDS = EVENT_BODIES
export type { EventBody, EventKind } from '../job/events'
