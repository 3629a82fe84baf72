/** One step at the bench: what to do at the left, the figure that matters at the right, one entry, one broad action. */
import { lazy, Suspense, useState } from 'react'
import { Link, useLocation } from 'wouter'
import type { Bench } from '../../domain/bench/bench'
import { accepted } from '../../domain/bench/bench'
import { leftOf, routeOf } from '../../domain/bench/progress'
import { slugOf, thingAt } from '../../domain/bench/stage-of-thing'
import type { Sheet } from '../../domain/sheet/sheet'
import type { OpenJob } from '../../state/open-job'
import { BenchBar } from '../app/bench-bar'
import { useStillHere } from '../app/use-still-here'
import { buttonLook } from '../controls/button'
import { Status } from '../controls/status'
import { jobTab, jobTitle } from '../words/job-words'
import { stepWords } from '../words/bench-words'
import { AtBench } from './at-bench'
import look from './bench.module.css'
import { Big } from './big'
import { Entry } from './entry'
import type { LastOnPage } from './use-finish'
import { ScaleSlot } from './scale-slot'
import { SetLandingPlot } from './set-landing-plot'
import { SetStrip } from './set-strip'
import { StepExtra } from './step-extra'
import { StepList } from './step-list'
import { useBenchWork } from './use-bench'

const Timers = lazy(() => import('./timers'))
const BenchTools = lazy(() => import('./bench-tools'))
const PaperBar = lazy(() => import('./paper-bar'))
const HeldLots = lazy(() => import('../parts/held-lots'))
const PlanAtStep = lazy(() => import('./plan-at-step'))
/** Steps for which the sheet says more than the route does. */
const PLANNED: ReadonlySet<string> = new Set(['fletch', 'index'])
const History = lazy(() => import('./history'))
const Deviations = lazy(() => import('./deviations').then(({ Deviations: shown }) => ({ default: shown })))

interface StepPageProps {
  open: OpenJob
  bench: Bench
  sheet: Sheet
  slug: string | undefined
  no: string | undefined
}

export function StepPage({ open, bench, sheet, slug, no }: StepPageProps) {
  const work = useBenchWork(bench, sheet)
  const [address, go] = useLocation()
  const isStillHere = useStillHere(address)
  const [said, setSaid] = useState('')
  const [beside, setBeside] = useState('')
  const [just, setJust] = useState<LastOnPage['just']>(null)
  const [paper, setPaper] = useState<'off' | { at: string | null }>('off')
  const { job } = open
  const name = open.client?.['name']
  const route = routeOf(bench, sheet)
  const thing = thingAt(bench, sheet, slug, no)
  const to = (step: string, arrow?: number) =>
    `/job/${job.id}/bench/${slugOf(step)}${arrow === undefined ? '' : `/${arrow}`}`

  if (work === undefined) return null
  if (thing === null) {
    return (
      <>
        <title>{`Bench, ${jobTab(job, name)} · Grainwright`}</title>
        <BenchBar job={job.id} title={jobTitle(job, name)} step="every step done" />
        <main className={look.page}>
          <h1>Every step is done</h1>
          <p>What is left is to look at the set as a whole, sign it off and send it.</p>
          <p>
            <Link to={`/job/${job.id}/send`} className={buttonLook('primary', true)}>
              Go to Send
            </Link>
          </p>
          <SetStrip bench={bench} work={work} at={undefined} onGo={(arrow) => go(to('inspect', arrow.no))} />
          <Suspense>
            <Deviations job={job} events={open.events} bench={bench} ordered={sheet.plan.quantity} />
          </Suspense>
          <StepList bench={bench} sheet={sheet} at={undefined} to={to} />
        </main>
      </>
    )
  }

  const { step, arrow, point } = thing
  const words = stepWords(step.key)
  const own = arrow === null ? undefined : work.landing.arrows.get(arrow.id)
  const isLooking = point !== null && arrow !== null && accepted(arrow, point) !== undefined
  const left = leftOf(step, bench, sheet).length
  return (
    <>
      <title>{`${words.title}, ${jobTab(job, name)} · Grainwright`}</title>
      <BenchBar job={job.id} title={jobTitle(job, name)} step={`step ${route.indexOf(step) + 1} of ${route.length}`}>
        <AtBench onSaid={setSaid} />
        <ScaleSlot job={job} bench={bench} sheet={sheet} />
      </BenchBar>
      <main className={look.page}>
        <div className={look.top}>
          <div className={look.do}>
            <h1 className={look.step} data-label="">
              {words.title}
            </h1>
            <p className={look.what} data-label="">
              {step.instruction ?? words.what}
            </p>
            {PLANNED.has(step.key) ? (
              <Suspense>
                <PlanAtStep step={step.key} plan={sheet.plan} />
              </Suspense>
            ) : null}
            {words.caution === undefined ? null : (
              <p className={look.caution} data-label="">
                <b>{words.caution[0]}:</b> {words.caution[1]}
              </p>
            )}
          </div>
          <Big step={step} arrow={arrow} point={point} own={own} work={work} sheet={sheet} />
        </div>
        <Suspense>
          <HeldLots bench={bench} sheet={sheet} />
        </Suspense>
        <Suspense>
          <Timers job={job} bench={bench} />
        </Suspense>
        {own === undefined ? null : <SetLandingPlot own={own} sheet={sheet} />}
        <div className={look.said} data-label="">
          <Status>{said}</Status>
        </div>
        {paper === 'off' ? null : (
          <Suspense>
            <PaperBar at={paper.at} onAt={(at) => setPaper({ at })} onStop={() => setPaper('off')} />
          </Suspense>
        )}
        <Entry
          key={`${step.key}.${arrow?.id ?? 'set'}.${point ?? 'confirm'}`}
          job={job}
          bench={bench}
          sheet={sheet}
          work={work}
          thing={thing}
          isLooking={isLooking}
          paperAt={paper === 'off' ? null : paper.at}
          beside={beside}
          just={just}
          onDid={setJust}
          onSaid={setSaid}
          onNext={() => {
            // Where the address says no step it stays as it is: back leads out of the bench, not through every reading.
            if (slug !== undefined && isStillHere()) go(`/job/${job.id}/bench`)
          }}
        />
        <SetStrip bench={bench} work={work} at={arrow ?? undefined} onGo={(each) => go(to(step.key, each.no))} />
        <StepExtra {...{ job, bench, sheet, work, step, arrow, own, point }} onSaid={setSaid} onTyped={setBeside} />
        <p className={look.left} data-label="">
          {left === 0 ? 'Nothing left at this step.' : `${left} left at this step.`}
        </p>
        <Suspense>
          {arrow === null ? null : <History job={job} arrow={arrow} step={step} />}
          <Deviations job={job} events={open.events} bench={bench} ordered={sheet.plan.quantity} />
          <BenchTools
            job={job}
            bench={bench}
            sheet={sheet}
            notes={open.notes}
            step={step.key}
            onPaper={() => setPaper({ at: null })}
          />
        </Suspense>
        <StepList bench={bench} sheet={sheet} at={step} to={to} />
      </main>
    </>
  )
}
