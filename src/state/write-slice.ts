/** The writing of the store: one command after the other, what could not be saved before anything newer. */
import type { Change, Command, Ids } from '../domain/ports'
import type { Said } from '../domain/records/write'
import type { AppRepository } from './app-repository'
import type { AppState, Ports } from './app-store'
import type { GivenChanges } from './given-changes'
import type { inTurns } from './in-turn'
import { openJob, openJobWith } from './open-job'
import type { NotSaved } from './unsaved'
import { isAboutForgotten, without, withRefused } from './unsaved'
import type { Writing } from './writing'

export interface WriteSlice {
  /** What waits to be saved, whatever `save` says of the newest. */
  readonly notSaved: NotSaved | null
  /** Writes what `make` brings in one command; true once it is on the disk. Never throws for a failed write. */
  readonly write: (make: (said: Said, ids: Ids) => Writing, progress?: (share: number) => void) => Promise<boolean>
  /** As `write`, from what stands in the book when its turn has come: two changes of one record follow one another. */
  readonly writeFrom: <T>(
    read: (repository: AppRepository) => Promise<T>,
    make: (read: T, said: Said, ids: Ids) => Writing,
  ) => Promise<boolean>
  /** Gives what was not saved once more, in the order of its asking; stops at the first that fails again. Every write does. */
  readonly saveAgain: () => Promise<boolean>
}

/** Its turns are those of the open job, which is brought up to date between the writes. */
export function writeSlice(
  ports: Ports,
  set: (change: Partial<AppState> | ((now: AppState) => Partial<AppState>)) => void,
  get: () => AppState,
  { inTurn, given }: { readonly inTurn: ReturnType<typeof inTurns>; readonly given: GivenChanges },
): WriteSlice & { readonly forgetUnsaved: (change: Change) => void } {
  let waiting = 0 // commands that have not had their turn yet

  const openBook = (): AppRepository => {
    const { repository } = get()
    if (repository === null) throw new Error('no book is open')
    return repository
  }

  /** One command, and what is open brought up to date with it. */
  async function give(repository: AppRepository, command: Command, progress?: (share: number) => void) {
    given.begin()
    const receipt = await repository.commit(command, progress)
    const { jobs, isAlone } = given.end()
    const { open } = get()
    if (receipt.kind === 'saved' && open !== null && (jobs.has(open.job.id) || receipt.again)) {
      const isPlain = isAlone && !receipt.again && command.facts === undefined
      const now = await (isPlain ? openJobWith(repository, open, receipt.events) : openJob(repository, open.job.id))
      if (repository === get().repository) set({ open: now })
    }
    return receipt
  }

  /** What waits is given first, so that nothing older comes after it; true once all of it is on the disk. */
  async function giveAll(repository: AppRepository, more: readonly Command[], progress?: (share: number) => void) {
    for (const command of [...(get().notSaved?.commands ?? []), ...more]) {
      if (repository !== get().repository) return false // the book it was asked of is closed
      const isNew = more.includes(command)
      if (!isNew && !get().notSaved?.commands.includes(command)) continue // of somebody who was forgotten meanwhile
      const receipt = await give(repository, command, isNew ? progress : undefined)
      if (repository !== get().repository) return false
      if (receipt.kind === 'not-saved') {
        const notSaved = withRefused(get().notSaved, more, receipt)
        set({ notSaved, save: notSaved })
        return false
      }
      if (get().notSaved !== null)
        set(({ notSaved }) => ({ notSaved: without(notSaved, ({ id }) => id === command.id) }))
    }
    if (waiting === 0) set({ save: { kind: 'saved', at: ports.clock.now() } })
    return true
  }

  /** Whatever else has its turn before it: from here on nothing says *Saved* until this is. */
  function givenInTurn(more: () => Promise<readonly Command[]>, progress?: (share: number) => void): Promise<boolean> {
    const repository = openBook()
    waiting += 1
    set({ save: { kind: 'saving' } })
    return inTurn(async () => {
      waiting -= 1
      const commands = await more().catch((error: unknown) => {
        set(({ notSaved }) => ({ save: notSaved ?? { kind: 'idle' } }))
        throw error
      })
      return giveAll(repository, commands, progress)
    })
  }

  const saidNow = (): Said => ({ by: get().builder, at: ports.clock.now() })
  const commandOf = (said: Said, writing: Writing): Command => ({ id: ports.ids.id(), ...said, ...writing })

  return {
    notSaved: null,
    write(make, progress) {
      const said = saidNow()
      const command = commandOf(said, make(said, ports.ids))
      return givenInTurn(() => Promise.resolve([command]), progress)
    },
    writeFrom(read, make) {
      const said = saidNow()
      return givenInTurn(async () => [commandOf(said, make(await read(openBook()), said, ports.ids))])
    },
    saveAgain: () => (get().notSaved === null ? Promise.resolve(true) : givenInTurn(() => Promise.resolve([]))),
    forgetUnsaved: (change) =>
      set(({ notSaved, save }) => {
        const left = without(notSaved, isAboutForgotten(change))
        return { notSaved: left, save: save.kind === 'not saved' ? (left ?? { kind: 'idle' }) : save }
      }),
  }
}
