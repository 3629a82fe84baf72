/** The working of one figure in a dialog, with a way to carry it out as plain lines. */
import { useState } from 'react'
import type { Derivation } from '../../../core/outcome'
import { Button } from '../../controls/button'
import { Dialog } from '../../controls/dialog'
import { Status } from '../../controls/status'
import { workingText } from '../../words/working-text'
import { Working } from './working'
import look from './working-dialog.module.css'

interface WorkingDialogProps {
  name: string
  label: string
  derivation: Derivation
  onClose: () => void
}

export function WorkingDialog({ name, label, derivation, onClose }: WorkingDialogProps) {
  const [said, setSaid] = useState('')
  async function copy() {
    try {
      await navigator.clipboard.writeText(workingText(label, derivation))
      setSaid('Copied')
    } catch {
      setSaid('This browser does not let it be copied')
    }
  }
  return (
    <Dialog
      title={<span data-label="">{label}</span>}
      onClose={onClose}
      actions={
        <>
          <span className={look.said}>
            <Status>{said}</Status>
          </span>
          <Button kind="text" onClick={() => void copy()}>
            Copy as text
          </Button>
          <Button onClick={onClose}>Close</Button>
        </>
      }
    >
      <div data-working={name}>
        <Working derivation={derivation} />
      </div>
    </Dialog>
  )
}
