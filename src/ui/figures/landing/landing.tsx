/**
 * Where each arrow's weight is heading: one row an arrow around the target. Light is left and heavy is right, always; a
 * forecast is a point with its 95 % band, a weight that was read is bold. A list, so that its numbers are its text.
 */
import type { ReactNode } from 'react'
import type { Estimate } from '../../../core/outcome'
import { inUnit } from '../../../core/quantity'
import type { Mass } from '../../../core/quantity'
import { useUnits } from '../../app/units'
import { inSystem } from '../../words/unit-systems'
import { showNumber } from '../../words/format'
import { Value } from '../value'
import { LandingPlot } from './landing-plot'
import { standingOf } from './landing-words'
import look from './landing.module.css'
import { roundTicks } from './round-ticks'

export interface LandingRow {
  readonly key: string
  /** *planned*, *no. 3* */
  readonly label: string
  /** `read`: weighed to the end, no band. */
  readonly weight:
    | { readonly kind: 'read'; readonly value: Mass }
    | { readonly kind: 'forecast'; readonly value: Estimate<Mass> }
  /** Wants attention; the words say why. */
  readonly look?: boolean
  /** Instead of *heads to* and how far off: *to trim 7.9*. */
  readonly words?: ReactNode
}

interface LandingProps {
  /** Where its figures belong: `sheet.landing`; a row's value is `name.key`. */
  name: string
  rows: readonly LandingRow[]
  target: Mass
  tolerance: Mass
  chosen?: string
}

export function Landing({ name, rows, target, tolerance, chosen }: LandingProps) {
  const shown = inSystem('gr', 1, useUnits())
  const number = (mass: Mass) => inUnit(mass, shown.unit)
  const [goal, wide] = [number(target), number(tolerance)]
  const ends = rows.flatMap(({ weight }) =>
    weight.kind === 'read' ? [number(weight.value)] : [number(weight.value.low), number(weight.value.high)],
  )
  const low = Math.min(goal - 4 * wide, ...ends)
  const high = Math.max(goal + 4 * wide, ...ends)
  const margin = (high - low) * 0.04
  const scale = (at: number) => (100 * (at - low + margin)) / (high - low + 2 * margin)
  const ticks = roundTicks(low - margin, high + margin, 5).filter((tick) => Math.abs(scale(tick) - scale(goal)) > 12)

  return (
    <div className={look.box}>
      <div className={look.landing}>
        <ul className={look.rows} aria-label="Finished weight against the target, with 95 % bands">
          {rows.map((row) => (
            <li
              key={row.key}
              className={[look.row, row.look ? look.amber : '', row.key === chosen ? look.chosen : ''].join(' ')}
            >
              <span className={look.label} data-label="">
                {row.label}
              </span>
              <span className={look.plot}>
                <LandingPlot
                  at={(mass) => scale(number(mass))}
                  weight={row.weight}
                  target={target}
                  tolerance={tolerance}
                />
              </span>
              <span className={row.weight.kind === 'read' ? look.read : look.value}>
                {row.weight.kind === 'read' ? null : <span className={look.heads}>heads to </span>}
                <Value
                  name={`${name}.${row.key}`}
                  of={row.weight.kind === 'read' ? row.weight.value : row.weight.value.value}
                  unit="gr"
                  decimals={1}
                  bare
                />
              </span>
              <span className={look.words}>
                {row.words ?? <StandingWords name={name} row={row} target={target} tolerance={tolerance} />}
              </span>
            </li>
          ))}
        </ul>
        <div className={look.foot} aria-hidden="true" data-label="">
          <span className={look.unit}>{shown.unit}</span>
          <span className={look.axis}>
            {ticks.map((tick) => (
              <span key={tick} className={look.tick} style={{ insetInlineStart: `${scale(tick)}%` }}>
                {showNumber(tick, Number.isInteger(tick) ? 0 : 1)}
              </span>
            ))}
            <span className={look.target} style={{ insetInlineStart: `${scale(goal)}%` }}>
              {showNumber(goal, shown.decimals)}
            </span>
          </span>
        </div>
      </div>
    </div>
  )
}

type StandingWordsProps = Pick<LandingProps, 'name' | 'target' | 'tolerance'> & { row: LandingRow }

/** How far off: *light by 1.1*. */
function StandingWords({ name, row, target, tolerance }: StandingWordsProps) {
  const { weight } = row
  const standing = standingOf(weight.kind === 'read' ? weight.value : weight.value.value, target, tolerance)
  if (standing.kind === 'on the number') return 'on the number'
  return (
    <>
      {standing.kind} by <Value name={`${name}.${row.key}.off`} of={standing.by} unit="gr" decimals={1} bare />
    </>
  )
}
