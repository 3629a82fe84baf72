/** A sentence that is said aloud when it changes, and can be read on the page for as long as it holds. */
import type { ReactNode } from 'react'
import look from './status.module.css'

export const Status = ({ children, unseen = false }: { children?: ReactNode; unseen?: boolean }) => (
  <output className={unseen ? 'unseen' : look.status}>{children}</output>
)
