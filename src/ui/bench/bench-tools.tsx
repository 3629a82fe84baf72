/** What is at hand at every step and needed at few: notes, timers, readings off paper, the route of this set. */
import type { Bench } from '../../domain/bench/bench'
import type { Job } from '../../domain/job/job'
import type { Hash } from '../../domain/records/scalars'
import type { Sheet } from '../../domain/sheet/sheet'
import { Button } from '../controls/button'
import { Notes } from './notes'
import { SetRoute } from './set-route'
import { TimerForm } from './timer-form'
import look from './tools.module.css'

interface BenchToolsProps {
  job: Job
  bench: Bench
  sheet: Sheet
  notes: ReadonlyMap<Hash, string>
  step: string
  onPaper: () => void
}

export default function BenchTools({ job, bench, sheet, notes, step, onPaper }: BenchToolsProps) {
  return (
    <section className={look.tools} aria-label="At hand">
      <Notes bench={bench} notes={notes} />
      <TimerForm job={job} bench={bench} sheet={sheet} step={step} />
      <SetRoute job={job} bench={bench} sheet={sheet} />
      <p className={look.row}>
        <Button onClick={onPaper}>Enter readings from paper</Button>
      </p>
    </section>
  )
}
