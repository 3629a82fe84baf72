/**
 * The front of the arrow at full draw beside rest and riser, to scale: what lies ahead of what, each distance with a letter
 * in the drawing and its figure, and the least the shop allows, in the list.
 */
import type { ReactNode } from 'react'
import type { Length } from '../../../core/quantity'
import { inInches } from '../../../core/quantity'
import type { ElevationPiece } from '../elevation/elevation-piece'
import { drawnInOrder, sideOutline } from '../side-view/side-outline'
import { Value } from '../value'
import look from './clearance.module.css'

export interface ClearanceSpan {
  /** Last part of the figure's name: `frontAheadOfRest`. */
  readonly key: string
  readonly label: string
  /** Where it is drawn, inches along the arrow from the throat; undefined for one that lies outside the drawing. */
  readonly drawn?: { readonly fromIn: number; readonly toIn: number } | undefined
  readonly of: Length
  /** The shop's rule. */
  readonly least: Length
}

interface ClearanceProps {
  name: string
  pieces: readonly ElevationPiece[]
  /** Along the arrow at full draw, inches from the throat. */
  restAtIn: number
  riserFrontAtIn: number
  /** From the arrow's centre line down to the riser. */
  riserBelowIn: number
  /** Grip pivot, and the cables with their side, along the arrow; left out where nobody knows. */
  gripAtIn?: number | undefined
  cables?: { readonly atIn: number; readonly side: string } | undefined
  spans: readonly ClearanceSpan[]
  /** The vanes beside the cables, drawn under the list. */
  behind?: ReactNode
  /** *marked on a nocked arrow* or *estimated from the draw length* */
  note?: ReactNode
}

const PX_PER_IN = 58
const MM_PER_IN = 25.4 // exact [SP811]
const BEHIND_REST_IN = 0.9
// A hand on the grip and the grip itself, for the eye only: common practice, no source [CP].
const HAND_BEHIND_IN = 1.9
const HAND_AHEAD_IN = 0.6
const HAND_HIGH_IN = 1.1
const GRIP_BEHIND_IN = 0.4

export function Clearance(props: ClearanceProps) {
  const { name, pieces, restAtIn, riserFrontAtIn, riserBelowIn, gripAtIn, cables, spans, behind, note } = props
  const drawn = spans.flatMap(({ key, drawn: at, of, least }) => (at === undefined ? [] : [{ key, of, least, ...at }]))
  const lettered = new Map(drawn.map(({ key }, at) => [key, letter(at)]))
  const tip = Math.max(restAtIn, ...pieces.map(({ toIn }) => toIn))
  const hand = gripAtIn === undefined ? undefined : { from: gripAtIn - HAND_BEHIND_IN, to: gripAtIn + HAND_AHEAD_IN }
  const start = Math.min(restAtIn, riserFrontAtIn, hand?.from ?? restAtIn, cables?.atIn ?? restAtIn) - BEHIND_REST_IN
  const x = (at: number) => (at - start) * PX_PER_IN
  const halfIn = Math.max(0.3, ...pieces.filter(({ toIn }) => toIn > start).map((p) => p.halfWidthMm / MM_PER_IN))
  const top = halfIn * PX_PER_IN + 14 + drawn.length * 18
  const shelf = riserBelowIn * PX_PER_IN
  const handTop = shelf + 0.3 * PX_PER_IN
  const foot = Math.max(halfIn * PX_PER_IN, handTop + (hand === undefined ? 0 : HAND_HIGH_IN * PX_PER_IN))
  const below = foot + 22
  const width = x(tip) + 12
  const riserRear = gripAtIn === undefined ? start : gripAtIn - GRIP_BEHIND_IN
  return (
    <figure className={look.clearance}>
      <svg
        className={look.drawing}
        viewBox={`0 ${-top} ${width} ${top + below}`}
        style={{ maxWidth: width }}
        aria-hidden="true"
      >
        <clipPath id={`${name}-seen`}>
          <rect x="0" y={-top} width={width} height={top + below} />
        </clipPath>
        <g clipPath={`url(#${name}-seen)`}>
          <path className={look.riser} d={`M${x(riserRear)} ${shelf}H${x(riserFrontAtIn)}V${foot}H${x(riserRear)}Z`} />
          {hand === undefined ? null : (
            <rect
              className={look.hand}
              x={x(hand.from)}
              y={handTop}
              width={(hand.to - hand.from) * PX_PER_IN}
              height={HAND_HIGH_IN * PX_PER_IN}
              rx={0.35 * PX_PER_IN}
            />
          )}
          {cables === undefined ? null : (
            <path className={look.cables} d={`M${x(cables.atIn)} ${-top + 8}V${foot}m7 0V${-top + 8}`} />
          )}
          {drawnInOrder(pieces).map((piece, at) => (
            <path
              key={`${piece.id}.${at}`}
              className={piece.hidden ? look.hidden : look.outline}
              d={sideOutline(piece, x, PX_PER_IN / MM_PER_IN)}
            />
          ))}
          <path className={look.centre} d={`M0 0H${width}`} />
          <path className={look.rest} d={`M${x(restAtIn)} 8V${shelf}m-7 0h14`} />
        </g>
        <g className={look.names}>
          <text x={x(restAtIn) + 10} y={shelf - 6}>
            rest
          </text>
          <text x={x(riserFrontAtIn)} y={foot + 15} textAnchor="end">
            riser
          </text>
          {hand === undefined ? null : (
            <text x={x(hand.from)} y={foot + 15}>
              hand
            </text>
          )}
          {cables === undefined ? null : (
            <text x={x(cables.atIn) + 12} y={-halfIn * PX_PER_IN - 4}>
              cables, {cables.side}
            </text>
          )}
        </g>
        {drawn.map((span, at) => {
          const y = -halfIn * PX_PER_IN - 14 - at * 18
          const [from, to] = [x(span.fromIn), x(span.toIn)]
          const short = inInches(span.of) < inInches(span.least)
          return (
            <g key={span.key} className={short ? look.short : look.span}>
              <path d={`M${from} ${y - 4}V${y + 4}M${to} ${y - 4}V${y + 4}M${from} ${y}H${to}`} />
              <path className={look.drop} d={`M${from} ${y + 4}V0M${to} ${y + 4}V0`} />
              <text x={Math.min(from, to) - 8} y={y + 5} textAnchor="end">
                {letter(at)}
              </text>
            </g>
          )
        })}
      </svg>
      <div className={look.list}>
        <dl>
          {spans.map((span) => {
            const short = inInches(span.of) < inInches(span.least)
            return (
              <div key={span.key} className={short ? look.shortRow : look.row}>
                <dt>
                  <b className={look.letter}>{lettered.get(span.key)}</b> {span.label}
                </dt>
                <dd>
                  <b>
                    <Value name={`${name}.${span.key}`} of={span.of} unit="in" decimals={2} />
                  </b>
                  <span className={look.least}>
                    {short ? 'too little, least ' : 'least '}
                    <Value name={`${name}.${span.key}.least`} of={span.least} unit="in" decimals={2} bare />
                  </span>
                </dd>
              </div>
            )
          })}
        </dl>
        {behind}
        {note === undefined ? null : <p className={look.note}>{note}</p>}
      </div>
    </figure>
  )
}

const letter = (at: number) => 'ABCDEFGH'[at] ?? '·'
