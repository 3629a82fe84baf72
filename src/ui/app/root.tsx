/** What a person sees first: the start page while no book is open, else the app; and the states that stop both. */
import { Suspense, lazy, useState } from 'react'
import type { TakeUpdate } from './offline'
import { Button } from '../controls/button'
import { Notice } from '../controls/notice'
import { StartPage } from '../start/start-page'
import { backupWords } from '../words/backup-words'
import { repositoryWords } from '../words/repository-words'
import { App } from './app'
import { SaveState } from './save-state'
import { useApp } from './use-app'
import { useUnloadGuard } from './use-unload-guard'

const Autosave = lazy(() => import('./autosave'))

export interface Offer {
  /** A newer build waits; taking it reloads the page. Offered, never forced. */
  readonly take: TakeUpdate
}

export function Root({ offer, today }: { offer: Offer | null; today: () => string }) {
  const book = useApp((s) => s.book)
  const state = useApp((s) => s.repositoryState)
  const [later, setLater] = useState(false)
  return (
    <>
      {book === null || state.kind === 'open' ? null : <Notice level="stop">{repositoryWords(state)}</Notice>}
      {offer === null || later ? null : (
        <Notice level="note">
          A newer version of the app is ready.{' '}
          <Button kind="text" onClick={offer.take}>
            Take it now
          </Button>{' '}
          <Button kind="text" onClick={() => setLater(true)}>
            Later
          </Button>
        </Notice>
      )}
      {book === null ? <StartPage /> : <OpenApp today={today} />}
    </>
  )
}

function OpenApp({ today }: { today: () => string }) {
  const units = useApp((s) => s.shelf.rules.units)
  const save = useApp((s) => s.save)
  const notSaved = useApp((s) => s.notSaved)
  useUnloadGuard(notSaved !== null)
  const saveAgain = useApp((s) => s.saveAgain)
  const backup = useApp((s) => s.backup)
  const book = useApp((s) => s.book)
  // Made anew, a field has nothing that it could take back.
  const forgettings = useApp((s) => s.forgettings)
  return (
    <>
      <App
        key={forgettings}
        units={units}
        saveState={
          <SaveState
            state={notSaved ?? save}
            backup={book === 'demo' ? 'demo shop' : backupWords(backup, today())}
            onAgain={() => void saveAgain()}
          />
        }
      />
      {book === 'demo' ? null : (
        <Suspense>
          <Autosave />
        </Suspense>
      )}
    </>
  )
}
