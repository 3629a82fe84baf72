/** What a known client had built before, each one tap from being built again. */
import { Link } from 'wouter'
import { toldText } from '../../domain/call/told'
import type { Job } from '../../domain/job/job'
import { codeOf } from '../../domain/records/code'
import { showDayAndYear } from '../words/dates'
import { counted } from '../words/format'
import look from './call.module.css'

export function PastBuilds({ jobs }: { jobs: readonly Job[] }) {
  const builds = jobs.flatMap((job) => job.signedOff.map((build) => ({ job, build })))
  if (builds.length === 0) return null
  return (
    <section aria-label="Built before">
      <h3 className={look.small}>Built before</h3>
      <ul>
        {builds.map(({ job, build }) => (
          <li key={build.asBuilt} className={look.build}>
            <Link to={`/book/${build.asBuilt}`} data-label="">
              {codeOf(build.asBuilt)}
            </Link>
            <span data-label="">
              {[
                toldText(job.answers, 'quarry') ?? '',
                counted(job.plan.quantity, 'arrow'),
                showDayAndYear(build.at.slice(0, 10)),
              ]
                .filter((each) => each !== '')
                .join(', ')}
            </span>
            <Link to={`/book/${build.asBuilt}/again`} aria-label={`Build ${codeOf(build.asBuilt)} again`}>
              Build this again
            </Link>
          </li>
        ))}
      </ul>
    </section>
  )
}
