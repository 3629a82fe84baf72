/** An arrow is shot no more: the cause, and how often it was shot. Its number is never given again. */
import { useState } from 'react'
import { retireArrow } from '../../state/afterwards-actions'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Dialog } from '../controls/dialog'
import { Notice } from '../controls/notice'
import { QuantityField } from '../controls/quantity-field'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import type { ArrowDialogProps } from './arrow-dialog'

const SHOTS_ASKED = { unit: '1', min: 0, max: 100_000, decimals: 0, whole: true } as const

export function RetireDialog({ open, arrow, onClose }: ArrowDialogProps) {
  const store = useAppStore()
  const [cause, setCause] = useState('')
  const [shots, setShots] = useState<number>()
  const [said, setSaid] = useState('')
  async function retire() {
    if (cause.trim() === '') return setSaid('Not retired: say what is wrong with it, or that it is lost.')
    const body = { cause: cause.trim(), shots: shots ?? null }
    if (await retireArrow(store.getState(), open.job.id, arrow.id, body)) onClose()
    return undefined
  }
  return (
    <Dialog
      title={<Label>Retire no. {arrow.no}</Label>}
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" onClick={() => void retire()}>
            <Label>Retire no. {arrow.no}</Label>
          </Button>
          <Button onClick={onClose}>Leave it</Button>
        </>
      }
    >
      <TextField
        label="Cause"
        name="cause"
        hint="cracked, bent, lost …"
        value={cause}
        onText={setCause}
        onCommit={setCause}
      />
      <QuantityField
        label="Shots, as far as known"
        name="shots"
        asked={SHOTS_ASKED}
        value={shots}
        onCommit={({ value }) => setShots(value)}
        onClear={() => setShots(undefined)}
      />
      <Notice level="look">Break a cracked shaft in two before it is thrown away, so that nobody shoots it.</Notice>
      <Status>{said}</Status>
    </Dialog>
  )
}
