/** The bench: one step on the page, the next thing always known. Without a set under way it says how to start one. */
import { lazy, Suspense } from 'react'
import { onItsRoute } from '../../domain/bench/fletched-last'
import type { PageParams } from '../app/routes'
import { NoSuchJob } from '../jobs/no-such-job'
import { useOpenJob } from '../jobs/use-open-job'
import { BenchGuard } from './bench-guard'
import { StepPage } from './step-page'

const NoSet = lazy(() => import('./no-set'))

export default function BenchPage({ params }: { params: PageParams }) {
  const open = useOpenJob(params['id'] ?? '')
  if (open === undefined) return null
  if (open === null) return <NoSuchJob />
  const frozen = open.job.bench === null ? undefined : open.sheets.get(open.job.bench.sheet)
  const sheet = frozen && open.job.bench !== null ? onItsRoute(frozen, open.job.bench) : undefined
  if (open.job.bench === null || sheet === undefined)
    return (
      <Suspense>
        <NoSet open={open} />
      </Suspense>
    )
  return (
    <BenchGuard job={open.job.id}>
      <StepPage open={open} bench={open.job.bench} sheet={sheet} slug={params['step']} no={params['no']} />
    </BenchGuard>
  )
}
