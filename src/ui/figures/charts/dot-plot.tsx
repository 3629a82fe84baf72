/** Measured values on one line, a dot each, with target and tolerance, or mean and spread. */
import { scaleLinear } from 'd3-scale'
import { inUnit } from '../../../core/quantity'
import type { Dimension, Quantity, UnitOf } from '../../../core/quantity'
import { useUnits } from '../../app/units'
import { inSystem } from '../../words/unit-systems'
import { withUnit } from '../../words/with-unit'
import { ChartAxis } from './chart-axis'
import { dotCells } from './dot-cells'
import look from './dot-plot.module.css'
import { stacked } from './stacked'
import { TableTwin } from './table-twin'

export interface Dot<D extends Dimension> {
  readonly key: string
  /** *no. 3* */
  readonly label: string
  readonly value: Quantity<D>
  readonly look?: boolean
}

interface DotPlotProps<D extends Dimension> {
  /** A dot's value is the reading `name.key`. */
  name: string
  /** What is plotted: *Finished weight*. */
  label: string
  /** The finding in one sentence, read instead of the picture. */
  sentence: string
  dots: readonly Dot<D>[]
  unit: UnitOf<D>
  decimals: number
  /** The wash: a tolerance around a target, or a mean's spread. */
  wash?: { readonly low: Quantity<D>; readonly middle: Quantity<D>; readonly high: Quantity<D> }
}

const STEP_PX = 13

export function DotPlot<D extends Dimension>({ name, label, sentence, dots, unit, decimals, wash }: DotPlotProps<D>) {
  const shown = inSystem(unit, decimals, useUnits())
  const number = (q: Quantity<D>) => inUnit(q, shown.unit)
  const values = dots.map(({ value }) => number(value))
  const all = [...values, ...(wash === undefined ? [] : [number(wash.low), number(wash.high)])]
  const [low, high] = [Math.min(...all), Math.max(...all)]
  const margin = (high - low) * 0.06 || 10 ** -decimals
  const scale = scaleLinear([low - margin, high + margin], [0, 100])
  const places = stacked(values.map(scale), 2.4)
  const height = STEP_PX * (1 + Math.max(1, ...places)) + 6
  return (
    <figure>
      <figcaption data-label="">{sentence}</figcaption>
      {dots.length === 0 ? null : (
        <>
          <svg className={look.plot} width="100%" height={height} aria-hidden="true">
            {wash === undefined ? null : (
              <>
                <rect
                  className={look.wash}
                  x={`${scale(number(wash.low))}%`}
                  width={`${scale(number(wash.high)) - scale(number(wash.low))}%`}
                  height="100%"
                />
                <line
                  className={look.middle}
                  x1={`${scale(number(wash.middle))}%`}
                  x2={`${scale(number(wash.middle))}%`}
                  y1="0"
                  y2="100%"
                />
              </>
            )}
            {dots.map((dot, at) => (
              <circle
                key={dot.key}
                className={dot.look ? look.look : look.dot}
                cx={`${scale(values[at]!)}%`}
                cy={height - 9 - places[at]! * STEP_PX}
                r="5"
              />
            ))}
          </svg>
          <ChartAxis at={scale} ticks={scale.ticks(5)} title={withUnit(label, shown.unit)} />
          <TableTwin
            caption={label}
            columns={[{ head: 'Taken' }, { head: withUnit(label, shown.unit), figures: true }]}
            rows={dots.map((dot) => ({
              key: dot.key,
              cells: dotCells(name, dot, unit, decimals),
            }))}
          />
        </>
      )}
    </figure>
  )
}
