/** The frame of every page that is not the bench or a print: the four places, the save state, the page. */
import type { ReactNode } from 'react'
import { Link, useLocation } from 'wouter'
import { helpTopicOf } from '../help/help-topic-of'
import look from './frame.module.css'
import { NameMark } from './name-mark'
import { useSaveSlot } from './save-slot'

const PLACES = [
  { to: '/jobs', name: 'Jobs', holds: ['/jobs', '/job/'] },
  { to: '/book', name: 'Book', holds: ['/book'] },
  { to: '/parts', name: 'Parts', holds: ['/parts'] },
  { to: '/shop', name: 'Shop', holds: ['/shop'] },
] as const

export function Frame({ children }: { children: ReactNode }) {
  const [path] = useLocation()
  return (
    <>
      <header className={look.bar}>
        <Link to="/jobs" className={look.name}>
          <NameMark />
          Grainwright
        </Link>
        <nav className={look.places} aria-label="Places">
          {PLACES.map(({ to, name, holds }) => (
            <Link
              key={to}
              to={to}
              className={look.place}
              aria-current={holds.some((start) => path.startsWith(start)) ? 'page' : undefined}
            >
              {name}
            </Link>
          ))}
        </nav>
        <div className={look.save}>{useSaveSlot()}</div>
      </header>
      <main className={look.page}>{children}</main>
      {path.startsWith('/help') ? null : (
        <footer className={look.foot}>
          <Link to={`/help/${helpTopicOf(path)}`}>How this works</Link>
        </footer>
      )}
    </>
  )
}
