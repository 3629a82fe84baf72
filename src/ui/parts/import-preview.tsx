/** What a table would add: the counts, the lines with a problem in words, and the first of the parts. */
import type { TableRow } from '../../domain/stock/read-part-table'
import { DataTable } from '../controls/data-table'
import { Notice } from '../controls/notice'
import { Label } from '../figures/label'
import { showNumber } from '../words/format'
import { partKindWord } from '../words/part-kind-words'
import { rowProblemWords, tallied, talliedWords } from '../words/part-table-words'
import look from './parts.module.css'

const MOST_PROBLEMS = 200
const FIRST_PARTS = 20

export function ImportPreview({ rows }: { rows: readonly TableRow[] }) {
  const tally = tallied(rows)
  const wrong = rows.filter((row) => row.kind === 'problems')
  const fresh = rows.filter((row) => row.kind === 'new')
  return (
    <>
      <Notice level={tally.wrong === 0 ? 'note' : 'look'} lead="The table:">
        <Label>{talliedWords(tally)}</Label>
      </Notice>
      {wrong.length === 0 ? null : (
        <>
          <p>Mend these in the file and bring it in again, or leave them out.</p>
          <ul className={look.problems} aria-label="Lines with a problem">
            {wrong.slice(0, MOST_PROBLEMS).map(({ line, name, problems }) => (
              <li key={line}>
                <Label>
                  Line {line}
                  {name === '' ? '' : `, ${name}`}: {problems.map(rowProblemWords).join(' ')}
                </Label>
              </li>
            ))}
          </ul>
          {wrong.length <= MOST_PROBLEMS ? null : (
            <p>
              <Label>And {wrong.length - MOST_PROBLEMS} more.</Label>
            </p>
          )}
        </>
      )}
      {fresh.length === 0 ? null : (
        <DataTable
          caption={<Label>The first {Math.min(FIRST_PARTS, fresh.length)} of the parts to add</Label>}
          columns={[
            { head: 'Part' },
            { head: 'Kind' },
            { head: 'Weight, gr', figures: true },
            { head: 'Pieces', figures: true },
          ]}
          rows={fresh.slice(0, FIRST_PARTS).map(({ line, part, lot }) => ({
            key: String(line),
            cells: [
              <Label key="n">{part.name}</Label>,
              partKindWord(part.kind),
              <Label key="w">{showNumber(part.weightGr, 1)}</Label>,
              <Label key="p">{lot === undefined ? '' : showNumber(lot.pieces, 0)}</Label>,
            ],
          }))}
        />
      )}
    </>
  )
}
