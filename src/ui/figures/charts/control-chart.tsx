/** One reading after another in the order they were taken, with the limits a steady run of them keeps. */
import { scaleLinear } from 'd3-scale'
import { line } from 'd3-shape'
import type { Outcome } from '../../../core/outcome'
import { inUnit } from '../../../core/quantity'
import type { Dimension, Quantity, UnitOf } from '../../../core/quantity'
import type { ControlLimits } from '../../../core/statistics/control-limits'
import { useUnits } from '../../app/units'
import { inSystem } from '../../words/unit-systems'
import { withUnit } from '../../words/with-unit'
import look from './control-chart.module.css'
import { dotCells } from './dot-cells'
import type { Dot } from './dot-plot'
import { PlotArea, TICKS_DOWN } from './plot-area'
import { TableTwin } from './table-twin'

interface ControlChartProps<D extends Dimension> {
  /** A reading is `name.key`. */
  name: string
  label: string
  sentence: string
  /** In order of time. */
  dots: readonly Dot<D>[]
  limits: Outcome<ControlLimits<D>>
  unit: UnitOf<D>
  decimals: number
}

const HEIGHT_PX = 150

export function ControlChart<D extends Dimension>({
  name,
  label,
  sentence,
  dots,
  limits,
  unit,
  decimals,
}: ControlChartProps<D>) {
  const shown = inSystem(unit, decimals, useUnits())
  const number = (q: Quantity<D>) => inUnit(q, shown.unit)
  if (!limits.ok) return <p data-label="">{sentence}</p>
  const { centre, lower, upper, beyond } = limits.value
  const values = dots.map(({ value }) => number(value))
  const marks = [...values, number(lower), number(upper)]
  const across = scaleLinear([1, Math.max(2, dots.length)], [1, 99])
  const down = scaleLinear([Math.min(...marks), Math.max(...marks)], [96, 4]).nice(TICKS_DOWN)
  const path = line<number>(
    (_, i) => across(i + 1),
    (value) => down(value),
  )
  return (
    <figure>
      <figcaption data-label="">{sentence}</figcaption>
      <PlotArea
        heightPx={HEIGHT_PX}
        across={across}
        ticksAcross={placesOf(dots.length)}
        titleAcross="in the order they were taken"
        down={down}
      >
        <rect
          className={look.wash}
          width="100"
          y={down(number(upper))}
          height={down(number(lower)) - down(number(upper))}
        />
        <path className={look.centre} d={`M0 ${down(number(centre))}H100`} />
        <path className={look.limit} d={`M0 ${down(number(upper))}H100M0 ${down(number(lower))}H100`} />
        <path className={look.run} d={path(values) ?? ''} />
        {dots.map((dot, i) => (
          // A line of no length with round ends is a dot that keeps its shape however wide the chart is.
          <path
            key={dot.key}
            className={beyond.includes(i + 1) ? look.beyond : look.dot}
            d={`M${across(i + 1)} ${down(values[i]!)}h0`}
          />
        ))}
      </PlotArea>
      <TableTwin
        caption={`${label}, in the order they were taken`}
        columns={[{ head: 'Place' }, { head: withUnit(label, shown.unit), figures: true }, { head: 'Limits' }]}
        rows={dots.map((dot, i) => ({
          key: dot.key,
          cells: [...dotCells(name, dot, unit, decimals), beyond.includes(i + 1) ? 'beyond' : 'within'],
        }))}
      />
    </figure>
  )
}

/** Whole places only, so that a short run has no half reading on its foot. */
function placesOf(count: number): readonly number[] {
  const step = Math.max(1, Math.ceil(count / 6))
  return Array.from({ length: Math.ceil(count / step) }, (_, i) => 1 + i * step)
}
