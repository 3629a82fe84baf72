/** An empty page says what belongs there and offers the one next action. */
import type { ReactNode } from 'react'
import look from './empty-state.module.css'

interface EmptyStateProps {
  /** What belongs here, as a heading. */
  title: string
  /** It is all there is on the page, so its heading is the page's. */
  isPage?: boolean
  children?: ReactNode
  /** The one next action: a button or a link. */
  action?: ReactNode
}

export const EmptyState = ({ title, isPage = false, children, action }: EmptyStateProps) => (
  <div className={look.empty}>
    {isPage ? <h1>{title}</h1> : <h2>{title}</h2>}
    {children === undefined ? null : <p className={look.words}>{children}</p>}
    {action}
  </div>
)
