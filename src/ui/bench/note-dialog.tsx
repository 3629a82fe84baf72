/** A note at the bench, with a small picture if one helps; both may name a person, so they are kept with the personal data. */
import { useEffect, useState } from 'react'
import type { Photo } from '../../domain/records/photo'
import type { Id } from '../../domain/records/scalars'
import { noteAtBench } from '../../state/bench-actions'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Dialog } from '../controls/dialog'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { EMPTY_NOTE, NO_PICTURE } from '../words/note-words'
import { Picture } from './picture'
import { smallPhoto } from './small-photo'
import look from './tools.module.css'

interface NoteDialogProps {
  job: Id
  arrow: Id | null
  step: string
  onSaid: (words: string) => void
  onClose: () => void
}

export default function NoteDialog({ job, arrow, step, onSaid, onClose }: NoteDialogProps) {
  const store = useAppStore()
  const [note, setNote] = useState('')
  const [photo, setPhoto] = useState<Photo>()
  const [said, setSaid] = useState('')
  async function keep() {
    if (note.trim() === '' && photo === undefined) return setSaid(EMPTY_NOTE)
    if (!(await noteAtBench(store.getState(), { job, arrow, step }, note.trim(), photo))) return undefined
    onSaid(photo === undefined ? 'Note kept.' : 'Note kept, with its picture.')
    return onClose()
  }
  async function choose(file: File | undefined) {
    if (file === undefined) return
    const small = await smallPhoto(file)
    setPhoto(small)
    setSaid(small === undefined ? NO_PICTURE : '')
  }
  useEffect(() => {
    // The dialog opens on its text.
    document.querySelector<HTMLTextAreaElement>('dialog textarea[name=note]')?.focus()
  }, [])
  return (
    <Dialog
      title="Note"
      onClose={onClose}
      firm
      actions={
        <>
          <Button kind="primary" onClick={() => void keep()}>
            Keep the note
          </Button>
          <Button onClick={onClose}>Cancel</Button>
        </>
      }
    >
      <TextField label="What was seen or done" name="note" long value={note} onText={setNote} onCommit={setNote} />
      <p className={look.row}>
        <label>
          Picture{' '}
          <input
            type="file"
            name="photo"
            accept="image/*"
            capture="environment"
            onChange={(event) => void choose(event.target.files?.[0])}
          />
        </label>
        {photo === undefined ? null : (
          <>
            <Picture photo={photo} alt="The picture to be kept" className={look.preview} />
            <Button kind="text" onClick={() => setPhoto(undefined)}>
              Leave it out
            </Button>
          </>
        )}
      </p>
      <Status>{said}</Status>
    </Dialog>
  )
}
