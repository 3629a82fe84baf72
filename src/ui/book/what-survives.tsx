/** What is left of the past set, arrow by arrow, and what of it is offered for the rebuild: its weight, the arrows missing. */
import type { PastArrow, Survivors } from '../../domain/book/survivors'
import { Button } from '../controls/button'
import { DataTable } from '../controls/data-table'
import { Panel } from '../controls/panel'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { repairStoryWords, retirementWords } from '../words/afterwards-words'
import { makeUpWords, survivorsWords, weighAsWords } from '../words/book-words'
import look from './book.module.css'

interface WhatSurvivesProps {
  survivors: Survivors
  onWeight: (gr: number) => void
  onQuantity: (arrows: number) => void
}

export function WhatSurvives({ survivors, onWeight, onQuantity }: WhatSurvivesProps) {
  const { arrows, gone, meanNowGr } = survivors
  const weight = (arrow: PastArrow, name: 'builtGr' | 'nowGr') => {
    const value = arrow[name]
    return value === undefined ? (
      '–'
    ) : (
      <Read key={name} name={`again.${arrow.no}.${name}`} value={value} unit="gr" decimals={1} bare />
    )
  }
  return (
    <Panel title="What survives" quiet>
      <p className={look.count}>
        <Label>{survivorsWords(survivors)}</Label>
      </p>
      <DataTable
        caption="What became of each arrow"
        captionUnseen
        columns={[
          { head: 'Arrow' },
          { head: 'As built, gr', figures: true },
          { head: 'Now, gr', figures: true },
          { head: 'Stands' },
        ]}
        rows={arrows.map((arrow) => ({
          key: arrow.code,
          cells: [
            <Label key="no">
              no. {arrow.no}, {arrow.code}
            </Label>,
            weight(arrow, 'builtGr'),
            weight(arrow, 'nowGr'),
            <Label key="stands">
              {[
                arrow.retired === undefined ? 'in use' : retirementWords(arrow.retired),
                ...arrow.repairs.map(repairStoryWords),
              ].join('; ')}
            </Label>,
          ],
        }))}
      />
      {meanNowGr === undefined && gone === 0 ? null : (
        <p className={look.offers}>
          {meanNowGr === undefined ? null : (
            <Button onClick={() => onWeight(meanNowGr)}>
              <Label>{weighAsWords(meanNowGr)}</Label>
            </Button>
          )}
          {gone === 0 ? null : (
            <Button onClick={() => onQuantity(gone)}>
              <Label>{makeUpWords(gone)}</Label>
            </Button>
          )}
        </p>
      )}
    </Panel>
  )
}
