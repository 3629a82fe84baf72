/** Times by the clock on the wall: they keep their absolute end through a reload, a closed lid, a changed clock. */
import type { Bench } from '../../domain/bench/bench'
import { due, roomTemperature, running } from '../../domain/bench/cure-timer'
import type { Job } from '../../domain/job/job'
import { endTimer } from '../../state/timer-actions'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { dueWords, NO_ALARM, timerWords } from '../words/timer-words'
import look from './bench.module.css'
import { useNow } from './use-now'

export default function Timers({ job, bench }: { job: Job; bench: Bench }) {
  const store = useAppStore()
  const clock = useApp((s) => s.now)
  const [next] = running(bench, clock())
    .map(({ dueAt }) => dueAt)
    .toSorted()
  const now = useNow(next)
  const [open, over] = [running(bench, now), due(bench, now)]
  const isRead = roomTemperature(bench) !== undefined
  if (open.length + over.length === 0) return null
  return (
    // What becomes due is said aloud.
    <ul className={look.timers} aria-label="Timers" aria-live="polite">
      {over.map((timer) => (
        <li key={timer.id} className={look.due}>
          <span data-label="">
            <b>{timer.what}</b>: {dueWords(timer, now)}.
          </span>{' '}
          <Button kind="text" onClick={() => void endTimer(store.getState(), job.id, timer)}>
            Put it away<span className="unseen">: {timer.what}</span>
          </Button>
        </li>
      ))}
      {open.map((timer) => (
        <li key={timer.id} data-label="">
          <b>{timer.what}</b>: {timerWords(timer, now, isRead)}.
        </li>
      ))}
      {open.length === 0 ? null : <li>{NO_ALARM}</li>}
    </ul>
  )
}
