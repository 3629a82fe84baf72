/** One arrow of a build: what became of it, every reading with who, when and how, and its deviations. */
import { DATA_POINTS, DATA_POINT_NAMES } from '../../domain/bench/data-points'
import type { ArrowBuilt } from '../../domain/bench/built'
import { DataTable } from '../controls/data-table'
import { Panel } from '../controls/panel'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { pointWord } from '../words/bench-words'
import { showMoment } from '../words/dates'
import { counted } from '../words/format'

export function ArrowPanel({ arrow }: { arrow: ArrowBuilt }) {
  const readings = DATA_POINT_NAMES.flatMap((point) => arrow.readings.filter((kept) => kept.reading.point === point))
  return (
    <Panel
      quiet
      title={
        <Label>
          No. {arrow.no}, {arrow.code}, {arrow.outcome}
          {arrow.cause === undefined ? '' : `: ${arrow.cause}`}
        </Label>
      }
    >
      <details>
        <summary>
          <Label>{counted(readings.length, 'reading')}, with who, when and how</Label>
        </summary>
        <DataTable
          caption={`Every reading of no. ${arrow.no}`}
          captionUnseen
          columns={[{ head: 'Data point' }, { head: 'Read', figures: true }, { head: 'Who, when, how' }]}
          rows={readings.map((kept) => ({
            key: kept.event,
            cells: [
              <Label key="p">{pointWord(kept.reading.point)}</Label>,
              <Read
                key="v"
                name={`book.${arrow.no}.${kept.event.slice(0, 8)}`}
                value={kept.reading.value}
                unit={kept.reading.unit}
                decimals={DATA_POINTS[kept.reading.point].decimals}
                withdrawn={kept.withdrawn !== null}
              />,
              <Label key="w">
                {kept.by}, {showMoment(kept.reading.takenAt)}, {kept.reading.source}
                {kept.withdrawn === null ? '' : `; withdrawn by ${kept.withdrawn.by}: ${kept.withdrawn.reason}`}
              </Label>,
            ],
          }))}
        />
      </details>
      {arrow.deviations.map((each) => (
        <p key={each.id}>
          <Label>
            Deviation: required {each.required}, found {each.found}; {each.decision?.disposition},{' '}
            {each.decision?.decidedBy}: {each.decision?.reason}
          </Label>
        </p>
      ))}
    </Panel>
  )
}
