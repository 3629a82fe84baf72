/** One drawing for each way of measuring that a client can be asked for. */
import type { ReactNode } from 'react'
import type { Measure } from '../../domain/call/open-questions'
import { MEASURE_WORDS } from '../words/call/open-words'
import { BowAtRest, BowDrawn, DimensionLine, NockedArrow, PLACE, Pivot } from './bow-drawing'
import look from './measuring.module.css'

const { throat, string, rest, pivot, riserFront, axis } = PLACE

const DrawWeight = () => (
  <>
    <BowDrawn />
    <path className={look.thing} d="M8 40 h17 v10 h-17 Z M25 45 h5" />
    <path className={look.mark} d="M16.5 47.5 v-5 M12 47.5 a5 5 0 0 1 9 0" />
    <path className={look.dimension} d="M8 58 H28 M8 58 l3 -1.2 v2.4 Z" />
    <text className={look.name} x={18} y={66}>
      pull
    </text>
  </>
)

const DrawLength = () => (
  <>
    <BowDrawn />
    <NockedArrow />
    <Pivot />
    <DimensionLine from={throat} to={pivot} at={90} reach={40} name="string to pivot" />
  </>
)

const Marks = () => (
  <>
    <BowDrawn />
    <NockedArrow />
    <path className={look.mark} d={`M${rest} ${axis - 4} v8 M${riserFront} ${axis - 4} v8`} />
    <DimensionLine from={throat} to={rest} at={86} reach={36} name="throat to rest" />
    <DimensionLine from={throat} to={riserFront} at={95} reach={46} name="throat to riser front" />
  </>
)

const BraceHeight = () => (
  <>
    <BowAtRest />
    <Pivot />
    <DimensionLine from={string} to={pivot} at={94} reach={42} name="brace" />
  </>
)

const ModuleMark = () => (
  <>
    <path className={look.thing} d="M80 10 a34 34 0 1 1 -1 0 Z" />
    <path className={look.thing} d="M62 34 h30 l10 10 -8 16 h-26 l-12 -12 Z" />
    <circle className={look.mark} cx={66} cy={44} r={2.5} />
    <circle className={look.mark} cx={92} cy={46} r={2.5} />
    <circle className={look.mark} cx={80} cy={68} r={4} />
    <path className={look.mark} d="M79 30 l-2.5 -5 h5 Z" />
    <text className={look.name} x={79} y={22}>
      D
    </text>
    <text className={look.name} x={79} y={54}>
      module
    </text>
  </>
)

const Nock = () => (
  <>
    <path className={look.string} d="M48 8 V82" />
    <path className={look.limb} d="M48 24 V66" />
    <path className={look.thing} d="M44 40 H66 L72 42 H120 V48 H72 L66 50 H44 a5 5 0 0 0 0 -10 Z" />
    <path
      className={look.dimension}
      d="M45 74 H51 M30 74 H45 M45 74 l-3 -1.2 v2.4 Z M66 74 H51 M51 74 l3 -1.2 v2.4 Z"
    />
    <text className={look.name} x={80} y={76}>
      serving
    </text>
    <text className={look.name} x={96} y={38}>
      nock, no arrow
    </text>
  </>
)

const Chronograph = () => (
  <>
    <g transform="translate(-78 6) scale(0.86)">
      <BowAtRest />
    </g>
    <path className={look.arrow} d="M40 45 H72 M72 45 l-5 -2 v4 Z M42 45 l4 -3 h6 l-2 3 M42 45 l4 3 h6 l-2 -3" />
    <path className={look.thing} d="M104 62 h44 v12 h-44 Z M110 62 L106 26 M142 62 L146 26 M104 26 h6 M142 26 h6" />
    <path className={look.axis} d="M76 45 H150" />
    <DimensionLine from={31} to={104} at={92} reach={16} name="about 3 ft" />
  </>
)

const DRAWINGS: Readonly<Record<Measure, () => ReactNode>> = {
  'draw weight': DrawWeight,
  'draw length': DrawLength,
  marks: Marks,
  'brace height': BraceHeight,
  'module mark': ModuleMark,
  nock: Nock,
  chronograph: Chronograph,
}

export function MeasureDrawing({ measure }: { measure: Measure }) {
  const Drawing = DRAWINGS[measure]
  return (
    <svg
      className={look.drawing}
      viewBox="0 0 160 98"
      role="img"
      aria-label={`${MEASURE_WORDS[measure]}, drawn`}
      data-label=""
    >
      <Drawing />
    </svg>
  )
}
