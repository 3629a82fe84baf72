/** The action that adds a part to the sheet; its dialogue is fetched when it is wanted. */
import { lazy, Suspense, useState } from 'react'
import type { Id } from '../../domain/records/scalars'
import { Button } from '../controls/button'

const AddDialog = lazy(async () => ({ default: (await import('./add-dialog')).AddDialog }))

export function AddLine({ job }: { job: Id }) {
  const [open, setOpen] = useState(false)
  return (
    <>
      <Button onClick={() => setOpen(true)}>Add a part</Button>
      {open ? (
        <Suspense fallback={null}>
          <AddDialog job={job} onClose={() => setOpen(false)} />
        </Suspense>
      ) : null}
    </>
  )
}
