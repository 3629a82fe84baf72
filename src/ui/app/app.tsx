/** The app: hash addresses, so that it needs no server of its own, and a frame around the page that answers each. */
import type { ReactNode } from 'react'
import { Suspense } from 'react'
import { Redirect, Route, Router, Switch, useLocation } from 'wouter'
import { useHashLocation } from 'wouter/use-hash-location'
import type { UnitSystem } from '../words/unit-systems'
import { ErrorBoundary } from './error-boundary'
import { Frame } from './frame'
import { NotFoundPage } from './not-found-page'
import { ROUTES } from './routes'
import { SaveSlot } from './save-slot'
import { Units } from './units'

interface AppProps {
  units: UnitSystem
  /** The save state, shown in the bar of every page. */
  saveState: ReactNode
}

export const App = ({ units, saveState }: AppProps) => (
  <Units value={units}>
    <SaveSlot value={saveState}>
      <Router hook={useHashLocation}>
        <Pages />
      </Router>
    </SaveSlot>
  </Units>
)

function Pages() {
  const [address] = useLocation()
  const alone = (page: ReactNode) => (
    <ErrorBoundary at={address}>
      <Suspense fallback={null}>{page}</Suspense>
    </ErrorBoundary>
  )
  const framed = (page: ReactNode) => <Frame>{alone(page)}</Frame>
  return (
    <Switch>
      <Route path="/">
        <Redirect to="/jobs" replace />
      </Route>
      {ROUTES.map(({ path, page: PageOf, bare }) => (
        <Route key={path} path={path}>
          {(params) => (bare ? alone : framed)(<PageOf params={params} />)}
        </Route>
      ))}
      <Route>{framed(<NotFoundPage address={address} />)}</Route>
    </Switch>
  )
}
