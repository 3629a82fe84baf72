/** The whole arrow from the side at one true scale, with its dimensions: for the print, where it is measured against. */
import type { Length } from '../../../core/quantity'
import type { ElevationPiece } from '../elevation/elevation-piece'
import { SvgValue } from '../value'
import { drawnInOrder, sideOutline } from './side-outline'
import look from './side-view.module.css'

export interface Span {
  readonly key: string
  /** *C2C*, *balance point* */
  readonly label: string
  readonly fromIn: number
  readonly toIn: number
  /** What is written: the core's own figure for this span. */
  readonly of: Length
}

interface SideViewProps {
  /** Where its figures belong; a span's figure is `name.key`. */
  name: string
  pieces: readonly ElevationPiece[]
  /** Nearest the arrow first. */
  spans: readonly Span[]
}

const WIDTH_MM = 180 // between the margins of A4; the drawing's units are millimetres of paper
const SIDE_MM = 4
const SPAN_MM = 5.5
const MM_PER_IN = 25.4 // exact [SP811]

export function SideView({ name, pieces, spans }: SideViewProps) {
  if (pieces.length === 0) return null
  const rear = Math.min(...pieces.map(({ fromIn }) => fromIn)) - 0.25
  const tip = Math.max(...pieces.map(({ toIn }) => toIn))
  const perIn = (WIDTH_MM - 2 * SIDE_MM) / (tip - rear)
  const perMm = perIn / MM_PER_IN
  const x = (at: number) => SIDE_MM + (at - rear) * perIn
  const half = Math.max(...pieces.map(({ halfWidthMm }) => halfWidthMm)) * perMm
  const bottom = half + 3 + spans.length * SPAN_MM
  return (
    <svg
      className={look.view}
      viewBox={`0 ${-half - 2} ${WIDTH_MM} ${half + 2 + bottom}`}
      role="img"
      aria-label={`Side view of the arrow with ${spans.map(({ label }) => label).join(', ')}`}
    >
      <path className={look.centre} d={`M0 0H${WIDTH_MM}`} />
      {drawnInOrder(pieces).map((piece, at) => (
        <path
          key={`${piece.id}.${at}`}
          className={piece.hidden ? look.hidden : look.outline}
          d={sideOutline(piece, x, perMm)}
        />
      ))}
      {spans.map((span, at) => {
        const y = half + 4 + at * SPAN_MM
        const [from, to] = [x(span.fromIn), x(span.toIn)]
        return (
          <g key={span.key} className={look.span}>
            <path d={`M${from} ${half * 0.35}V${y + 1}M${to} ${half * 0.35}V${y + 1}M${from} ${y}H${to}`} />
            <path className={look.arrow} d={`M${from} ${y}l2 -.6v1.2ZM${to} ${y}l-2 -.6v1.2Z`} />
            <text x={(from + to) / 2} y={y + 3.4} textAnchor="middle">
              <tspan data-label="">{span.label} </tspan>
              <SvgValue name={`${name}.${span.key}`} of={span.of} unit="in" decimals={2} />
            </text>
          </g>
        )
      })}
    </svg>
  )
}
