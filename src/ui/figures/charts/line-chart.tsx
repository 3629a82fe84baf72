/** One quantity against another, up to three lines told apart by dash and name, with a sentence and a table twin. */
import { scaleLinear } from 'd3-scale'
import { area, line } from 'd3-shape'
import { inUnit } from '../../../core/quantity'
import type { Dimension, Quantity, UnitOf } from '../../../core/quantity'
import { useUnits } from '../../app/units'
import { inSystem } from '../../words/unit-systems'
import { withUnit } from '../../words/with-unit'
import { Value } from '../value'
import look from './line-chart.module.css'
import { PlotArea, TICKS_DOWN } from './plot-area'
import { TableTwin } from './table-twin'

export interface Axis<D extends Dimension> {
  readonly label: string
  readonly unit: UnitOf<D>
  readonly decimals: number
}
export interface Series<X extends Dimension, Y extends Dimension> {
  readonly key: string
  readonly label: string
  readonly points: readonly {
    readonly x: Quantity<X>
    readonly y: Quantity<Y>
    /** Ends of the 95 % band. */
    readonly low?: Quantity<Y>
    readonly high?: Quantity<Y>
  }[]
}

interface LineChartProps<X extends Dimension, Y extends Dimension> {
  /** A point's figure is `name.series.place`. */
  name: string
  /** The finding in one sentence. */
  sentence: string
  x: Axis<X>
  y: Axis<Y>
  /** At most three, sharing their x. */
  series: readonly Series<X, Y>[]
  /** A washed stretch of y, such as the reserve's working band. */
  wash?: { readonly low: Quantity<Y>; readonly high: Quantity<Y> }
  /** A marked x: what is planned now. */
  at?: Quantity<X>
}

const HEIGHT_PX = 190

export function LineChart<X extends Dimension, Y extends Dimension>({
  name,
  sentence,
  x,
  y,
  series,
  wash,
  at,
}: LineChartProps<X, Y>) {
  const system = useUnits()
  const [shownX, shownY] = [inSystem(x.unit, x.decimals, system), inSystem(y.unit, y.decimals, system)]
  const numberX = (q: Quantity<X>) => inUnit(q, shownX.unit)
  const numberY = (q: Quantity<Y>) => inUnit(q, shownY.unit)
  const points = series.flatMap((each) => each.points)
  if (points.length === 0) return <p data-label="">{sentence}</p>
  const xs = points.map((point) => numberX(point.x))
  const ys = points.flatMap((point) => [point.y, point.low ?? point.y, point.high ?? point.y]).map(numberY)
  if (wash !== undefined) ys.push(numberY(wash.low), numberY(wash.high))
  const scaleX = scaleLinear([Math.min(...xs), Math.max(...xs)], [0, 100])
  const scaleY = scaleLinear([Math.min(...ys), Math.max(...ys)], [100, 0]).nice(TICKS_DOWN)
  type Point = (typeof points)[number]
  const lineOf = line<Point>(
    (point) => scaleX(numberX(point.x)),
    (point) => scaleY(numberY(point.y)),
  )
  const bandOf = area<Point>(
    (point) => scaleX(numberX(point.x)),
    (point) => scaleY(numberY(point.low!)),
    (point) => scaleY(numberY(point.high!)),
  ).defined((point) => point.low !== undefined && point.high !== undefined)

  return (
    <figure>
      <figcaption data-label="">{sentence}</figcaption>
      <p className={look.yLabel} aria-hidden="true" data-label="">
        {withUnit(y.label, shownY.unit)}
      </p>
      <PlotArea
        heightPx={HEIGHT_PX}
        across={scaleX}
        ticksAcross={scaleX.ticks(5)}
        titleAcross={withUnit(x.label, shownX.unit)}
        down={scaleY}
      >
        {wash === undefined ? null : (
          <rect
            className={look.wash}
            width="100"
            y={scaleY(numberY(wash.high))}
            height={scaleY(numberY(wash.low)) - scaleY(numberY(wash.high))}
          />
        )}
        {scaleY.ticks(TICKS_DOWN).map((tick) => (
          <path key={tick} className={look.grid} d={`M0 ${scaleY(tick)}H100`} />
        ))}
        {series.map((each) => (
          <path key={each.key} className={look.band} d={bandOf(each.points) ?? ''} />
        ))}
        {at === undefined ? null : <path className={look.at} d={`M${scaleX(numberX(at))} 0V100`} />}
        {series.map((each, i) => (
          <path key={each.key} className={`${look.line} ${look[`line${i}`]}`} d={lineOf(each.points) ?? ''} />
        ))}
      </PlotArea>
      {series.length < 2 ? null : (
        <ul className={look.key}>
          {series.map((each, i) => (
            <li key={each.key}>
              <svg width="28" height="8" aria-hidden="true">
                <path className={`${look.line} ${look[`line${i}`]}`} d="M0 4H28" />
              </svg>
              <span data-label="">{each.label}</span>
            </li>
          ))}
        </ul>
      )}
      <TableTwin
        caption={`${y.label} against ${x.label}`}
        columns={[
          { head: withUnit(x.label, shownX.unit), figures: true },
          ...series.map((each) => ({ head: withUnit(each.label, shownY.unit), figures: true })),
        ]}
        rows={series[0]!.points.map((point, i) => ({
          key: String(i),
          cells: [
            <Value key="x" name={`${name}.x.${i}`} of={point.x} unit={x.unit} decimals={x.decimals} bare />,
            ...series.map((each) => {
              const own = each.points[i]
              return own === undefined ? (
                ''
              ) : (
                <Value
                  key={each.key}
                  name={`${name}.${each.key}.${i}`}
                  of={own.y}
                  unit={y.unit}
                  decimals={y.decimals}
                  bare
                />
              )
            }),
          ],
        }))}
      />
    </figure>
  )
}
