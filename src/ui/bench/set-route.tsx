/** The route of this set alone: steps off or on, moved, the other order, steps of one's own. What was read stays. */
import { useState } from 'react'
import type { Bench } from '../../domain/bench/bench'
import { routeOf } from '../../domain/bench/progress'
import type { Job } from '../../domain/job/job'
import type { Sheet } from '../../domain/sheet/sheet'
import { setRoute } from '../../state/bench-actions'
import { useApp, useAppStore } from '../app/use-app'
import { RoutePanel } from '../shop/route-panel'
import look from './tools.module.css'

export function SetRoute({ job, bench, sheet }: { job: Job; bench: Bench; sheet: Sheet }) {
  const store = useAppStore()
  const frozen = useApp((s) => s.open?.sheets.get(bench.sheet)?.route)
  const [isOpen, setOpen] = useState(false)
  return (
    <details className={look.tool} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Change the route of this set</summary>
      {isOpen ? (
        <RoutePanel
          route={routeOf(bench, sheet)}
          {...(frozen === undefined ? {} : { usual: frozen })}
          about="For this set alone. What was read at a step that is switched off stays in the record."
          onRoute={(route) => void setRoute(store.getState(), job.id, route)}
        />
      ) : null}
    </details>
  )
}
