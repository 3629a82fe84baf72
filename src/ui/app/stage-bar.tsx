/** The four stages of a job, each a page. */
import { Link } from 'wouter'
import look from './stage-bar.module.css'

export const STAGES = ['call', 'sheet', 'bench', 'send'] as const
export type Stage = (typeof STAGES)[number]
const NAME: Record<Stage, string> = { call: 'Call', sheet: 'Sheet', bench: 'Bench', send: 'Send' }

export const StageBar = ({ job, at }: { job: string; at?: Stage }) => (
  <nav aria-label="Stages of the job">
    <ol className={look.stages}>
      {STAGES.map((stage) => (
        <li key={stage} className={look.item}>
          <Link
            to={`/job/${encodeURIComponent(job)}/${stage}`}
            className={look.stage}
            aria-current={stage === at ? 'step' : undefined}
          >
            {NAME[stage]}
          </Link>
        </li>
      ))}
    </ol>
  </nav>
)
