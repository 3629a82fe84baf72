/** The name of a figure as a button that opens its working. */
import { lazy, Suspense, useState } from 'react'
import type { Derivation } from '../../../core/outcome'
import look from './show-working.module.css'

// With the names of all sources and inputs, and wanted only when somebody asks.
const WorkingDialog = lazy(async () => ({ default: (await import('./working-dialog')).WorkingDialog }))

interface ShowWorkingProps {
  /** The figure's name in the page, so that a check knows whose working this is. */
  name: string
  label: string
  derivation: Derivation
}

export function ShowWorking({ name, label, derivation }: ShowWorkingProps) {
  const [open, setOpen] = useState(false)
  return (
    <>
      <button
        type="button"
        className={look.label}
        aria-haspopup="dialog"
        title="Show working"
        data-label=""
        onClick={() => setOpen(true)}
      >
        {label}
      </button>
      {open ? (
        <Suspense fallback={null}>
          <WorkingDialog name={name} label={label} derivation={derivation} onClose={() => setOpen(false)} />
        </Suspense>
      ) : null}
    </>
  )
}
