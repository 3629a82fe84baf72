/** The plan after one more event. A field set to null goes back to what a new plan has; no order, to that of position. */
import type { JobEvent } from '../job/events'
import type { Plan } from './plan'
import { NEW_PLAN } from './plan'

export type PlanEvent = Extract<JobEvent, { what: 'planSet' | 'lineSet' | 'lineRemoved' | 'linesOrdered' }>

export function planAfter(plan: Plan, event: PlanEvent): Plan {
  switch (event.what) {
    case 'planSet':
      return { ...plan, [event.body.field]: event.body.value ?? NEW_PLAN[event.body.field] }
    case 'lineSet': {
      const { line } = event.body
      const known = plan.lines.some((each) => each.id === line.id)
      return {
        ...plan,
        lines: known ? plan.lines.map((each) => (each.id === line.id ? line : each)) : [...plan.lines, line],
      }
    }
    case 'lineRemoved':
      return { ...plan, lines: plan.lines.filter((each) => each.id !== event.body.line) }
    case 'linesOrdered': {
      const { order: _, ...byPosition } = plan
      if (event.body.lines.length === 0) return byPosition
      const place = new Map(event.body.lines.map((line, i) => [line, i]))
      const at = (line: string) => place.get(line) ?? Number.MAX_SAFE_INTEGER
      return { ...plan, order: 'by hand', lines: [...plan.lines].sort((a, b) => at(a.id) - at(b.id)) }
    }
  }
}
