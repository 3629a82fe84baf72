/** At the saw: where this shaft is straightest, from its spin. */
import type { BenchArrow } from '../../domain/bench/bench'
import { accepted } from '../../domain/bench/bench'
import { windowOf } from '../../domain/bench/spun-shaft'
import type { Sheet } from '../../domain/sheet/sheet'
import look from './run-out.module.css'
import { WindowFigures } from './window-figures'

export default function CutPanel({ arrow, sheet }: { arrow: BenchArrow; sheet: Sheet }) {
  const isSpun = windowOf(arrow, sheet) !== undefined
  if (!isSpun && accepted(arrow, 'c2c') !== undefined) return null
  return (
    <section className={look.panel} aria-label="Where to cut">
      <WindowFigures arrow={arrow} sheet={sheet} />
      {isSpun ? null : <p>Not spun: take as much off either end.</p>}
    </section>
  )
}
