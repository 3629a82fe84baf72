/**
 * The arrow in elevation, point up, each part tied by a leader to its line. Choosing a part chooses its line, and the other
 * way round. What is drawn stands in words and numbers beneath.
 */
import type { ReactNode } from 'react'
import { useRef } from 'react'
import { Drawing } from './drawing'
import type { ElevationPiece } from './elevation-piece'
import look from './elevation.module.css'
import { Positions } from './positions'
import { rowsByPosition } from './rows-by-position'
import { useRowCentres } from './use-row-centres'
import { useRowMoves } from './use-row-moves'

export interface ElevationRow {
  /** The line of the sheet. */
  readonly id: string
  /** *Head*, *Collar*; the button that chooses the line. */
  readonly label: string
  /** Part, lot, weight, spread, known from what. */
  readonly content: ReactNode
}

interface ElevationProps {
  /** Where its figures belong in the page: `sheet.elevation`. */
  name: string
  pieces: readonly ElevationPiece[]
  rows: readonly ElevationRow[]
  chosen: string | null
  onChoose: (id: string) => void
  /** The rows stand in the builder's order, not by position. */
  byHand?: boolean
  /** A row was dragged by its label, or moved by Alt and an arrow key, to another place of the order shown. */
  onMove?: (order: readonly string[], id: string, to: number) => void
}

const PITCH_PX = 60

export function Elevation({ name, pieces, rows, chosen, onChoose, byHand = false, onMove }: ElevationProps) {
  const list = useRef<HTMLOListElement>(null)
  const ordered = byHand ? rows : rowsByPosition(rows, pieces)
  const order = ordered.map(({ id }) => id)
  const { drag, keys } = useRowMoves(list, order, onMove)
  const { height, centres } = useRowCentres(list, ordered.length, PITCH_PX)
  return (
    <figure className={look.elevation}>
      <div className={look.sheet}>
        <Drawing
          pieces={pieces}
          height={height}
          rows={ordered.map(({ id }, at) => ({ id, y: centres[at]! }))}
          chosen={chosen}
          onChoose={onChoose}
        />
        <ol ref={list} className={look.rows}>
          {ordered.map(({ id, label, content }) => (
            <li
              key={id}
              data-line={id}
              data-held={drag?.id === id ? '' : undefined}
              data-over={drag !== null && drag.id !== id && order[drag.to] === id ? drag.side : undefined}
              className={id === chosen ? look.chosen : look.row}
            >
              <button
                type="button"
                className={look.label}
                aria-pressed={id === chosen}
                aria-keyshortcuts={onMove === undefined ? undefined : 'Alt+ArrowUp Alt+ArrowDown'}
                data-label=""
                onClick={() => onChoose(id)}
                {...keys(id)}
              >
                {label}
              </button>
              <div className={look.content}>{content}</div>
            </li>
          ))}
        </ol>
      </div>
      <Positions name={name} pieces={pieces} />
    </figure>
  )
}
