/** One tab works at a bench. Another shows it, takes nothing, and can take it over. */
import type { ReactNode } from 'react'
import { useEffect } from 'react'
import type { Id } from '../../domain/records/scalars'
import { useApp } from '../app/use-app'
import { Button } from '../controls/button'
import { Notice } from '../controls/notice'

export function BenchGuard({ job, children }: { job: Id; children: ReactNode }) {
  const hold = useApp((s) => s.benchHold)
  const holdBench = useApp((s) => s.holdBench)
  const leaveBench = useApp((s) => s.leaveBench)
  useEffect(() => {
    void holdBench(job)
    return leaveBench
  }, [job, holdBench, leaveBench])
  const isElsewhere = hold?.job === job && hold.who === 'another tab'
  return (
    <>
      {isElsewhere ? (
        <Notice level="look" lead="Another tab works at this bench.">
          This one shows it and takes nothing.{' '}
          <Button kind="text" onClick={() => void holdBench(job, 'take over')}>
            Work here instead
          </Button>
        </Notice>
      ) : null}
      <div inert={isElsewhere}>{children}</div>
    </>
  )
}
