/** A reading as the forecast takes it. */
import type { ForecastItem } from '../../core/weight/forecast-item'
import { readItem } from '../../core/weight/forecast-item'
import { scaleError } from '../../core/weight/scale-error'
import { grains, hours } from '../../core/quantity'
import type { Sheet } from '../sheet/sheet'
import type { KeptReading } from './built'

const TYPICAL_SCALE = { repeatability: grains(0.07), driftPerHour: grains(0.1) } // common practice, no source [CP]

/** A reading as an item of the forecast, with the errors of the scale that it came off. */
export function itemOf(kept: KeptReading, name: string, sheet: Sheet): ForecastItem {
  const { scale: named, value, takenAt } = kept.reading
  const scale = sheet.rules.scales.find((each) => each.name === named) ?? sheet.rules.scales[0]
  const error = scaleError(
    {
      step: grains(scale?.resolutionGr ?? 0.1),
      calibration: grains(scale?.calibrationGr ?? 0.1),
      ...TYPICAL_SCALE,
    },
    hours(0),
  )
  const none = { own: TYPICAL_SCALE.repeatability, shared: grains(0) }
  const ref = `${kept.by}, ${takenAt.slice(0, 16).replace('T', ' ')}`
  return readItem({ name, sharedKey: `scale:${named}`, ref }, grains(value), error.ok ? error.value : none)
}
