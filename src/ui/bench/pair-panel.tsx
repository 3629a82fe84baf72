/** Who goes with whom: what pairing the weighed parts would gain, and one action that does it. */
import { useMemo } from 'react'
import type { Bench } from '../../domain/bench/bench'
import { benchPairing, pairEvents } from '../../domain/bench/pair-bench'
import { grains } from '../../core/quantity'
import type { Job } from '../../domain/job/job'
import type { Sheet } from '../../domain/sheet/sheet'
import { mendAtBench } from '../../state/mend-actions'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { DataTable } from '../controls/data-table'
import { Label } from '../figures/label'
import { Value } from '../figures/value'
import { pointWord } from '../words/bench-words'
import { PAIRED_ALREADY, pairedWords } from '../words/mend-words'
import look from './bench.module.css'
import type { BenchWork } from './use-bench'

interface PairPanelProps {
  job: Job
  bench: Bench
  sheet: Sheet
  work: BenchWork
  onSaid: (words: string) => void
}

export default function PairPanel({ job, bench, sheet, work, onSaid }: PairPanelProps) {
  const store = useAppStore()
  const pairing = useMemo(() => benchPairing(bench, sheet, work.worked, work.landing), [bench, sheet, work])
  if (pairing === undefined) return null
  const { takes, points, paired, nowTrimGr, nowSpreadGr } = pairing
  const moved = takes.filter(({ arrow, from }) => points.some((point) => from[point]!.id !== arrow.id))
  const pair = () =>
    void mendAtBench(store.getState(), (now) => pairEvents(job.id, pairing, now)).then((saved) => {
      if (saved) onSaid(pairedWords(moved.length))
    })
  return (
    <section className={look.section} aria-labelledby="pairing">
      <h2 id="pairing">Who goes with whom</h2>
      <p>
        To trim off the set: <Value name="bench.pairing.nowTrim" of={grains(nowTrimGr)} unit="gr" decimals={1} /> as it
        lies, <Value name="bench.pairing.trim" of={grains(paired.trimGr)} unit="gr" decimals={1} /> paired. Heaviest
        less lightest: <Value name="bench.pairing.nowSpread" of={grains(nowSpreadGr)} unit="gr" decimals={1} /> as it
        lies, <Value name="bench.pairing.spread" of={grains(paired.spreadGr)} unit="gr" decimals={1} /> paired.
      </p>
      {moved.length === 0 ? (
        <p>{PAIRED_ALREADY}</p>
      ) : (
        <>
          <DataTable
            caption="Pieces that change arrows; each takes its weight with it"
            columns={[
              { head: 'Arrow' },
              ...points.map((point) => ({ head: pointWord(point) })),
              { head: 'then to trim', figures: true },
            ]}
            rows={moved.map(({ arrow, from, trimGr }) => ({
              key: arrow.id,
              cells: [
                <Label key="a">no. {arrow.no}</Label>,
                ...points.map((point) => (
                  <Label key={point}>
                    {from[point]!.id === arrow.id ? 'its own' : `the one weighed as no. ${from[point]!.no}`}
                  </Label>
                )),
                <Value key="t" name={`bench.pairing.${arrow.no}.trim`} of={grains(trimGr)} unit="gr" decimals={1} />,
              ],
            }))}
          />
          <p className={look.after}>
            <Button onClick={pair}>Pair this set</Button>
          </p>
        </>
      )}
    </section>
  )
}
