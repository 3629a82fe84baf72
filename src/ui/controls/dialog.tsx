/** A native dialog with a title and a way out: Escape, the button, or a tap beside it. Focus returns to where it was. */
import type { ReactNode } from 'react'
import { useEffect, useId, useRef } from 'react'
import { Button } from './button'
import look from './dialog.module.css'

interface DialogProps {
  title: ReactNode
  onClose: () => void
  children: ReactNode
  /** Actions at its foot; without them there is one, *Close*. */
  actions?: ReactNode
  /** There is much to type in it: a tap beside it, that slips easily, does not throw it away. */
  firm?: boolean
}

/** Open as long as it is rendered. */
export function Dialog({ title, onClose, children, actions, firm = false }: DialogProps) {
  const id = useId()
  const ref = useRef<HTMLDialogElement>(null)
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    const dialog = ref.current
    const before = document.activeElement
    dialog?.showModal()
    // Where all of it scrolls, it is read from the top, cautions first.
    if (dialog !== null && heading.current !== null && dialog.scrollHeight > dialog.clientHeight) {
      heading.current.tabIndex = -1 // not before: the dialog would always begin there
      heading.current.focus()
    }
    return () => {
      dialog?.close()
      if (before instanceof HTMLElement) before.focus()
    }
  }, [])

  return (
    <dialog
      ref={ref}
      className={look.dialog}
      aria-labelledby={id}
      onClose={onClose}
      {...{ closedby: firm ? 'closerequest' : 'any' }}
    >
      <h2 id={id} ref={heading} className={look.title}>
        {title}
      </h2>
      <div className={look.body}>{children}</div>
      <div className={look.actions}>{actions ?? <Button onClick={onClose}>Close</Button>}</div>
    </dialog>
  )
}
