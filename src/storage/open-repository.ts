/** Opens a book as the repository that the domain asks for. */
import type { Change, Ids, Repository, RepositoryState } from '../domain/ports'
import type { ArrowRow, JobRow, LotRow, ViewRules } from '../domain/records/view-rules'
import { archive } from './archive'
import { Book } from './book'
import type { Engine } from './book'
import { browserSurroundings } from './browser-surroundings'
import { gateway } from './gateway'
import { isShorter, openBook } from './open-book'
import { reading } from './reading'
import { restoreFromCopy } from './second-copy/restore-from-copy'
import { settle } from './settle'
import type { Surroundings } from './surroundings'

export interface RepositoryOptions<J extends JobRow, A extends ArrowRow, L extends LotRow> {
  /** The database's name: one of `BOOKS`. */
  readonly name: string
  readonly rules: ViewRules<J, A, L>
  readonly ids: Ids
  readonly surroundings?: Surroundings
  readonly engine?: Engine
}

/** @throws when the database cannot be opened at all: blocked by the browser, or by another tab's older app */
export async function openRepository<J extends JobRow, A extends ArrowRow, L extends LotRow>(
  options: RepositoryOptions<J, A, L>,
): Promise<Repository<J, A, L>> {
  const { name, ids, rules, surroundings = browserSurroundings(name) } = options
  const book = new Book(name, options.engine)
  const watchers = new Set<Parameters<Repository<J, A, L>['watch']>[0]>()
  const seen = {
    state: (state: RepositoryState) => watchers.forEach((watcher) => watcher.state?.(state)),
    change: (change: Change, by: 'this tab' | 'another tab' = 'this tab') =>
      watchers.forEach((watcher) => watcher.change?.(change as Change<J>, by)),
  }
  const plain = rules as unknown as ViewRules // the rules' own views go in and come out; between, only their indexes count
  const opening = openBook(book, () => ids.id(), surroundings.outside)
  const ready = opening.then(
    () => surroundings.freshLog?.(),
    () => undefined, // who opens the book hears of it
  )
  const gate = gateway(book, plain, surroundings, seen, ready)

  book.on('versionchange', () => {
    book.close({ disableAutoOpen: true }) // a later app is waiting; this tab must not open it again behind its back
    gate.setState({ kind: 'closed' })
    return false
  })
  book.on('close', () => {
    if (gate.state().kind === 'open') gate.setState({ kind: 'failed', detail: 'the browser closed the database' })
  })
  surroundings.announcer.hear((change) => seen.change(change, 'another tab'))
  const opened = await opening
  if (opened.kind === 'missing') await ready
  const begun = opened.kind === 'missing' ? await restored(book, plain, opened, surroundings) : opened
  if (gate.state().kind === 'open') gate.setState(begun) // or another tab, or the browser, has closed it meanwhile

  surroundings.ballast?.layLater()

  return {
    ...reading<J, A, L>(book),
    archive: archive(book, plain, surroundings, gate, () => ids.id()),
    commit: gate.commit,
    state: gate.state,
    watch: (watcher) => {
      watchers.add(watcher)
      return () => watchers.delete(watcher)
    },
    acceptLoss: async () => {
      const state = gate.state()
      if (state.kind !== 'missing') return
      surroundings.outside.forget(name)
      surroundings.outside.write(name, state.found)
      gate.setState({ kind: 'open' })
    },
    close: () => {
      gate.stop()
      surroundings.announcer.close()
      book.close()
    },
  }
}

/** What is missing comes back from the device's second copy, as far as it reaches. */
async function restored(
  book: Book,
  rules: ViewRules,
  missing: Extract<RepositoryState, { kind: 'missing' }>,
  { secondCopy, outside }: Surroundings,
): Promise<RepositoryState> {
  const settled = await settle(book, rules).catch(() => undefined)
  const added = await restoreFromCopy(book, rules, secondCopy).catch(() => undefined)
  const tally = added?.tally ?? settled
  if (!tally) return missing
  if (isShorter(tally, missing.remembered)) return { ...missing, found: tally }
  outside.forget(book.name)
  outside.write(book.name, tally)
  return { kind: 'open', restored: true }
}
