/** The warning at the bench that a lot of this set is on hold. */
import type { Bench } from '../../domain/bench/bench'
import { building } from '../../domain/bench/bench'
import type { Sheet } from '../../domain/sheet/sheet'
import { heldLots } from '../../domain/stock/held-lots'
import { useApp } from '../app/use-app'
import { Notice } from '../controls/notice'
import { Label } from '../figures/label'
import { heldWords } from '../words/stock-words'

export default function HeldLots({ bench, sheet }: { bench: Bench; sheet: Sheet }) {
  const shelf = useApp((s) => s.shelf)
  return heldLots(sheet, building(bench), shelf).map((held) => (
    <Notice key={held.code} level="look">
      <Label>{heldWords(held)}</Label>
    </Notice>
  ))
}
