/** A page: its heading, which takes the focus on arrival so that it is read first, and what stands beside it. */
import type { ReactNode } from 'react'
import { useEffect, useRef } from 'react'
import look from './page.module.css'

interface PageProps {
  title: ReactNode
  /** The title as plain text, for the tab and the history. */
  tab: string
  /** Beside the title, softer: *11 minutes, 3 open questions*. */
  about?: ReactNode
  /** At the right of the heading: the stages of a job, or the one action of the page. */
  aside?: ReactNode
  children: ReactNode
}

/** Pages shown since the app was loaded. */
let arrivals = 0

export function Page({ title, tab, about, aside, children }: PageProps) {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    // On the first load the browser's own start is right; a page that has put its first field at hand keeps it.
    const isAtHand = document.activeElement?.closest('main') instanceof HTMLElement
    if (arrivals > 0 && !isAtHand) heading.current?.focus()
    arrivals += 1
  }, [])
  return (
    <>
      <title>{`${tab} · Grainwright`}</title>
      <header className={look.head}>
        <h1 ref={heading} tabIndex={-1} data-label="">
          {title}
        </h1>
        {about === undefined ? null : <div className={look.about}>{about}</div>}
        {aside === undefined ? null : <div className={look.aside}>{aside}</div>}
      </header>
      {children}
    </>
  )
}
