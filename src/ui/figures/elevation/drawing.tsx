/** The drawing itself: outlines at true scale, centre line, break, leaders. Its words stand in the positions beneath. */
import { anchorOf } from './anchor-of'
import look from './drawing.module.css'
import type { ElevationPiece } from './elevation-piece'
import { breakPath, outlinePath } from './outline-path'
import { trueScale } from './true-scale'

const LEADER_PX = 34
const TALLEST_PX = 560 // on a phone the lines stand higher than that, and a taller drawing would push them together

interface DrawingProps {
  pieces: readonly ElevationPiece[]
  height: number
  /** Where each line's middle stands; leaders end there. */
  rows: readonly { readonly id: string; readonly y: number }[]
  chosen: string | null
  onChoose: (id: string) => void
}

/** Shaft first, what lies on it next, what is hidden in it last, so that it shows through. */
const order = ({ outline, hidden }: ElevationPiece) =>
  hidden ? 3 : outline.shape === 'shaft' ? 0 : outline.shape === 'fin' ? 1 : 2

export function Drawing({ pieces, height, rows, chosen, onChoose }: DrawingProps) {
  const scale = trueScale(pieces, Math.min(height, TALLEST_PX))
  if (scale === undefined) return <p className={look.none}>No shaft and no cut length yet: nothing to draw.</p>
  const half = Math.ceil(scale.halfWidthPx) + 6
  const width = 2 * half + LEADER_PX
  const shaft = pieces.find(({ outline }) => outline.shape === 'shaft')!
  const centre = Math.round(half) + 0.5
  return (
    <svg className={look.drawing} width={width} height={height} aria-hidden="true" focusable="false">
      <g transform={`translate(${centre} 0)`}>
        {pieces
          .toSorted((a, b) => order(a) - order(b))
          .map((piece, at) => (
            <path
              key={`${piece.id}.${at}`}
              d={outlinePath(piece, scale)}
              className={`${piece.hidden ? look.hidden : (look[piece.outline.shape.replace(' ', '')] ?? look.outline)} ${piece.id === chosen ? look.chosen : ''}`}
              onClick={() => onChoose(piece.id)}
            />
          ))}
        <path d={breakPath(scale, shaft.halfWidthMm)} className={look.break} />
        <path d={`M0 2V${Math.min(height, TALLEST_PX) - 2}`} className={look.centre} />
        {rows.map(({ id, y }) => {
          const anchor = anchorOf(
            pieces.filter((piece) => piece.id === id),
            scale,
          )
          if (anchor === undefined) return null
          return (
            <g key={id} className={id === chosen ? look.chosenLeader : look.leader}>
              <circle cx={anchor.x} cy={anchor.y} r={id === chosen ? 2.5 : 2} />
              <path d={`M${anchor.x} ${anchor.y}L${half + LEADER_PX - 14} ${y}H${half + LEADER_PX}`} />
            </g>
          )
        })}
      </g>
    </svg>
  )
}
