/**
 * The one store. It holds what is open and says what was saved; every rule is a domain function it names, and everything
 * it keeps for good goes through the repository. Clock, ids and repository are handed in.
 */
import { createStore } from 'zustand/vanilla'
import type { OpenScale } from '../domain/bench/scale-source'
import type { Job } from '../domain/job/job'
import type { JobView } from '../domain/job/job-view'
import type { BenchLocks, BackupState, Clock, DeviceMemory, Ids, RepositoryState } from '../domain/ports'
import type { Personal } from '../domain/records/personal'
import { personalOf } from '../domain/records/personal'
import type { Id } from '../domain/records/scalars'
import { newEvent } from '../domain/records/write'
import type { Searcher } from '../domain/search/searcher'
import { lotsNamed } from '../domain/stock/lots-named'
import { EMPTY_SHELF } from '../domain/stock/shelf'
import type { AppRepository, BookName } from './app-repository'
import { benchHolder } from './bench-hold'
import type { BenchHold } from './bench-hold'
import { givenChanges } from './given-changes'
import { inTurns } from './in-turn'
import { LISTED, listWith } from './job-list'
import type { OpenJob } from './open-job'
import { openJob } from './open-job'
import type { SaveState } from './save-state'
import type { ScaleSlice } from './scale-slice'
import { scaleSlice } from './scale-slice'
import type { ShelfSlice } from './shelf-slice'
import { shelfSlice } from './shelf-slice'
import type { WriteSlice } from './write-slice'
import { writeSlice } from './write-slice'

export interface Ports {
  readonly clock: Clock
  readonly ids: Ids
  readonly memory: DeviceMemory
  open(book: BookName): Promise<AppRepository>
  openScale: OpenScale
  /** Who works at which bench of a book, over all tabs. */
  benches(book: BookName): BenchLocks
  /** Starts the thread that searches; asked for with the first search. */
  openSearcher(): Promise<Searcher>
}

export interface AppState extends ScaleSlice, ShelfSlice, WriteSlice {
  readonly book: BookName | null
  readonly repository: AppRepository | null
  readonly repositoryState: RepositoryState
  readonly save: SaveState
  readonly backup: BackupState
  readonly builder: string
  readonly jobs: readonly JobView[]
  readonly open: OpenJob | null
  /** How often another tab forgot somebody whom this one may show: what was typed here may hold the name, and must go. */
  readonly forgettings: number
  /** Of the bench this tab shows; null while it shows none. */
  readonly benchHold: BenchHold | null

  readonly start: (book: BookName) => Promise<void>
  readonly leave: () => void
  readonly setBuilder: (name: string) => void
  readonly refreshJobs: () => Promise<void>
  /** Opens a new job and returns its id, or null when it could not be saved. */
  readonly newJob: (kind: Job['kind'], of?: Job['of']) => Promise<Id | null>
  readonly loadJob: (id: Id) => Promise<void>
  /** Of the job that is open; another is left alone. */
  readonly reloadJob: (id: Id) => Promise<void>
  /** Until all that was asked for has had its turn, and what is open stands as it then is. */
  readonly whenSaved: () => Promise<void>
  /** A note as a personal row, to be named by its hash. */
  readonly note: (text: string) => Personal
  readonly holdBench: (job: Id, take?: 'ask' | 'take over') => Promise<void>
  readonly leaveBench: () => void
  /** The present moment, UTC, ISO 8601. */
  readonly now: () => string
  readonly newId: () => Id
  readonly searcher: () => Promise<Searcher>
}

export type AppStore = ReturnType<typeof createAppStore>

export function createAppStore(ports: Ports) {
  return createStore<AppState>()((set, get) => {
    // A reading of the open job that ended after a later write would put back what stood before.
    const inTurn = inTurns()
    let wanted: Id | null = null
    let listChanges = 0
    let stopWatching = () => {}
    const holder = benchHolder((benchHold) => set({ benchHold }))
    let searching: Promise<Searcher> | undefined

    /** In turn with the writes; dropped where the builder has gone on to another job meanwhile. */
    const reloadJob = (id: Id): Promise<void> =>
      inTurn(async () => {
        const { repository } = get()
        if (repository === null || wanted !== id) return
        const open = await openJob(repository, id)
        if (open !== null) await get().showLots(lotsNamed(open.job, open.sheets.values()))
        if (wanted === id) set({ open })
      })

    const given = givenChanges()
    const { forgetUnsaved, ...writes } = writeSlice(ports, set, get, { inTurn, given })

    return {
      book: null,
      repository: null,
      repositoryState: { kind: 'open' },
      save: { kind: 'idle' },
      backup: { at: null, lacks: 0 },
      builder: ports.memory.recall('builder') ?? 'Builder',
      jobs: [],
      open: null,
      forgettings: 0,
      benchHold: null,

      async start(book) {
        stopWatching()
        get().repository?.close()
        const repository = await ports.open(book)
        ports.memory.keep('book', book)
        stopWatching = repository.watch({
          state: (repositoryState) => set({ repositoryState }),
          change: (change, by) => {
            const { open } = get()
            const { saved } = change
            listChanges += 1
            if (saved === undefined) void get().refreshJobs()
            else
              set(({ jobs, backup }) => ({
                jobs: listWith(jobs, saved.jobs),
                backup: { ...backup, lacks: backup.lacks + saved.records },
              }))
            if (change.subjects.length > 0) void get().refreshShelf([...change.subjects, ...change.lots])
            else if (change.lots.length > 0) void get().refreshLots(change.lots)
            if (by === 'this tab' && given.hear(change)) return
            if (change.forgotten) forgetUnsaved(change)
            const isOpen = open !== null && change.jobs.includes(open.job.id)
            if (change.forgotten && by === 'another tab' && (isOpen || open === null))
              set(({ forgettings }) => ({ forgettings: forgettings + 1 }))
            if (isOpen) void reloadJob(open.job.id)
          },
        })
        set({
          book,
          repository,
          repositoryState: repository.state(),
          save: { kind: 'idle' },
          notSaved: null,
          open: null,
        })
        await Promise.all([get().refreshJobs(), get().refreshShelf()])
      },
      leave() {
        stopWatching()
        wanted = null
        get().repository?.close()
        ports.memory.keep('book', '')
        set({
          book: null,
          repository: null,
          jobs: [],
          shelf: EMPTY_SHELF,
          open: null,
          save: { kind: 'idle' },
          notSaved: null,
        })
      },
      setBuilder(name) {
        ports.memory.keep('builder', name)
        set({ builder: name })
      },
      async refreshJobs() {
        const { repository } = get()
        if (repository === null) return
        const before = listChanges
        const [jobs, backup] = await Promise.all([repository.jobViews(LISTED), repository.backupState()])
        if (repository !== get().repository) return
        if (listChanges === before) set({ jobs, backup })
        else await get().refreshJobs()
      },
      ...shelfSlice(set, get),
      async newJob(kind, of = null) {
        const id = ports.ids.id()
        const saved = await get().write(() => ({ events: [newEvent('opened', { job: id }, { kind, of })] }))
        return saved ? id : null
      },
      loadJob(id) {
        wanted = id
        return reloadJob(id)
      },
      reloadJob,
      ...writes,
      whenSaved: () => inTurn(() => Promise.resolve()),
      ...scaleSlice(ports, set, get),
      async holdBench(job, take) {
        const { book } = get()
        if (book !== null) await holder.hold(ports.benches(book), job, take)
      },
      leaveBench: () => holder.leave(),
      note: (text) => personalOf(ports.ids.salt(), { text }),
      now: () => ports.clock.now(),
      newId: () => ports.ids.id(),
      searcher: () => (searching ??= ports.openSearcher()),
    }
  })
}
