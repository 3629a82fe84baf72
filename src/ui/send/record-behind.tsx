/** A repair is two writes. Where only the first reached the disk, the record's new version is made up for here. */
import { useEffect, useState } from 'react'
import type { Sheet } from '../../domain/sheet/sheet'
import { recordRepairs, unrecorded } from '../../state/repair-actions'
import type { OpenJob } from '../../state/open-job'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Notice } from '../controls/notice'
import { Label } from '../figures/label'
import { lastRepairReason, recordBehindWords } from '../words/afterwards-words'

export function RecordBehind({ open, sheet }: { open: OpenJob; sheet: Sheet }) {
  const store = useAppStore()
  const [nos, setNos] = useState<readonly number[]>([])
  useEffect(() => {
    let gone = false
    void unrecorded(store.getState(), sheet).then((found) => {
      if (!gone) setNos(found)
    })
    return () => {
      gone = true
    }
  }, [store, open, sheet])
  if (nos.length === 0) return null
  return (
    <Notice level="look">
      <Label>{recordBehindWords(nos)}</Label>{' '}
      <Button onClick={() => void recordRepairs(store.getState(), sheet, lastRepairReason(open.job))}>
        Write the new version
      </Button>
    </Notice>
  )
}
