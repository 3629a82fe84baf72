/** What a step shows beside its one entry, each fetched only where it is needed. */
import { lazy, Suspense } from 'react'
import type { Bench, BenchArrow } from '../../domain/bench/bench'
import type { DataPoint } from '../../domain/bench/data-points'
import { DATA_POINTS } from '../../domain/bench/data-points'
import type { Step } from '../../domain/bench/route'
import type { ArrowForecast } from '../../domain/bench/set-forecast'
import type { Job } from '../../domain/job/job'
import type { Sheet } from '../../domain/sheet/sheet'
import { useApp } from '../app/use-app'
import type { BenchWork } from './use-bench'

const Mend = lazy(() => import('./mend'))
const SpinPanel = lazy(() => import('./spin-panel'))
const CutPanel = lazy(() => import('./cut-panel'))
const DemoPan = lazy(() => import('./demo-pan'))
const InsertTurnPanel = lazy(() => import('./insert-turn-panel'))

const PairPanel = lazy(() => import('./pair-panel'))

/** Before fletching, and before anything is put together. */
const PAIRED_AT: ReadonlySet<string> = new Set(['budget', 'dry fit'])

/** Where the entry is a weight that is taken again and again: after each pass, after each touch. */
const WEIGHED_AT: Readonly<Record<string, DataPoint>> = {
  trim: 'trimWeight',
  edge: 'edgeWeight',
  bond: 'bondWeight',
}

interface StepExtraProps {
  job: Job
  bench: Bench
  sheet: Sheet
  work: BenchWork
  step: Step
  arrow: BenchArrow | null
  point: DataPoint | null
  own: ArrowForecast | undefined
  onSaid: (words: string) => void
  /** What is typed here and not taken. */
  onTyped: (text: string) => void
}

export function StepExtra({ job, bench, sheet, work, step, arrow, own, point, onSaid, onTyped }: StepExtraProps) {
  const hasDemoScale = useApp((s) => s.scale.kind === 'on' && s.scale.source === 'demo')
  const weighed = point ?? WEIGHED_AT[step.key] ?? null
  const pairing = PAIRED_AT.has(step.key) ? <PairPanel {...{ job, bench, sheet, work, onSaid }} /> : null
  if (arrow === null) return pairing === null ? null : <Suspense>{pairing}</Suspense>
  return (
    <Suspense>
      {pairing}
      {step.key === 'spin' ? (
        <SpinPanel key={arrow.id} {...{ job, arrow, sheet, onSaid, onTyped }} step={step.key} />
      ) : null}
      {step.key === 'cut' ? <CutPanel arrow={arrow} sheet={sheet} /> : null}
      {step.key === 'index' ? <InsertTurnPanel key={arrow.id} no={arrow.no} /> : null}
      {hasDemoScale && weighed !== null && DATA_POINTS[weighed].unit === 'gr' ? (
        <DemoPan arrow={arrow} point={weighed} work={work} sheet={sheet} />
      ) : null}
      {own?.state === 'light' ? (
        <Mend key={arrow.id} job={job} bench={bench} sheet={sheet} work={work} own={own} onSaid={onSaid} />
      ) : null}
    </Suspense>
  )
}
