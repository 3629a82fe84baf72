/** The prints by address: each is the same record in black on white, complete without the app. */
import { lazy, useEffect, useState } from 'react'
import type { ComponentType } from 'react'
import { Link } from 'wouter'
import type { FactOf } from '../../domain/records/read-fact'
import type { OpenJob } from '../../state/open-job'
import type { PageParams } from '../app/routes'
import { useApp } from '../app/use-app'
import { EmptyState } from '../controls/empty-state'
import { useOpenJob } from '../jobs/use-open-job'

type OfSheet = ComponentType<{ fact: FactOf<'sheet'>; open: OpenJob }>
type OfJob = ComponentType<{ open: OpenJob }>

const OF_SHEET: Readonly<Record<string, OfSheet>> = {
  'build-sheet': lazy(async () => ({ default: (await import('./build-sheet-print')).BuildSheetPrint })),
  'route-card': lazy(async () => ({ default: (await import('./route-card-print')).RouteCardPrint })),
}
const OF_JOB: Readonly<Record<string, OfJob>> = {
  certificate: lazy(async () => ({ default: (await import('./certificate-print')).CertificatePrint })),
  'client-sheet': lazy(async () => ({ default: (await import('./client-sheet-print')).ClientSheetPrint })),
  guide: lazy(async () => ({ default: (await import('./guide-print')).GuidePrint })),
  kit: lazy(async () => ({ default: (await import('./kit-print')).KitPrint })),
  labels: lazy(async () => ({ default: (await import('./labels-print')).LabelsPrint })),
  packing: lazy(async () => ({ default: (await import('./packing-print')).PackingPrint })),
  measuring: lazy(async () => ({ default: (await import('./measuring-print')).MeasuringPrint })),
  summary: lazy(async () => ({ default: (await import('./summary-print')).SummaryPrint })),
}

export default function PrintPage({ params }: { params: PageParams }) {
  const what = params['what'] ?? ''
  const id = params['id'] ?? ''
  const ofSheet = OF_SHEET[what]
  const ofJob = OF_JOB[what]
  if (ofSheet !== undefined) return <SheetPrint hash={id} of={ofSheet} />
  if (ofJob !== undefined) return <JobPrint job={id} of={ofJob} />
  return <Nothing />
}

const Nothing = () => (
  <main>
    <EmptyState isPage title="There is no such print" action={<Link to="/jobs">Go to the jobs</Link>} />
  </main>
)

function JobPrint({ job, of: Of }: { job: string; of: OfJob }) {
  const open = useOpenJob(job)
  if (open === undefined) return null
  return open === null ? <Nothing /> : <Of open={open} />
}

function SheetPrint({ hash, of }: { hash: string; of: OfSheet }) {
  const repository = useApp((s) => s.repository)
  const [fact, setFact] = useState<FactOf<'sheet'> | null>()
  useEffect(() => {
    void repository?.fact(hash).then((read) => {
      setFact(read?.kind === 'ok' && read.fact.kind === 'sheet' ? read.fact : null)
    })
  }, [repository, hash])
  if (fact === undefined) return null
  return fact === null ? <Nothing /> : <SheetOfJob fact={fact} of={of} />
}

function SheetOfJob({ fact, of: Of }: { fact: FactOf<'sheet'>; of: OfSheet }) {
  const open = useOpenJob(fact.body.job)
  if (open === undefined) return null
  return open === null ? <Nothing /> : <Of fact={fact} open={open} />
}
