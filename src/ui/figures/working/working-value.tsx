/** A number of a table that opens to its working. */
import { lazy, Suspense, useState } from 'react'
import type { Estimate, Outcome } from '../../../core/outcome'
import type { Dimension, Quantity, UnitOf } from '../../../core/quantity'
import { Value } from '../value'
import look from './working-value.module.css'

const WorkingDialog = lazy(async () => ({ default: (await import('./working-dialog')).WorkingDialog }))

interface WorkingValueProps<D extends Dimension> {
  name: string
  /** What it is, for the working's heading and a screen reader. */
  label: string
  of: Outcome<Quantity<D> | Estimate<Quantity<D>>> | undefined
  unit: UnitOf<D>
  decimals: number
}

export function WorkingValue<D extends Dimension>({ name, label, of, unit, decimals }: WorkingValueProps<D>) {
  const [open, setOpen] = useState(false)
  if (of?.ok !== true) return <span className={look.open}>open</span>
  const value = typeof of.value === 'number' ? of.value : of.value.value
  return (
    <>
      <button
        type="button"
        className={look.number}
        aria-haspopup="dialog"
        title="Show working"
        onClick={() => setOpen(true)}
      >
        <Value name={name} of={value} unit={unit} decimals={decimals} />
      </button>
      {open ? (
        <Suspense fallback={null}>
          <WorkingDialog name={name} label={label} derivation={of.derivation} onClose={() => setOpen(false)} />
        </Suspense>
      ) : null}
    </>
  )
}
