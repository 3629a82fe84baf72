/** What a shaft will weigh once it is cut, from what it weighed raw: its own weight where its lot's alone said less. */
import { inches } from '../../core/quantity'
import { cutWeight } from '../../core/weight/cut-weight'
import type { ForecastItem } from '../../core/weight/forecast-item'
import type { PlanItem } from '../sheet/plan-items'
import type { Sheet } from '../sheet/sheet'
import type { BenchArrow } from './bench'
import { accepted } from './bench'
import { itemOf } from './reading-item'

// Common practice, no source [CP].
const SAW = inches(0.01) // of the cut length, one s.d.
const SOLD = inches(0.04) // of a length that is not read: sold to a sixteenth of an inch
const EXACT = inches(0)

/**
 * @param item the shaft's, as planned for this arrow
 * @param own the arrow's own sheet
 * @returns the item as it was where the shaft was not weighed raw, or is shorter than it is to be cut
 */
export function shaftToCome(item: PlanItem, arrow: BenchArrow, own: Sheet): ForecastItem {
  const raw = accepted(arrow, 'rawWeight')
  const cut = accepted(arrow, 'c2c')
  const cutIn = cut?.reading.value ?? own.plan.c2cIn
  if (raw === undefined || cutIn === undefined || item.part.kind !== 'shaft') return item.item
  const readIn = accepted(arrow, 'rawLength')?.reading.value
  const rawIn = readIn ?? item.part.rawLengthIn
  const read = itemOf(raw, item.item.name, own)
  const expected = cutWeight(
    { ...read, length: inches(rawIn), sd: readIn === undefined ? SOLD : EXACT },
    { length: inches(cutIn), sd: cut === undefined ? SAW : EXACT },
    item.item,
  )
  if (!expected.ok) return item.item
  return {
    ...read,
    ...expected.value,
    kind: 'expected',
    origin: 'computed',
    ref: `${read.ref}: ${raw.reading.raw} gr raw, cut from ${rawIn} to ${cutIn} in, beside what its lot weighs`,
  }
}
