/** The line under a step that says what the sheet has planned for it. */
import type { Plan } from '../../domain/sheet/plan'
import { planAtStep } from '../words/plan-at-step'
import look from './bench.module.css'

export default function PlanAtStep({ step, plan }: { step: string; plan: Plan }) {
  const words = planAtStep(step, plan)
  return words === undefined ? null : (
    <p className={look.what} data-label="">
      {words}
    </p>
  )
}
