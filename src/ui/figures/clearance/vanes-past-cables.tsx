/** The nocked arrow from behind, to scale: how near its vanes pass the cables. Its figure stands in the list of clearances. */
import { inDegrees, inInches } from '../../../core/quantity'
import type { PastCables } from '../../../domain/sheet/cut-figures'
import look from './clearance.module.css'

const PX_PER_IN = 58
const MARGIN_PX = 12
const RADIANS = Math.PI / 180

interface VanesPastCablesProps {
  of: PastCables
  short: boolean
}

export function VanesPastCables({ of: { vanes, side, reach, toCable }, short }: VanesPastCablesProps) {
  const radius = inInches(vanes.shaftRadius) * PX_PER_IN
  const edge = radius + inInches(vanes.height) * PX_PER_IN
  const cable = inInches(toCable) * PX_PER_IN
  const half = Math.max(edge, cable) + MARGIN_PX
  const tall = edge + MARGIN_PX
  const fins = Array.from({ length: vanes.count }, (_, k) => {
    const turned = (inDegrees(vanes.cockVane) + (360 * k) / vanes.count) * RADIANS
    return { x: Math.sin(turned), y: -Math.cos(turned) }
  })
  const sides = side === undefined ? ([1, -1] as const) : [side === 'right' ? 1 : -1]
  const gap = inInches(reach) * PX_PER_IN
  return (
    <svg
      className={look.behind}
      viewBox={`${-half} ${-tall} ${2 * half} ${2 * tall + 22}`}
      width={2 * half}
      aria-hidden="true"
    >
      {sides.map((way) => {
        // Level with the vane that stands out most on this side.
        const y = fins.reduce((out, fin) => (fin.x * way > out.x * way ? fin : out), { x: 0, y: 0 }).y * edge
        return (
          <g key={way}>
            <path className={look.cables} d={`M${way * cable} ${-tall}V${tall}m${way * 4} 0V${-tall}`} />
            <g className={short ? look.short : look.span}>
              <path d={`M${way * gap} ${y - 4}v8M${way * gap} ${y}H${way * cable}`} />
            </g>
          </g>
        )
      })}
      {fins.map(({ x, y }, k) => (
        <path
          // The first is the cock vane.
          key={k}
          className={k === 0 ? look.cockVane : look.fin}
          d={`M${x * radius} ${y * radius}L${x * edge} ${y * edge}`}
        />
      ))}
      <circle className={look.outline} r={radius} />
      <g className={look.names}>
        <text y={tall + 16} textAnchor="middle">
          vanes from behind
        </text>
      </g>
    </svg>
  )
}
