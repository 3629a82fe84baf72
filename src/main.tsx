/** Composition root: opens the storage, makes the store, renders. The only file that sees every layer. */
import './zod-jitless'
import '@fontsource/b612/latin-400.css'
import '@fontsource/b612/latin-700.css'
import './ui/look/tokens.css'
import './ui/look/base.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import type { OpenScale } from './domain/bench/scale-source'
import type { BookName } from './state/app-repository'
import { createAppStore } from './state/app-store'
import { benchLocks } from './storage/bench-locks'
import { browserClock, browserIds } from './storage/browser-clock'
import { deviceMemory } from './storage/device-memory'
import type { TakeUpdate } from './ui/app/offline'
import { watchForUpdate } from './ui/app/offline'
import { Root } from './ui/app/root'
import { AppProvider } from './ui/app/use-app'

async function open(book: BookName) {
  const [{ BOOKS }, { openRepository }, { VIEW_RULES }] = await Promise.all([
    import('./storage/book'),
    import('./storage/open-repository'),
    import('./domain/job/view-rules'),
  ])
  const repository = await openRepository({ name: BOOKS[book], rules: VIEW_RULES, ids: browserIds })
  if (book === 'demo' && (await repository.tally()).events === 0) {
    const { fillDemo } = await import('./demo/fill-demo')
    await fillDemo(repository, browserClock.now())
  }
  return repository
}

const openScale: OpenScale = async (wish) =>
  wish.kind === 'demo'
    ? (await import('./demo/demo-scale')).demoScale()
    : (await import('./serial-scale')).serialScale(wish.settings, wish.again)

const openSearcher = async () => (await import('./workers/open-searcher')).openSearcher()

const benches = (book: BookName) => benchLocks(`grainwright-${book}`)

const memory = deviceMemory()
const store = createAppStore({ clock: browserClock, ids: browserIds, memory, open, openScale, openSearcher, benches })
const root = createRoot(document.getElementById('app')!)
const today = () => browserClock.now().slice(0, 10)

function render(take: TakeUpdate | null) {
  root.render(
    <StrictMode>
      <AppProvider store={store}>
        <Root offer={take === null ? null : { take }} today={today} />
      </AppProvider>
    </StrictMode>,
  )
}

const last = memory.recall('book')
if (last === 'shop' || last === 'demo') await store.getState().start(last)
render(null)
await watchForUpdate(render)
