/** The scale in the bar of the bench: what it is, whether it was checked today, and the way to its settings. */
import { lazy, Suspense, useEffect, useState } from 'react'
import { useBenchScale } from './use-bench-scale'
import type { Bench } from '../../domain/bench/bench'
import { checkToday, driftGr, isOff } from '../../domain/bench/scale-check'
import type { Job } from '../../domain/job/job'
import type { Sheet } from '../../domain/sheet/sheet'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Label } from '../figures/label'
import { checkedWords, scaleShortWords, UNCHECKED } from '../words/scale-words'

const ScaleDialog = lazy(() => import('./scale-dialog'))

export function ScaleSlot({ job, bench, sheet }: { job: Job; bench: Bench; sheet: Sheet }) {
  const store = useAppStore()
  const state = useApp((s) => s.scale)
  const now = useApp((s) => s.now)
  const [isOpen, setOpen] = useState(false)
  useEffect(() => void store.getState().reconnectScale(), [store])
  const own = useBenchScale(sheet)
  const check = own === undefined ? undefined : checkToday(bench, own.name, now())
  return (
    <>
      <Button kind="text" onClick={() => setOpen(true)}>
        <Label>
          {scaleShortWords(state)}
          {own === undefined
            ? ''
            : `, ${check === undefined ? UNCHECKED : checkedWords(check.at, driftGr(check), isOff(check, own))}`}
        </Label>
      </Button>
      {isOpen ? (
        <Suspense>
          <ScaleDialog job={job} bench={bench} sheet={sheet} onClose={() => setOpen(false)} />
        </Suspense>
      ) : null}
    </>
  )
}
