/**
 * The one way records are written. It checks a command, writes it in one strict transaction, and waits no longer than the
 * watchdog allows; after any failure it writes nothing more until the book has been recovered.
 */
import type { Change, NotSavedReason, Receipt, Repository, RepositoryState } from '../domain/ports'
import type { Id } from '../domain/records/scalars'
import type { ViewRules } from '../domain/records/view-rules'
import { SCHEMA } from './book'
import type { Book } from './book'
import { checkCommand } from './check-command'
import { NewerBook } from './fence'
import { jobMemory } from './job-memory'
import { isShorter } from './open-book'
import type { Surroundings } from './surroundings'
import { writeCommand } from './write-command'
import type { Written } from './write-command'

/** Milliseconds without a sign from the disk after which a builder is told that a value is not saved. */
export const WATCHDOG = 5000

export interface Gateway {
  readonly commit: Repository['commit']
  /** Anything else that writes records, with no watchdog: an import takes its time. Allowed also while records are missing. */
  readonly write: (command: Id, work: () => Promise<Written>) => Promise<Receipt>
  readonly state: () => RepositoryState
  readonly setState: (state: RepositoryState) => void
  /** The book is closed by this tab itself: nothing that still waits is written, and nobody is told. */
  readonly stop: () => void
}

/**
 * How much may be written before a fresh log is begun, in readings. A browser begins another by itself when its log is full, after some
 * nine hundred, and may do it in the midst of a save: the reading then lies in the old log, which nothing forces to the disk, and
 * only the end of its transaction in the new one. A power cut within some 30 ms of that takes it.
 */
const LOG_TAKES = 250

/** Two hundred and fifty readings are ten versions of a sheet, or half a dozen pictures. */
const sizeOf = ({ rows }: Written): number =>
  rows === undefined
    ? LOG_TAKES
    : rows.events.length + 25 * rows.facts.length + 40 * (rows.personal.length + rows.photos.length)

/** @param begun resolves when the first write may be made */
export function gateway(
  book: Book,
  rules: ViewRules,
  surroundings: Surroundings,
  seen: { readonly state: (state: RepositoryState) => void; readonly change: (change: Change) => void },
  begun: Promise<void>,
): Gateway {
  let ready = begun
  let inLog = 0
  const underWay = new Set<Promise<Written>>()
  let state: RepositoryState = { kind: 'open' }
  const memory = jobMemory()
  const setState = (next: RepositoryState) => {
    state = next
    seen.state(next)
  }

  const isWritable = () => state.kind === 'open' || state.kind === 'missing'
  const notNow = (command: Id) => notSaved(command, whyNot(state), `the book is ${state.kind}`)

  function saved(command: Id, written: Written): Receipt {
    if (state.kind === 'missing' && !isShorter(written.tally, state.remembered)) setState({ kind: 'open' })
    if (state.kind !== 'missing') surroundings.outside.write(book.name, written.tally)
    if (!written.again) {
      if (written.change.forgotten) surroundings.secondCopy?.forgetPeople()
      if (written.rows) surroundings.secondCopy?.append(written.rows)
      surroundings.announcer.tell(written.change)
      seen.change(written.change)
    }
    return { kind: 'saved', command, again: written.again, events: written.events }
  }

  function failed(command: Id, error: unknown): Receipt {
    if (error instanceof NewerBook) setState({ kind: 'newer-app', stored: error.stored, known: SCHEMA })
    else if (state.kind === 'open' || state.kind === 'missing') {
      surroundings.outside.fail(book.name, String(error))
      setState({ kind: 'failed', detail: String(error) })
    }
    return notSaved(command, whyNot(state), String(error))
  }

  async function write(command: Id, work: () => Promise<Written>): Promise<Receipt> {
    await ready
    if (!isWritable()) return notNow(command) // it was closed, or a write before this one has failed, while this one waited
    const writing = work()
    underWay.add(writing)
    const over = () => underWay.delete(writing)
    writing.then(over, over)
    return writing.then(
      async (written) => {
        if (!written.again) await beginLogAfter(sizeOf(written))
        return saved(command, written)
      },
      (error: unknown) => failed(command, error),
    )
  }

  /** What is written later waits for the fresh log; what has filled one by itself is not said to be saved before it. */
  async function beginLogAfter(size: number): Promise<void> {
    inLog += size
    if (inLog < LOG_TAKES) return
    inLog = 0
    ready = Promise.allSettled([ready, ...underWay]).then(() => surroundings.freshLog?.())
    if (size >= LOG_TAKES) await ready
  }

  return {
    state: () => state,
    setState,
    stop: () => (state = { kind: 'closed' }),
    write,
    commit(command, progress) {
      checkCommand(command)
      if (state.kind !== 'open') return Promise.resolve(notNow(command.id))
      return new Promise((answer) => {
        // A late answer finds the promise settled; what it did to the book is told to the watchers all the same.
        const watch = () =>
          surroundings.after(WATCHDOG, () =>
            answer(notSaved(command.id, 'timeout', `no answer from the disk in ${WATCHDOG / 1000} s`)),
          )
        let callOff = watch()
        const alive = (share: number) => {
          callOff()
          callOff = watch()
          progress?.(share)
        }
        void write(command.id, () => writeCommand(book, rules, command, memory, alive)).then((receipt) => {
          callOff()
          answer(receipt)
        })
      })
    },
  }
}

const notSaved = (command: Id, why: NotSavedReason, detail: string): Receipt => ({
  kind: 'not-saved',
  command,
  why,
  detail,
})

const whyNot = (state: RepositoryState): NotSavedReason =>
  state.kind === 'newer-app' ? 'newer-app' : state.kind === 'closed' ? 'closed' : 'stopped'
