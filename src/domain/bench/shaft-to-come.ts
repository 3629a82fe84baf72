/**
 * What a shaft will weigh once it is cut, from what it weighed raw: its own weight where its lot's alone said less. The two
 * are weighed against each other by their errors, so that a reading never widens the band of its own arrow.
 */
import type { ForecastItem } from '../../core/weight/forecast-item'
import { grains, inGrains } from '../../core/quantity'
import type { PlanItem } from '../sheet/plan-items'
import type { Sheet } from '../sheet/sheet'
import type { BenchArrow } from './bench'
import { accepted } from './bench'
import { itemOf } from './reading-item'

// Common practice, no source [CP].
const UNEVEN = 0.01 // how far an inch that comes off may differ from the shaft's mean, one s.d.
const SAW_IN = 0.01 // of the cut length, one s.d.
const RAW_LENGTH_IN = 0.04 // of a length that is not read: sold to a sixteenth of an inch

/**
 * @param item the shaft's, as planned for this arrow
 * @param own the arrow's own sheet
 * @returns the item as it was where the shaft was not weighed raw, or is shorter than it is to be cut
 */
export function shaftToCome(item: PlanItem, arrow: BenchArrow, own: Sheet): ForecastItem {
  const raw = accepted(arrow, 'rawWeight')
  const cutIn = accepted(arrow, 'c2c')?.reading.value ?? own.plan.c2cIn
  if (raw === undefined || cutIn === undefined || item.part.kind !== 'shaft') return item.item
  const readIn = accepted(arrow, 'rawLength')?.reading.value
  const rawIn = readIn ?? item.part.rawLengthIn
  const share = cutIn / rawIn
  if (!(share > 0 && share <= 1)) return item.item

  const read = itemOf(raw, item.item.name, own)
  const weight = inGrains(read.mean)
  const sawIn = accepted(arrow, 'c2c') === undefined ? SAW_IN : 0
  const lengthIn = readIn === undefined ? RAW_LENGTH_IN : 0
  const ownSd = Math.hypot(
    share * inGrains(read.ownSd),
    UNEVEN * weight * (1 - share),
    (weight / rawIn) * Math.hypot(sawIn, share * lengthIn),
  )
  const sharedSd = share * inGrains(read.sharedSd)
  const lot = { own: inGrains(item.item.ownSd), shared: inGrains(item.item.sharedSd) }
  const [errorOfRaw, errorOfLot] = [ownSd ** 2 + sharedSd ** 2, lot.own ** 2 + lot.shared ** 2]
  const byLot = errorOfLot === 0 ? 1 : errorOfRaw / (errorOfRaw + errorOfLot)
  const byRaw = 1 - byLot // each by the inverse of its variance
  return {
    ...read,
    kind: 'expected',
    origin: 'computed',
    ref: `${read.ref}: ${raw.reading.raw} gr raw, cut from ${rawIn} to ${cutIn} in, beside what its lot weighs`,
    mean: grains(byLot * inGrains(item.item.mean) + byRaw * share * weight),
    // The little that the lot's mean still has in it counts as the arrow's own.
    ownSd: grains(Math.hypot(byRaw * ownSd, byLot * Math.hypot(lot.own, lot.shared))),
    sharedSd: grains(byRaw * sharedSd),
  }
}
