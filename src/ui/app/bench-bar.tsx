/** The thin bar of the bench: which job, which step, what is saved; the way back is the job's own name. */
import type { ReactNode } from 'react'
import { Link } from 'wouter'
import look from './bench-bar.module.css'
import { NameMark } from './name-mark'
import { useSaveSlot } from './save-slot'

interface BenchBarProps {
  job: string
  /** *Job K7QD-1043-9 · bison* */
  title: ReactNode
  /** *step 12 of 18* */
  step?: ReactNode
  /** Beside the save state: the scale and its last check. */
  children?: ReactNode
}

export const BenchBar = ({ job, title, step, children }: BenchBarProps) => (
  <header className={look.bar}>
    <Link to={`/job/${encodeURIComponent(job)}`} className={look.job} data-label="">
      <NameMark size={24} />
      {title}
    </Link>
    {step === undefined ? null : (
      <span className={look.step} data-label="">
        {step}
      </span>
    )}
    <div className={look.right}>
      <Link to="/help/bench" className={look.help}>
        How this works
      </Link>
      {useSaveSlot()}
      {children}
    </div>
  </header>
)
