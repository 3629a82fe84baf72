/** The plan beside what was built: a row for each data point that the sheet speaks of, a column for each arrow. */
import { useMemo } from 'react'
import type { ArrowBuilt } from '../../domain/bench/built'
import { planAndBuilt } from '../../domain/book/plan-and-built'
import type { Sheet } from '../../domain/sheet/sheet'
import { DataTable } from '../controls/data-table'
import { Panel } from '../controls/panel'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { PlainValue } from '../figures/value'
import { pointWord } from '../words/bench-words'
import { outsideWords } from '../words/book-words'

export function PlanBesideBuilt({ sheet, arrows }: { sheet: Sheet; arrows: readonly ArrowBuilt[] }) {
  const accepted = useMemo(() => arrows.filter(({ outcome }) => outcome === 'accepted'), [arrows])
  const rows = useMemo(() => planAndBuilt(sheet, accepted), [sheet, accepted])
  if (rows.length === 0) return null
  return (
    <Panel title="Plan beside as-built" quiet>
      <DataTable
        caption="Each data point as planned and as read"
        captionUnseen
        columns={[
          { head: 'Data point' },
          { head: 'Plan', figures: true },
          { head: '±', figures: true },
          ...accepted.map(({ no }) => ({ head: `No. ${no}`, figures: true })),
          { head: 'Mean off by', figures: true },
          { head: 'Against ±' },
        ]}
        rows={rows.map(({ point, unit, decimals, planned, half, built, off, outside }) => {
          const value = (name: string, of: number | undefined) =>
            of === undefined ? (
              '–'
            ) : (
              <PlainValue key={name} name={`book.${point}.${name}`} of={of} unit={unit} decimals={decimals} />
            )
          return {
            key: point,
            cells: [
              <Label key="what">
                {pointWord(point)}, {unit}
              </Label>,
              value('planned', planned),
              value('half', half),
              ...built.map((read, at) =>
                read === undefined ? (
                  '–'
                ) : (
                  <Read
                    key={accepted[at]!.no}
                    name={`book.built.${accepted[at]!.no}.${point}`}
                    value={read}
                    unit={unit}
                    decimals={decimals}
                    bare
                  />
                ),
              ),
              value('off', off),
              <Label key="outside">{outsideWords(outside.map((at) => accepted[at]!.no))}</Label>,
            ],
          }
        })}
      />
      {rows.some(({ isOfOwnHead }) => isOfOwnHead) ? (
        <p>Heads differ: each finished weight is held against what the set weighs less head, and its own head.</p>
      ) : null}
    </Panel>
  )
}
