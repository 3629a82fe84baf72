/** One value off a scale, a rule or a gauge, as it was read. The raw text stays, so that a doubt can be settled years on. */
import * as z from 'zod/mini'
import { line, moment } from '../records/scalars'
import { DATA_POINT_NAMES } from './data-points'

export const READING_SOURCES = ['serial', 'keyboard', 'typed', 'paper', 'derived'] as const
export const reading = z.strictObject({
  point: z.enum(DATA_POINT_NAMES),
  value: z.number(),
  unit: z.enum(['gr', 'in', 'mm', '°', '°C']),
  raw: line,
  source: z.enum(READING_SOURCES),
  stable: z.boolean(),
  attempt: z.int().check(z.positive()),
  /** The scale or gauge, by the shop's own name; empty when there is none. */
  scale: line,
  takenAt: moment,
})
export type Reading = z.infer<typeof reading>
