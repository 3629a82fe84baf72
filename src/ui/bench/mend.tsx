/** Mending a light arrow: what is still possible at this step, the smallest change first, each with what it does. */
import { useMemo, useState } from 'react'
import { fitEvents } from '../../domain/bench/fit-events'
import type { Bench } from '../../domain/bench/bench'
import { mendsFor } from '../../domain/bench/mends-for'
import type { PossibleMend } from '../../domain/bench/mends-for'
import type { ArrowForecast } from '../../domain/bench/set-forecast'
import type { Job } from '../../domain/job/job'
import type { Sheet } from '../../domain/sheet/sheet'
import { mendAtBench } from '../../state/mend-actions'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { DataTable } from '../controls/data-table'
import { FindingList } from '../controls/finding-list'
import { Label } from '../figures/label'
import { Value } from '../figures/value'
import { changeWords, mendedWords, mendReason } from '../words/mend-words'
import look from './bench.module.css'
import type { BenchWork } from './use-bench'

interface MendProps {
  job: Job
  bench: Bench
  sheet: Sheet
  work: BenchWork
  own: ArrowForecast
  onSaid: (words: string) => void
}

const MOST_SHOWN = 6

export default function Mend({ job, bench, sheet, work, own, onSaid }: MendProps) {
  const store = useAppStore()
  const shelf = useApp((s) => s.shelf)
  const [all, setAll] = useState(false)
  const { arrow } = own
  const found = useMemo(
    () => mendsFor(own, { bench, sheet, worked: work.worked, shelf }),
    [own, bench, sheet, work, shelf],
  )
  if (found === undefined) return null
  const fit = ({ change, mend }: PossibleMend) =>
    void mendAtBench(store.getState(), (now, line) =>
      fitEvents(job.id, arrow, { change, gain: mend.gain, reason: mendReason(own.over), now, line }),
    ).then((saved) => {
      if (saved) onSaid(mendedWords(arrow.no, change))
    })
  const shown = found.ok ? (all ? found.value : found.value.slice(0, MOST_SHOWN)) : []
  const isReserved = shown.some(({ mend }) => mend.reserve !== undefined)
  return (
    <section className={look.section} aria-labelledby="mend">
      <h2 id="mend" data-label="">
        Mend no. {arrow.no}
      </h2>
      {found.ok ? (
        <DataTable
          caption="Smallest change first; only what can still be done"
          columns={[
            { head: 'Change' },
            { head: 'Adds', figures: true },
            { head: 'Then over the target by', figures: true },
            { head: 'FOC', figures: true },
            ...(isReserved ? [{ head: 'Reserve', figures: true }] : []),
            { head: 'To do it' },
          ]}
          rows={shown.map((each, i) => {
            const name = `bench.${arrow.no}.mend.${i + 1}`
            const { mend, change } = each
            return {
              key: changeWords(change),
              cells: [
                <Label key="c">{changeWords(change)}</Label>,
                <Value key="g" name={`${name}.adds`} of={mend.gain} unit="gr" decimals={1} />,
                <Value key="o" name={`${name}.over`} of={mend.over} unit="gr" decimals={1} />,
                <span key="f">
                  <Value name={`${name}.foc`} of={mend.foc} unit="%" decimals={1} /> (
                  <Value name={`${name}.focChange`} of={mend.focChange} unit="%" decimals={1} bare />)
                </span>,
                ...(isReserved
                  ? [
                      mend.reserve === undefined ? (
                        '–'
                      ) : (
                        <Value key="r" name={`${name}.reserve`} of={mend.reserve} unit="1" decimals={2} />
                      ),
                    ]
                  : []),
                <Button key="b" onClick={() => fit(each)}>
                  <span data-label="">
                    Fit it<span className="unseen">: {changeWords(change)}</span>
                  </span>
                </Button>,
              ],
            }
          })}
        />
      ) : (
        <FindingList findings={found.findings} />
      )}
      {found.ok && !all && found.value.length > MOST_SHOWN ? (
        <p>
          <Button kind="text" onClick={() => setAll(true)}>
            <span data-label="">Show all {found.value.length}</span>
          </Button>
        </p>
      ) : null}
    </section>
  )
}
