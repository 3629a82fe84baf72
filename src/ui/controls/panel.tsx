/** A sheet on the paper: one subject inside hairlines, with its heading. */
import type { ReactNode } from 'react'
import { useId } from 'react'
import look from './panel.module.css'

interface PanelProps {
  title: ReactNode
  /** `quiet`: a caption rather than a heading of its own weight. */
  quiet?: boolean
  /** Beside the heading, at its right. */
  aside?: ReactNode
  children: ReactNode
}

export function Panel({ title, quiet = false, aside, children }: PanelProps) {
  const id = useId()
  return (
    <section className={look.panel} aria-labelledby={id}>
      <header className={look.head}>
        <h2 id={id} className={quiet ? look.quiet : undefined}>
          {title}
        </h2>
        {aside}
      </header>
      {children}
    </section>
  )
}
