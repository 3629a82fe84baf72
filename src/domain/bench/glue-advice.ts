/** What the front glue of one arrow is to come to, and what is left to wipe or add while it is open. */
import type { Outcome } from '../../core/outcome'
import type { Mass } from '../../core/quantity'
import { difference, grains, magnitude, sum } from '../../core/quantity'
import type { GlueAdvice } from '../../core/trim/glue-to-land'
import { glueToLand } from '../../core/trim/glue-to-land'
import { forecastWeight } from '../../core/weight/forecast-weight'
import type { SheetFigures } from '../sheet/sheet-figures'
import type { Sheet } from '../sheet/sheet'
import { fletchingToCome, frontGlueItems } from './arrow-items'
import { accepted } from './bench'
import type { ArrowForecast } from './set-forecast'
import { trimAdvice } from './trim-advice'

export interface GlueAtBench {
  readonly advice: Outcome<GlueAdvice>
  /** Glue that is on it by the scale; undefined while it was not weighed wet. */
  readonly on: Mass | undefined
  /** To put on while none was weighed; then to wipe or to add. */
  readonly change: Mass
  /** What the scale should show when it is done. */
  readonly weighs: Mass
}

/** The last weight before any front glue; less what breaking the edge took since, where it was not weighed again. */
function dryNow(own: ArrowForecast, worked: SheetFigures, sheet: Sheet): Mass | undefined {
  const { arrow } = own
  const edge = accepted(arrow, 'edgeWeight')
  if (edge !== undefined) return grains(edge.reading.value)
  const dry = accepted(arrow, 'trimWeight') ?? accepted(arrow, 'dryWeight')
  const isEdged = arrow.confirmed.some(({ step }) => step === 'edge')
  const chamfer = isEdged ? trimAdvice(own, worked, sheet).chamfer : grains(0)
  return dry && difference(grains(dry.reading.value), chamfer)
}

/** @returns undefined where no front glue is planned, or the dry weight is not known */
export function glueAdvice(own: ArrowForecast, worked: SheetFigures, sheet: Sheet): GlueAtBench | undefined {
  const { arrow, target } = own
  const dry = dryNow(own, worked, sheet)
  const usual = forecastWeight(frontGlueItems(arrow, worked.items, sheet))
  if (dry === undefined || !usual.ok) return undefined
  const wet = accepted(arrow, 'bondWeight')?.reading.value
  const on = wet === undefined ? undefined : difference(grains(wet), dry)
  const rear = forecastWeight(fletchingToCome(arrow, worked.items, sheet))
  const needed = difference(difference(target, dry), rear.ok ? rear.value.total.value : grains(0))
  const advice = glueToLand({
    needed,
    on,
    usual: usual.value.total,
    tolerance: grains(sheet.rules.toleranceGr),
  })
  const aim = advice.ok ? advice.value.aim : needed
  return { advice, on, change: magnitude(difference(aim, on ?? grains(0))), weighs: sum(dry, aim) }
}
