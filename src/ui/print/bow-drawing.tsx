/** A bow from the side as the measuring sheet draws it, at rest or drawn; the arrow flies to the right. Units: the view box. */
import look from './measuring.module.css'

/** Where things stand in every drawing: 160 wide, 98 high. */
export const PLACE = { throat: 30, string: 96, rest: 117, pivot: 121, riserFront: 128, axis: 45, point: 146 } as const

export const BowAtRest = () => (
  <g>
    <path className={look.limb} d="M121 30 Q 119 14 96 5 M121 60 Q 119 76 96 85" />
    <path
      className={look.riser}
      d="M119 28 L128 28 L128 40 L124 45 L124 52 L128 57 L128 62 L119 62 L119 55 L121 48 L119 42 Z"
    />
    <path className={look.string} d="M96 5 V85" />
  </g>
)

export const BowDrawn = () => (
  <g>
    <path className={look.limb} d="M121 30 Q 118 18 102 11 M121 60 Q 118 72 102 79" />
    <path
      className={look.riser}
      d="M119 28 L128 28 L128 40 L124 45 L124 52 L128 57 L128 62 L119 62 L119 55 L121 48 L119 42 Z"
    />
    <path className={look.string} d="M102 11 L30 45 L102 79" />
  </g>
)

/** A nocked arrow with a field point, its throat on the string. */
export const NockedArrow = () => (
  <path className={look.arrow} d="M30 45 H146 M146 45 l-6 -2 v4 Z M34 45 l6 -4 h10 l-3 4 M34 45 l6 4 h10 l-3 -4" />
)

/** The pivot: the deepest point of the grip. */
export const Pivot = () => <path className={look.mark} d="M121 44.5 v7 M117.5 48 h7" />

interface DimensionProps {
  from: number
  to: number
  at: number
  /** What it is called: a letter, or a word. */
  name: string
  /** How far up its ends reach. */
  reach?: number
}

/** A dimension line as on a drawing, with its extension lines. */
export const DimensionLine = ({ from, to, at, name, reach = 6 }: DimensionProps) => (
  <g>
    <path
      className={look.dimension}
      d={`M${from} ${at - reach} V${at + 2} M${to} ${at - reach} V${at + 2} M${from} ${at} H${to} M${from} ${at} l3 -1.2 v2.4 Z M${to} ${at} l-3 -1.2 v2.4 Z`}
    />
    <text className={look.name} x={(from + to) / 2} y={at - 1.5}>
      {name}
    </text>
  </g>
)
