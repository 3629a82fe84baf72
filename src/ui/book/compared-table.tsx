/** Each figure of a past build beside today's: then, now, the difference, and whether it is inside. */
import type { Compared } from '../../domain/book/then-and-now'
import { DataTable } from '../controls/data-table'
import { Label } from '../figures/label'
import { PlainValue } from '../figures/value'
import { comparedWord, insideWords } from '../words/book-words'

/** @param name the page its figures are on */
export const ComparedTable = ({ name, rows }: { name: string; rows: readonly Compared[] }) => (
  <DataTable
    caption="The build it repeats, beside this sheet"
    captionUnseen
    columns={[
      { head: 'Figure' },
      { head: 'Then', figures: true },
      { head: 'Now', figures: true },
      { head: 'Difference', figures: true },
      { head: 'Match' },
    ]}
    rows={rows.map((row) => {
      const number = (of: 'past' | 'now' | 'difference') => {
        const n = row[of]
        const { unit, decimals, what } = row
        return n === undefined ? (
          '–'
        ) : (
          <PlainValue key={of} name={`${name}.${of}.${what}`} of={n} unit={unit} decimals={decimals} />
        )
      }
      return {
        key: row.what,
        cells: [
          <Label key="what">{comparedWord(row.what)}</Label>,
          number('past'),
          number('now'),
          number('difference'),
          <Label key="inside">{insideWords(row)}</Label>,
        ],
      }
    })}
  />
)
