/** The route of the set, every step with how it stands; any of them can be looked back at. */
import { Link } from 'wouter'
import type { Bench } from '../../domain/bench/bench'
import { routeOf, stepDone } from '../../domain/bench/progress'
import type { Step } from '../../domain/bench/route'
import type { Sheet } from '../../domain/sheet/sheet'
import { stepWords } from '../words/bench-words'
import look from './bench.module.css'

interface StepListProps {
  bench: Bench
  sheet: Sheet
  at: Step | undefined
  to: (step: string) => string
}

export const StepList = ({ bench, sheet, at, to }: StepListProps) => (
  <details className={look.section}>
    <summary>All steps of the route</summary>
    <ol className={look.route}>
      {routeOf(bench, sheet).map((step) => (
        <li key={step.key} aria-current={step === at ? 'step' : undefined}>
          <Link to={to(step.key)}>
            <span data-label="">{stepWords(step.key).title}</span>
          </Link>{' '}
          {stepDone(step, bench, sheet) ? 'done' : ''}
        </li>
      ))}
    </ol>
  </details>
)
