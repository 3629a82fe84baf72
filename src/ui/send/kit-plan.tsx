/** Which shafts go into the next kit: two or three that differ, each with what the model says of it on this bow. */
import { useMemo, useState } from 'react'
import type { KitSample } from '../../domain/search/test-kit'
import { kitProblems } from '../../domain/send/kit'
import type { KitShaft } from '../../domain/send/kit'
import { kitChoices, kitKey } from '../../domain/send/kit-choices'
import type { OpenJob } from '../../state/open-job'
import { buildKit, sendTestKit } from '../../state/kit-actions'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Panel } from '../controls/panel'
import { QuantityField } from '../controls/quantity-field'
import { Status } from '../controls/status'
import { Figure, FigureList } from '../figures/figure'
import { kitProblemWords, sampleWords } from '../words/afterwards-words'
import { dayOfMoment } from '../words/dates'
import { FINISHED_ASKED } from './arrow-dialog'
import { KitProposal } from './kit-proposal'
import look from './send.module.css'

export function KitPlan({ open }: { open: OpenJob }) {
  const store = useAppStore()
  const shelf = useApp((s) => s.shelf)
  const now = useApp((s) => s.now)
  /** Finished weight of each that was chosen, by shaft and length; null while it is not weighed. */
  const [chosen, setChosen] = useState<ReadonlyMap<string, number | null>>(new Map())
  const [proposed, setProposed] = useState<readonly KitSample[]>([])
  const [said, setSaid] = useState('')
  const { job } = open
  const { c2cIn } = job.plan
  const shafts = useMemo(() => kitChoices(job, shelf, proposed), [job, shelf, proposed])
  const set = (key: string, weight: number | null | undefined) =>
    setChosen((before) => {
      const after = new Map(before)
      if (weight === undefined) after.delete(key)
      else after.set(key, weight)
      return after
    })
  function take(samples: readonly KitSample[]) {
    setProposed(samples)
    setChosen(new Map(samples.map((sample) => [kitKey(sample), null])))
  }

  const done = () => {
    setChosen(new Map())
    setProposed([])
    setSaid('')
  }
  async function give(what: 'built' | 'sent') {
    const arrows = shafts.flatMap(({ key, part, lot, c2cIn: cut }): readonly KitShaft[] => {
      const finishedGr = chosen.get(key)
      return finishedGr === undefined ? [] : [{ part, lot, finishedGr, ...(cut === undefined ? {} : { c2cIn: cut }) }]
    })
    const [problem] = kitProblems(job, shelf, arrows)
    if (problem !== undefined) {
      return setSaid(`${what === 'built' ? 'Not begun' : 'Not sent'}. ${kitProblemWords(problem)}`)
    }
    const saved =
      what === 'built'
        ? await buildKit(store.getState, arrows)
        : await sendTestKit(store.getState(), job, arrows, dayOfMoment(now()))
    if (saved) done()
    return undefined
  }
  return (
    <Panel title={job.kits.length === 0 ? 'Plan a test kit' : 'Another test kit'} quiet>
      <p>One arrow of each shaft, cut to the length of the set, one of them also bare. Mark each with its number.</p>
      <KitProposal open={open} onTake={take} />
      <div className={look.kit}>
        {shafts.map(({ key, name, c2cIn: cut, reserve }) => (
          <fieldset key={key} className={look.shaft}>
            <label data-label="">
              <input
                type="checkbox"
                checked={chosen.has(key)}
                onChange={(event) => set(key, event.target.checked ? null : undefined)}
              />{' '}
              {cut === undefined || cut === c2cIn ? name : sampleWords({ name, c2cIn: cut })}
            </label>
            <FigureList>
              <Figure
                name={`kit.${key}.reserve`}
                label="Column reserve"
                of={reserve?.ok ? { ...reserve, findings: [] } : reserve}
                note={reserve !== undefined && reserve.findings.length > 0 ? 'outside the shop’s band' : undefined}
                unit="1"
                decimals={2}
                missing="needs the draw weight and a sheet"
              />
            </FigureList>
            {chosen.has(key) ? (
              <QuantityField
                label="Finished weight of this one"
                name={`weight.${name}`}
                hint="makes its speed count for the bow"
                asked={FINISHED_ASKED}
                value={chosen.get(key) ?? undefined}
                onCommit={({ value }) => set(key, value)}
                onClear={() => set(key, null)}
              />
            ) : null}
          </fieldset>
        ))}
      </div>
      <p className={look.leave}>
        <Button kind="primary" onClick={() => void give('built')}>
          Build the kit on the bench
        </Button>
        <Button onClick={() => void give('sent')}>Send the kit today</Button>
      </p>
      <Status>{said}</Status>
    </Panel>
  )
}
