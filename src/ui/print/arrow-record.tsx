/** Every data point of one arrow on one page: what it is made of, how it was put together, and each reading. */
import type { RepairBuilt } from '../../domain/bench/built'
import type { Bench, BenchArrow } from '../../domain/bench/bench'
import { accepted } from '../../domain/bench/bench'
import { curesOf } from '../../domain/bench/cure-state'
import { DATA_POINT_NAMES, DATA_POINTS } from '../../domain/bench/data-points'
import type { Sheet } from '../../domain/sheet/sheet'
import { DataTable } from '../controls/data-table'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { pointWord } from '../words/bench-words'
import { showMoment } from '../words/dates'
import { checkRecordWords } from '../words/scale-check-words'
import { partKindWord } from '../words/part-kind-words'
import { repairRecordWords } from '../words/afterwards-words'
import look from './papers.module.css'

const HALF = Math.ceil(DATA_POINT_NAMES.length / 2)

interface ArrowRecordProps {
  arrow: BenchArrow
  bench: Bench
  sheet: Sheet
  /** Since it left. */
  repairs: readonly RepairBuilt[]
}

export function ArrowRecord({ arrow, bench, sheet, repairs }: ArrowRecordProps) {
  const made = sheet.plan.lines.flatMap((line) => {
    const fitted = arrow.fitted.find((each) => each.line === line.id)
    const id = fitted?.part ?? line.part
    const part = fitted?.copy?.part ?? sheet.parts.find((each) => each.id === id)?.part
    const lotId = fitted === undefined ? line.lot : fitted.lot
    const lot = fitted?.copy?.lot ?? sheet.lots.find((each) => each.id === lotId)?.lot
    if (part === undefined) return []
    const many = line.count > 1 ? `${line.count} × ` : ''
    return [`${partKindWord(part.kind)}: ${many}${part.name}, ${lot === undefined ? 'lot unknown' : `lot ${lot.code}`}`]
  })
  const { plan } = sheet
  const put = [
    `Fletch ${plan.fletchSide}, ${plan.fletchDegrees}°`,
    `tail ${plan.vaneTailIn} in from the throat`,
    `cock vane ${plan.cockVaneDeg}°`,
    `head indexed to ${plan.indexPlane}`,
    `jig ${plan.jig === '' ? 'not named' : plan.jig}`,
  ]
  const [came] = repairs
  const cures = curesOf(bench, arrow.id).filter(({ startedAt }) => came === undefined || startedAt < came.begunAt)
  const builders = [...new Set(arrow.readings.map(({ by }) => by))]
  const table = (points: typeof DATA_POINT_NAMES | readonly (typeof DATA_POINT_NAMES)[number][], caption: string) => (
    <DataTable
      caption={caption}
      columns={[{ head: 'Data point' }, { head: 'Read', figures: true }, { head: 'By, when' }]}
      rows={points.map((point) => {
        const kept = accepted(arrow, point)
        const { unit, decimals } = DATA_POINTS[point]
        return {
          key: point,
          cells: [
            <Label key="p">{pointWord(point)}</Label>,
            kept === undefined ? (
              'not taken'
            ) : (
              <Read
                key="r"
                name={`record.${arrow.no}.${point}`}
                value={kept.reading.value}
                unit={unit}
                decimals={decimals}
              />
            ),
            <small key="w" className={look.who} data-label="">
              {kept === undefined ? '' : `${kept.by}, ${showMoment(kept.reading.takenAt)}`}
            </small>,
          ],
        }
      })}
    />
  )
  return (
    <>
      <h1 data-label="">
        No. {arrow.no}, {arrow.code}
      </h1>
      <p>
        <Label>{made.join('. ')}.</Label>
      </p>
      <p>
        <Label>
          {put.join(', ')}. Built by {builders.join(', ')}.{' '}
          {cures
            .map((cure) => `${cure.what}: ${showMoment(cure.startedAt)} to ${showMoment(cure.endedAt ?? cure.dueAt)}.`)
            .join(' ')}{' '}
          {bench.scaleChecks.map(checkRecordWords).join(' ')}
        </Label>
      </p>
      {repairs.map((repair) => (
        <p key={repair.repair}>
          <Label>{repairRecordWords(repair)}</Label>
        </p>
      ))}
      <div className={`${look.columns} ${look.tight}`}>
        {table(DATA_POINT_NAMES.slice(0, HALF), 'Readings')}
        {table(DATA_POINT_NAMES.slice(HALF), 'Readings, on')}
      </div>
    </>
  )
}
