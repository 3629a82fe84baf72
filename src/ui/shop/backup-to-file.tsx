/** The file to which backups go by themselves, where the browser can write one; where it cannot, that is said. */
import { useEffect, useState } from 'react'
import { useApp } from '../app/use-app'
import { Button } from '../controls/button'
import { Status } from '../controls/status'
import { Label } from '../figures/label'
import { fileSavedWords } from '../words/archive-words'
import look from './shop.module.css'

export function BackupToFile() {
  const repository = useApp((s) => s.repository)
  const now = useApp((s) => s.now)
  const refreshJobs = useApp((s) => s.refreshJobs)
  const [name, setName] = useState<string>()
  const [said, setSaid] = useState('')
  const file = repository?.archive.file
  useEffect(() => {
    let gone = false
    void file?.name().then((found) => {
      if (!gone) setName(found)
    })
    return () => {
      gone = true
    }
  }, [file])
  if (file === undefined) return null
  if (!file.supported) {
    return (
      <p>
        This browser writes no file by itself: take a backup with <b>Back up now</b> at the end of each day’s work.
      </p>
    )
  }
  async function save() {
    if (file === undefined) return
    setSaid('Writing the file.')
    setSaid(fileSavedWords(await file.save(now(), true)))
    await refreshJobs()
  }
  async function choose() {
    if (file === undefined || (await file.choose('grainwright-backup.jsonl')) !== 'chosen') return
    setName(await file.name())
    await save()
  }
  return (
    <>
      <p className={look.actions}>
        <Button onClick={() => void choose()}>
          {name === undefined ? 'Choose a file for backups' : 'Choose another file'}
        </Button>
        {name === undefined ? null : <Button onClick={() => void save()}>Save to it now</Button>}
        <Label>
          {name === undefined
            ? 'From then on each pause in the work is saved there.'
            : `Each pause in the work is saved to ${name}.`}
        </Label>
      </p>
      <Status>
        <Label>{said}</Label>
      </Status>
    </>
  )
}
