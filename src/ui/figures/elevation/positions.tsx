/** What the elevation draws, in numbers: each part's interval along the arrow, the words of the drawing for all who read. */
import { inches } from '../../../core/quantity'
import { DataTable } from '../../controls/data-table'
import { Value } from '../value'
import type { ElevationPiece } from './elevation-piece'
import look from './positions.module.css'

interface PositionsProps {
  name: string
  pieces: readonly ElevationPiece[]
}

export const Positions = ({ name, pieces }: PositionsProps) => (
  <details className={look.positions}>
    <summary>Positions along the arrow</summary>
    <DataTable
      caption="From the nock throat forward. Hidden: inside another part."
      columns={[{ head: 'Part' }, { head: 'From', figures: true }, { head: 'To', figures: true }]}
      rows={pieces.map((piece, at) => ({
        key: `${piece.id}.${at}`,
        cells: [
          `${piece.label}${piece.hidden ? ', hidden' : ''}`,
          <Value key="from" name={`${name}.${piece.id}.${at}.from`} of={inches(piece.fromIn)} unit="in" decimals={2} />,
          <Value key="to" name={`${name}.${piece.id}.${at}.to`} of={inches(piece.toIn)} unit="in" decimals={2} />,
        ],
      }))}
    />
  </details>
)
