/** The landing of the arrow at hand, about its own target. */
import { grains } from '../../core/quantity'
import type { ArrowForecast } from '../../domain/bench/set-forecast'
import type { Sheet } from '../../domain/sheet/sheet'
import { Landing } from '../figures/landing/landing'

export function SetLandingPlot({ own, sheet }: { own: ArrowForecast; sheet: Sheet }) {
  if (!own.forecast.ok) return null
  const { total } = own.forecast.value
  return (
    <Landing
      name="bench.landing"
      rows={[
        {
          key: `${own.arrow.no}`,
          label: `no. ${own.arrow.no}`,
          look: own.state === 'light' || own.state === 'heavy',
          weight: own.read ? { kind: 'read', value: total.value } : { kind: 'forecast', value: total },
        },
      ]}
      target={own.target}
      tolerance={grains(sheet.rules.toleranceGr)}
    />
  )
}
