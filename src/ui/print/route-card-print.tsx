/** The bench route on paper, step by step with blanks, so that a dead tablet stops nobody. */
import type { FactOf } from '../../domain/records/read-fact'
import { pointsOf } from '../../domain/bench/points-of'
import { DataTable } from '../controls/data-table'
import { Label } from '../figures/label'
import { pointWord, stepWords } from '../words/bench-words'
import { sheetFacts } from './facts-of'
import { PrintSheet } from './print-sheet'

const STEPS_A_PAGE = 9

export function RouteCardPrint({ fact }: { fact: FactOf<'sheet'> }) {
  const sheet = fact.body
  const numbers = Array.from({ length: sheet.plan.quantity + sheet.plan.spares }, (_, i) => i + 1)
  const pages = Array.from({ length: Math.ceil(sheet.route.length / STEPS_A_PAGE) }, (_, page) => (
    <DataTable
      key={page}
      caption="Each step, its readings and the time they were taken; entered at the bench page afterwards"
      columns={[
        { head: 'Step' },
        { head: 'Readings' },
        ...numbers.map((no) => ({ head: <Label>{`no. ${no}`}</Label> })),
      ]}
      rows={sheet.route.slice(page * STEPS_A_PAGE, (page + 1) * STEPS_A_PAGE).map((step, at) => {
        const words = stepWords(step.key)
        return {
          key: step.key,
          cells: [
            <Label key="s">
              {page * STEPS_A_PAGE + at + 1}. {words.title}
              {words.caution === undefined ? '' : ` — ${words.caution[0]}: ${words.caution[1]}`}
            </Label>,
            <Label key="p">{pointsOf(step, sheet).map(pointWord).join(', ') || 'confirm'}</Label>,
            ...numbers.map(() => ' '),
          ],
        }
      })}
    />
  ))
  return <PrintSheet paper="a4" title="Route card" facts={sheetFacts(fact)} sheets={pages} />
}
