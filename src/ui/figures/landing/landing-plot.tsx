/** One row of the landing: the target's line and tolerance, and the arrow's point with the ends of its band. */
import { difference, sum } from '../../../core/quantity'
import type { Mass } from '../../../core/quantity'
import type { LandingRow } from './landing'
import look from './landing-plot.module.css'

interface LandingPlotProps {
  /** Percent of the width at which a weight stands. */
  at: (mass: Mass) => number
  weight: LandingRow['weight']
  target: Mass
  tolerance: Mass
}

export function LandingPlot({ at, weight, target, tolerance }: LandingPlotProps) {
  const x = (mass: Mass) => `${at(mass).toFixed(3)}%`
  const from = at(difference(target, tolerance))
  const to = at(sum(target, tolerance))
  return (
    <svg className={look.plot} width="100%" height="100%" aria-hidden="true" focusable="false">
      <rect className={look.tolerance} x={`${from}%`} y="0" width={`${to - from}%`} height="100%" />
      <line className={look.target} x1={x(target)} x2={x(target)} y1="0" y2="100%" />
      {weight.kind === 'forecast' ? (
        <>
          <line className={look.band} x1={x(weight.value.low)} x2={x(weight.value.high)} y1="50%" y2="50%" />
          <End x={x(weight.value.low)} />
          <End x={x(weight.value.high)} />
          <circle className={look.point} cx={x(weight.value.value)} cy="50%" r="4" />
        </>
      ) : (
        <circle className={look.point} cx={x(weight.value)} cy="50%" r="5.5" />
      )}
    </svg>
  )
}

/** The mark at an end of a band: ten pixels high whatever the row is. */
const End = ({ x }: { x: string }) => (
  <svg x={x} y="50%" overflow="visible">
    <line className={look.end} y1="-5.5" y2="5.5" />
  </svg>
)
