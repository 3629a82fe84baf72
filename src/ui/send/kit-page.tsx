/** A test kit before an expensive set: which shafts go out, what the client reports of them, and what the plan makes of it. */
import { lazy, Suspense } from 'react'
import { Link } from 'wouter'
import { Page } from '../app/page'
import type { PageParams } from '../app/routes'
import { StageBar } from '../app/stage-bar'
import { NoSuchJob } from '../jobs/no-such-job'
import { useOpenJob } from '../jobs/use-open-job'
import { jobTab, jobTitle } from '../words/job-words'
import { KitPlan } from './kit-plan'
import look from './send.module.css'

/** Fetched when a kit is under way, or has gone out. */
const KitBegun = lazy(() => import('./kit-begun').then((file) => ({ default: file.KitBegun })))
const KitReport = lazy(() => import('./kit-report').then((file) => ({ default: file.KitReport })))

export default function KitPage({ params }: { params: PageParams }) {
  const open = useOpenJob(params['id'] ?? '')
  if (open === undefined) return null
  if (open === null) return <NoSuchJob />
  const { job } = open
  const name = open.client?.['name']
  return (
    <Page
      title={jobTitle(job, name)}
      tab={`Test kit, ${jobTab(job, name)}`}
      about="test kit"
      aside={<StageBar job={job.id} at="send" />}
    >
      <div className={look.page}>
        <Suspense fallback={null}>
          {job.kits.map((kit) => (
            <KitReport key={kit.arrows[0]!.arrow} open={open} kit={kit} />
          ))}
          {job.kitsBegun.map((begun) => (
            <KitBegun key={begun.kit} open={open} begun={begun} />
          ))}
        </Suspense>
        <KitPlan open={open} />
        <p>
          <Link to={`/job/${job.id}/sheet`}>Go to the sheet</Link>
        </p>
      </div>
    </Page>
  )
}
