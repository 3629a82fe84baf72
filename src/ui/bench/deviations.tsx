/** Deviations of the set: what was required, what is, and who decided what. Work goes on; signing off waits for each. */
import { useMemo, useState } from 'react'
import type { Bench, BenchDeviation } from '../../domain/bench/bench'
import { DISPOSITIONS } from '../../domain/bench/built'
import { disputes } from '../../domain/bench/disputes'
import type { JobEvent } from '../../domain/job/events'
import type { Job } from '../../domain/job/job'
import { decideDeviation } from '../../state/bench-actions'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Status } from '../controls/status'
import { Notice } from '../controls/notice'
import { TextField } from '../controls/text-field'
import { pointInLine, stepWords } from '../words/bench-words'
import look from './bench.module.css'
import { Disputed } from './disputed'

interface DeviationsProps {
  job: Job
  /** Of the job: they tell which device took a reading. */
  events: readonly JobEvent[]
  bench: Bench
  ordered: number
}

export function Deviations({ job, events, bench, ordered }: DeviationsProps) {
  const apart = useMemo(() => disputes(bench, events), [bench, events])
  return (
    <>
      <Disputed job={job} of={apart} />
      {bench.deviations.length === 0 ? null : (
        <section className={look.section} aria-labelledby="deviations">
          <h2 id="deviations">Deviations</h2>
          {bench.deviations.map((each) => (
            <OneDeviation key={each.id} job={job} bench={bench} of={each} ordered={ordered} />
          ))}
        </section>
      )}
    </>
  )
}

interface OneDeviationProps {
  job: Job
  bench: Bench
  of: BenchDeviation
  ordered: number
}

function OneDeviation({ job, bench, of, ordered }: OneDeviationProps) {
  const store = useAppStore()
  const [reason, setReason] = useState('')
  const [said, setSaid] = useState('')
  const no = bench.arrows.find((arrow) => arrow.id === of.arrow)?.no
  const what = of.point === null ? stepWords(of.step).title.toLowerCase() : pointInLine(of.point)
  return (
    <div className={look.deviation}>
      <Notice level={of.decision === null ? 'look' : 'note'}>
        <span data-label="">
          <b>
            {no === undefined ? 'The set' : `No. ${no}`}, {what}:
          </b>{' '}
          required {of.required}, found {of.found}.{' '}
          {of.decision === null
            ? 'Not decided yet.'
            : `${of.decision.disposition}, ${of.decision.decidedBy}: ${of.decision.reason}`}
        </span>
      </Notice>
      {of.decision === null ? (
        <>
          <TextField label="Why, and what was done" name="why" value={reason} onText={setReason} onCommit={setReason} />
          <p>
            {DISPOSITIONS.map((disposition) => (
              <Button
                key={disposition}
                onClick={() => {
                  if (reason.trim() === '') setSaid('A decision needs its reason: what was seen, and why it may stand.')
                  else
                    void decideDeviation(store.getState(), { job, deviation: of, ordered }, disposition, reason.trim())
                }}
              >
                {disposition}
              </Button>
            ))}
          </p>
          <Status>{said}</Status>
        </>
      ) : null}
    </div>
  )
}
