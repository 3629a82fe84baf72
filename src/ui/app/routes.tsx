/** Every address of the app and the page that answers it. Each page is its own chunk, fetched when it is first opened. */
import type { ComponentType } from 'react'
import { lazy } from 'react'

/** Parts of an address that a page is given, by name; the page says which it needs. */
export type PageParams = Readonly<Record<string, string | undefined>>

interface RouteEntry {
  readonly path: string
  readonly page: ComponentType<{ params: PageParams }>
  /** The bench and the prints have the whole screen. */
  readonly bare?: boolean
}

export const ROUTES: readonly RouteEntry[] = [
  { path: '/jobs', page: lazy(() => import('../jobs/jobs-page')) },
  { path: '/job/:id', page: lazy(() => import('../jobs/job-page')) },
  { path: '/job/:id/call/:topic?', page: lazy(() => import('../call/call-page')) },
  { path: '/job/:id/sheet', page: lazy(() => import('../sheet/sheet-page')) },
  { path: '/job/:id/bench/:step?/:no?', page: lazy(() => import('../bench/bench-page')), bare: true },
  { path: '/job/:id/send', page: lazy(() => import('../send/send-page')) },
  { path: '/job/:id/kit', page: lazy(() => import('../send/kit-page')) },
  { path: '/book', page: lazy(() => import('../book/book-page')) },
  { path: '/book/:build', page: lazy(() => import('../book/build-page')) },
  { path: '/book/:build/again', page: lazy(() => import('../book/again-page')) },
  { path: '/parts', page: lazy(() => import('../parts/parts-page')) },
  { path: '/parts/:kind/:id?', page: lazy(() => import('../parts/part-page')) },
  { path: '/help/:topic?', page: lazy(() => import('../help/help-page')) },
  { path: '/shop', page: lazy(() => import('../shop/shop-page')) },
  { path: '/print/:what/:id', page: lazy(() => import('../print/print-page')), bare: true },
]
