/** Readings of one point that two devices took apart, each with who and when, until a person keeps one. */
import { DATA_POINTS } from '../../domain/bench/data-points'
import type { Dispute } from '../../domain/bench/disputes'
import type { Job } from '../../domain/job/job'
import { settleDispute } from '../../state/settle-dispute'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Notice } from '../controls/notice'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { pointWord } from '../words/bench-words'
import { showMoment } from '../words/dates'
import look from './bench.module.css'

export function Disputed({ job, of }: { job: Job; of: readonly Dispute[] }) {
  const store = useAppStore()
  if (of.length === 0) return null
  return (
    <section className={look.section} aria-labelledby="disputed">
      <h2 id="disputed">Read on two devices</h2>
      {of.map((dispute) => (
        <div key={`${dispute.arrow} ${dispute.readings[0]!.event}`} className={look.deviation}>
          <Notice level="look">
            <Label>
              No. {dispute.no}, {pointWord(dispute.point).toLowerCase()}: read apart. Keep the one that is right; the
              other stays in the record, struck through.
            </Label>
          </Notice>
          <ul className={look.disputed}>
            {dispute.readings.map((kept) => (
              <li key={kept.event}>
                <Read
                  name={`arrow.${dispute.no}.${dispute.point}`}
                  value={kept.reading.value}
                  unit={kept.reading.unit}
                  decimals={DATA_POINTS[dispute.point].decimals}
                />{' '}
                <Label>
                  {kept.by}, {showMoment(kept.reading.takenAt)}
                </Label>{' '}
                <Button onClick={() => void settleDispute(store.getState(), job.id, dispute, kept)}>
                  Keep this one
                  <span className="unseen" data-label="">
                    {' '}
                    by {kept.by}, {showMoment(kept.reading.takenAt)}
                  </span>
                </Button>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  )
}
