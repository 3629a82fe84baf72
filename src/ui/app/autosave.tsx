/**
 * Saves the book to the file chosen for backups: when the work pauses, and when the page is left. It says nothing: the save
 * state tells how old the last backup is.
 */
import { useEffect } from 'react'
import { useApp } from './use-app'

/** Milliseconds without a save, after which the file is written: a set at the bench saves every few seconds. */
const PAUSE = 20_000

export default function Autosave() {
  const repository = useApp((s) => s.repository)
  const lacks = useApp((s) => s.backup.lacks)
  const now = useApp((s) => s.now)
  const refreshJobs = useApp((s) => s.refreshJobs)
  useEffect(() => {
    if (repository === null || lacks === 0) return undefined
    let isOnItsWay = false
    const write = async () => {
      if (isOnItsWay) return
      isOnItsWay = true
      if ((await repository.archive.file.save(now(), false)).kind === 'saved') await refreshJobs()
      isOnItsWay = false
    }
    const leave = () => {
      if (document.visibilityState === 'hidden') void write()
    }
    const timer = setTimeout(() => void write(), PAUSE)
    document.addEventListener('visibilitychange', leave)
    return () => {
      clearTimeout(timer)
      document.removeEventListener('visibilitychange', leave)
    }
  }, [repository, lacks, now, refreshJobs])
  return null
}
