/** The readings of a set as the build sheet holds them: a row a data point, a column an arrow; empty ones to write in. */
import type { BenchArrow } from '../../domain/bench/bench'
import { accepted } from '../../domain/bench/bench'
import { DATA_POINTS } from '../../domain/bench/data-points'
import type { DataPoint } from '../../domain/bench/data-points'
import { DataTable } from '../controls/data-table'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { pointWord } from '../words/bench-words'
import look from './build-sheet.module.css'

const POINTS: readonly DataPoint[] = [
  'rawWeight',
  'c2c',
  'cutWeight',
  'insertWeight',
  'collarWeight',
  'headWeight',
  'fletchedWeight',
  'dryWeight',
  'finishedWeight',
  'balancePoint',
  'finishedRunOut',
]
const MOST_COLUMNS = 12 // arrows beside one another on the width of the paper
const FEW = 8 // more stand closer, in smaller letters

interface BuildSheetReadingsProps {
  /** As built; none while nothing is. */
  arrows: readonly BenchArrow[]
  planned: number
}

export function BuildSheetReadings({ arrows, planned }: BuildSheetReadingsProps) {
  const columns = Array.from({ length: arrows.length || planned }, (_, at) => ({
    no: arrows[at]?.no ?? at + 1,
    arrow: arrows[at],
  }))
  const isRead = arrows.some((arrow) => POINTS.some((point) => accepted(arrow, point) !== undefined))
  const tables = Array.from({ length: Math.ceil(columns.length / MOST_COLUMNS) }, (_, at) =>
    columns.slice(at * MOST_COLUMNS, (at + 1) * MOST_COLUMNS),
  )
  return tables.map((own) => (
    <div key={own[0]!.no} className={own.length > FEW ? `${look.readings} ${look.many}` : look.readings}>
      <DataTable
        caption={isRead ? 'Readings' : 'Readings, to be filled in'}
        columns={[{ head: 'Data point' }, ...own.map(({ no }) => ({ head: `No. ${no}`, figures: true }))]}
        rows={POINTS.map((point) => ({
          key: point,
          cells: [
            <Label key="point">{`${pointWord(point)}, ${DATA_POINTS[point].unit}`}</Label>,
            ...own.map(({ no, arrow }) => {
              const kept = arrow === undefined ? undefined : accepted(arrow, point)
              return kept === undefined ? (
                ''
              ) : (
                <Read
                  key={no}
                  name={`print.${no}.${point}`}
                  value={kept.reading.value}
                  unit={kept.reading.unit}
                  decimals={DATA_POINTS[point].decimals}
                  bare
                />
              )
            }),
          ],
        }))}
      />
    </div>
  ))
}
