/** A survivor's weight now, as the client or the shop has weighed it: what a rebuild is to match. */
import { useState } from 'react'
import { report } from '../../state/afterwards-actions'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Dialog } from '../controls/dialog'
import { QuantityField } from '../controls/quantity-field'
import { Status } from '../controls/status'
import { Label } from '../figures/label'
import type { ArrowDialogProps } from './arrow-dialog'
import { FINISHED_ASKED } from './arrow-dialog'

export function WeighedDialog({ open, arrow, onClose }: ArrowDialogProps) {
  const store = useAppStore()
  const [weight, setWeight] = useState<number>()
  const [said, setSaid] = useState('')
  async function keep() {
    if (weight === undefined) return setSaid('Not kept: the weight is missing.')
    if (await report(store.getState(), open.job.id, arrow.id, 'survivorWeightGr', weight)) onClose()
    return undefined
  }
  return (
    <Dialog
      title={<Label>No. {arrow.no}, weighed again</Label>}
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" onClick={() => void keep()}>
            Keep the weight
          </Button>
          <Button onClick={onClose}>Leave it</Button>
        </>
      }
    >
      <QuantityField
        label="Weight now, head on"
        name="survivorWeight"
        asked={FINISHED_ASKED}
        value={weight}
        onCommit={({ value }) => setWeight(value)}
        onClear={() => setWeight(undefined)}
      />
      <Status>{said}</Status>
    </Dialog>
  )
}
