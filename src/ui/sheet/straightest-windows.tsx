/** Where each shaft of the set is straightest once it was spun and before it is cut, for the C2C that the plan says now. */
import type { Bench } from '../../domain/bench/bench'
import { windowsToCut } from '../../domain/bench/spun-shaft'
import type { Sheet } from '../../domain/sheet/sheet'
import { DataTable } from '../controls/data-table'
import { FindingList } from '../controls/finding-list'
import { Label } from '../figures/label'
import { Value } from '../figures/value'
import { ShowWorking } from '../figures/working/show-working'
import { STRAIGHTEST_WORDS } from '../words/sheet-words'

export function StraightestWindows({ bench, sheet }: { bench: Bench; sheet: Sheet }) {
  const found = windowsToCut(bench, sheet)
  if (found.length === 0) return null
  const { title, columns } = STRAIGHTEST_WORDS
  return (
    <DataTable
      caption={title}
      blocks
      columns={columns.map((head, at) => ({ head, figures: at > 0 }))}
      rows={found.map(({ arrow, window: answer }) => {
        const name = `sheet.window.${arrow.no}`
        const label = `no. ${arrow.no}`
        if (!answer.ok) {
          return {
            key: arrow.id,
            cells: [<Label key="no">{label}</Label>, <FindingList key="why" findings={answer.findings} />, '', '', ''],
          }
        }
        const { window, equal } = answer.value
        return {
          key: arrow.id,
          cells: [
            <ShowWorking key="no" name={name} label={label} derivation={answer.derivation} />,
            <Value key="nock" name={`${name}.offNock`} of={window.offNock} unit="in" decimals={2} />,
            <Value key="point" name={`${name}.offPoint`} of={window.offPoint} unit="in" decimals={2} />,
            <Value key="out" name={`${name}.runOut`} of={window.runOut.tir} unit="in" decimals={4} />,
            <Value key="equal" name={`${name}.equal`} of={equal.runOut.tir} unit="in" decimals={4} />,
          ],
        }
      })}
    />
  )
}
