/** The job of an address, loaded into the store; undefined while it loads, null when the book has no such job. */
import { useEffect, useState } from 'react'
import type { OpenJob } from '../../state/open-job'
import { useApp } from '../app/use-app'

export function useOpenJob(id: string): OpenJob | null | undefined {
  const open = useApp((s) => s.open)
  const load = useApp((s) => s.loadJob)
  const [asked, setAsked] = useState<string>()
  useEffect(() => {
    let gone = false
    void load(id).then(() => {
      if (!gone) setAsked(id)
    })
    return () => {
      gone = true
    }
  }, [id, load])
  if (open?.job.id === id) return open
  return asked === id ? null : undefined
}
