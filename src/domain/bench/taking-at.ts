/** What is known before a reading is taken: by which scale, the how manieth, what is expected, and the arrow before it. */
import { inGrains } from '../../core/quantity'
import type { Sheet } from '../sheet/sheet'
import type { ShopScale } from './bench-scale'
import { accepted, building, standing } from './bench'
import type { Bench, BenchArrow } from './bench'
import type { DataPoint } from './data-points'
import { DATA_POINTS } from './data-points'
import { beforePass } from './expected-at'
import { isFletchedLast } from './fletched-last'
import { isWithin } from './limits'
import type { Limit } from './limits'
import type { ArrowForecast } from './set-forecast'
import type { BeforePass, Expectation, LandedWet } from './slips'
import type { Taking } from './take-reading'

/** Once trimmed, arrows weigh the same: an equal reading is the aim there, not a scale that was not cleared. */
const TRIMMED_ALIKE: ReadonlySet<DataPoint> = new Set(['trimWeight', 'edgeWeight', 'bondWeight', 'finishedWeight'])

export function takingAt(
  point: DataPoint,
  arrow: BenchArrow,
  {
    bench,
    expected,
    heavyGr,
    scale: atBench,
  }: {
    bench: Bench
    expected: Expectation | undefined
    /** A heavy pass of this shop. */
    heavyGr: number
    scale: ShopScale | undefined
  },
): Omit<Taking, 'source' | 'takenAt'> {
  const before = building(bench)
    .filter((each) => each.no < arrow.no)
    .flatMap((each) => {
      const kept = accepted(each, point)
      return kept === undefined ? [] : [{ no: each.no, value: kept.reading.value }]
    })
  const scale = DATA_POINTS[point].unit === 'gr' ? atBench : undefined
  return {
    point,
    scale: scale?.name ?? '',
    stable: true,
    attempt: standing(arrow, point).length + 1,
    expected,
    pass: passAt(point, arrow, heavyGr),
    last: TRIMMED_ALIKE.has(point) ? undefined : before.at(-1),
    capacityGr: scale?.capacityGr,
  }
}

const passAt = (point: DataPoint, arrow: BenchArrow, heavyGr: number): BeforePass | undefined => {
  const was = point === 'trimWeight' || point === 'edgeWeight' ? beforePass(arrow, point) : undefined
  return was === undefined ? undefined : { was, heavyGr }
}

/** How the arrow of a finished weight was on its number when it was weighed wet. */
export function landedWet(own: ArrowForecast | undefined, sheet: Sheet): LandedWet | undefined {
  const limit = ownLimit('finishedWeight', own, sheet)
  const wet = own && accepted(own.arrow, 'bondWeight')?.reading.value
  // Fletched last, it was wet without its vanes, and on another number.
  if (limit === undefined || wet === undefined || isFletchedLast(sheet.route)) return undefined
  return isWithin(wet, limit) ? { wet, limit } : undefined
}

/** An arrow's own target with its tolerance, for the points that aim at one; for the others what the sheet holds them to. */
export function ownLimit(point: DataPoint, own: ArrowForecast | undefined, sheet: Sheet): Limit | undefined {
  if (point !== 'finishedWeight' || own === undefined) return undefined
  const target = inGrains(own.target)
  return { min: target - sheet.rules.toleranceGr, max: target + sheet.rules.toleranceGr }
}
