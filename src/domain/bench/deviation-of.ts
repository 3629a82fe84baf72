/** The deviation that a reading out of its limits opens: what was required, what is. The why is the builder's to add. */
import type { Id } from '../records/scalars'
import type { Sheet } from '../sheet/sheet'
import type { Deviation } from './built'
import { DATA_POINTS } from './data-points'
import type { Reading } from './reading'
import { isWithin, limitOf } from './limits'
import type { Limit } from './limits'

function required({ min, max }: Limit, unit: string, decimals: number): string {
  if (min === undefined) return `at most ${max!.toFixed(decimals)} ${unit}`
  if (max === undefined) return `at least ${min.toFixed(decimals)} ${unit}`
  return `${min.toFixed(decimals)} to ${max.toFixed(decimals)} ${unit}`
}

const stopped = (value: number, { stop }: Limit, unit: string, decimals: number): string =>
  stop === undefined || isWithin(value, { max: stop }) ? '' : `; over ${stop.toFixed(decimals)} ${unit} the shop stops`

/** @param limit the point's own on the sheet, or another (an arrow's finished weight about its own target) */
export function deviationOf(
  reading: Reading,
  step: string,
  sheet: Sheet,
  id: Id,
  limit: Limit | null = limitOf(reading.point, sheet),
): Deviation | null {
  if (limit === null || isWithin(reading.value, limit)) return null
  const { unit, decimals } = DATA_POINTS[reading.point]
  return {
    id,
    step,
    point: reading.point,
    required: `${required(limit, unit, decimals)}${stopped(reading.value, limit, unit, decimals)}`,
    found: `${reading.value.toFixed(decimals)} ${unit}`,
    why: '',
    decision: null,
  }
}
