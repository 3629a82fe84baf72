/** Where to cut a shaft that was spun: off either end, what the cut shaft then runs out, and what equal ends would leave. */
import type { BenchArrow } from '../../domain/bench/bench'
import { windowOf } from '../../domain/bench/spun-shaft'
import type { Sheet } from '../../domain/sheet/sheet'
import { FindingList } from '../controls/finding-list'
import { Value } from '../figures/value'
import { windowWords } from '../words/run-out-words'
import look from './run-out.module.css'

export function WindowFigures({ arrow, sheet }: { arrow: BenchArrow; sheet: Sheet }) {
  const found = windowOf(arrow, sheet)
  if (found === undefined) return null
  if (!found.ok) return <FindingList findings={found.findings} />
  const { window, equal } = found.value
  const name = `bench.${arrow.no}.window`
  return (
    <>
      <dl className={look.answer}>
        <div>
          <dt>off the nock end</dt>
          <dd>
            <Value name={`${name}.offNock`} of={window.offNock} unit="in" decimals={2} />
          </dd>
        </div>
        <div>
          <dt>off the point end</dt>
          <dd>
            <Value name={`${name}.offPoint`} of={window.offPoint} unit="in" decimals={2} />
          </dd>
        </div>
        <div>
          <dt>then runs out</dt>
          <dd>
            <Value name={`${name}.runOut`} of={window.runOut.tir} unit="in" decimals={4} />
          </dd>
        </div>
        <div>
          <dt>with equal ends</dt>
          <dd>
            <Value name={`${name}.equal`} of={equal.runOut.tir} unit="in" decimals={4} />
          </dd>
        </div>
      </dl>
      <p>{windowWords(window.runOut.tir, equal.runOut.tir)}</p>
      <FindingList findings={found.findings} />
    </>
  )
}
