/**
 * The storage of the app by itself in a page: the same gateway, rules and commands, without the screens. The harness asks
 * for things by `window.shop`; the app itself has no such handle.
 */
import { VIEW_RULES } from '@/domain/job/view-rules'
import type { Command, RepositoryState } from '@/domain/ports'
import { chained } from '@/domain/records/event'
import { personalOf } from '@/domain/records/personal'
import { photoOf } from '@/domain/records/photo'
import { readable } from '@/domain/records/read-fact'
import { newEvent, newFact } from '@/domain/records/write'
import { ballast } from '@/storage/ballast'
import { BOOKS, Book } from '@/storage/book'
import { browserIds } from '@/storage/browser-clock'
import { browserSurroundings } from '@/storage/browser-surroundings'
import { setMeta, tallyOf } from '@/storage/meta'
import { openRepository } from '@/storage/open-repository'
import { generate } from './generate'
import { contentOf, makeOldBook, spoilIndex } from './old-book'
import { storeOf, timings } from './timings'

const asked = new URLSearchParams(location.search)
const name = asked.get('book') ?? BOOKS.shop
const { secondCopy, freshLog, ...others } = browserSurroundings(name)
/** Planted faults: a page that keeps no second copy, and one that goes on in the old log. */
const surroundings = {
  ...others,
  ...(asked.get('copy') === 'none' || secondCopy === undefined ? {} : { secondCopy }),
  ...(asked.get('log') === 'old' || freshLog === undefined ? {} : { freshLog }),
}
const repository = await openRepository({ name, rules: VIEW_RULES, ids: browserIds, surroundings })
const states: RepositoryState['kind'][] = [repository.state().kind]
repository.watch({ state: (state) => states.push(state.kind) })

const LETTERS = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 .'
const now = () => new Date().toISOString()
const command = (parts: Pick<Command, 'events' | 'facts' | 'personal' | 'photos'>): Command => ({
  id: browserIds.id(),
  by: 'Ansa',
  at: now(),
  ...parts,
})

/** One cut weight. The value tells the reading apart from every other. */
const reading = (job: string, arrow: string, value: number) =>
  newEvent(
    'read',
    { job, arrow },
    {
      step: 'weigh cut shaft',
      reading: {
        point: 'cutWeight',
        value,
        unit: 'gr',
        raw: `${value}`,
        source: 'typed',
        stable: true,
        attempt: 1,
        scale: 'Scale 1',
        takenAt: now(),
      },
    },
  )
const read = (job: string, arrow: string, value: number) =>
  repository.commit(command({ events: [reading(job, arrow, value)] }))

const shop = {
  states: () => states,
  state: () => repository.state(),
  openJob: async () => {
    const job = browserIds.id()
    const receipt = await repository.commit(
      command({ events: [newEvent('opened', { job }, { kind: 'order', of: null })] }),
    )
    return receipt.kind === 'saved' ? job : Promise.reject(new Error(receipt.detail))
  },
  /** Saves one reading after another until the browser ends; `saved` hears of each that the gateway acknowledged. */
  readForEver: async (job: string, from: number, saved: (value: number) => void, early = false) => {
    const arrow = browserIds.id()
    for (let value = from; ; value++) {
      if (early) {
        saved(value) // the planted fault: saved is said before the disk has answered
        void read(job, arrow, value)
        await new Promise((go) => setTimeout(go))
        continue
      }
      const receipt = await read(job, arrow, value)
      if (receipt.kind !== 'saved') throw new Error(`not saved: ${receipt.detail}`)
      saved(value)
    }
  },
  /** Saves readings with pauses between, as several tabs would at once. Returns those acknowledged. */
  readSome: async (job: string, values: readonly number[], pauses: readonly number[], racing = false) => {
    const arrow = browserIds.id()
    const acknowledged: number[] = []
    for (const [i, value] of values.entries()) {
      await new Promise((go) => setTimeout(go, pauses[i]))
      if (racing) await raceIn(reading(job, arrow, value))
      const receipt = racing ? { kind: 'saved' } : await read(job, arrow, value)
      if (receipt.kind === 'saved') acknowledged.push(value)
    }
    return acknowledged
  },
  newClient: async (clientName: string) => {
    const personal = personalOf(browserIds.salt(), { name: clientName })
    const subject = browserIds.id()
    const fact = newFact({ by: 'Ansa', at: now() }, 'client', subject, { personal: personal.hash, consent: true })
    await repository.commit(command({ facts: [fact], personal: [personal] }))
    return subject
  },
  /** A new version of a client on top of the heads this tab sees. Returns its hash. */
  rename: async (subject: string, clientName: string) => {
    const parents = readable(await repository.headsOf('client', subject)).map((fact) => fact.hash)
    const personal = personalOf(browserIds.salt(), { name: clientName })
    const fact = newFact(
      { by: 'Ansa', at: now() },
      'client',
      subject,
      { personal: personal.hash, consent: true },
      { parents },
    )
    const receipt = await repository.commit(command({ facts: [fact], personal: [personal] }))
    return receipt.kind === 'saved' ? fact.hash : null
  },
  clientVersions: async (subject: string) => ({
    versions: readable(await repository.versionsOf('client', subject)).map(({ hash, parents }) => ({ hash, parents })),
    heads: readable(await repository.headsOf('client', subject)).map((fact) => fact.hash),
  }),
  /** Saves notes of a size until one is not saved. */
  notesUntilFull: async (job: string, letters: number, most: number) => {
    const acknowledged: string[] = []
    for (let n = 0; n < most; n++) {
      const text = () =>
        Array.from(crypto.getRandomValues(new Uint8Array(letters / 3)), (byte) => LETTERS[byte % 64]).join('')
      const note = personalOf(browserIds.salt(), { note: text(), more: text(), still: text() })
      const event = newEvent('noted', { job }, { step: 'call', note: note.hash })
      const receipt = await repository.commit(command({ events: [event], personal: [note] }))
      if (receipt.kind !== 'saved') return { acknowledged, why: receipt.why, detail: receipt.detail }
      acknowledged.push(note.hash)
    }
    return { acknowledged, why: null, detail: 'never full' }
  },
  notesThere: async (hashes: readonly string[]) => {
    const there = await Promise.all(hashes.map((hash) => repository.personal(hash)))
    return there.filter((note) => note !== undefined).length
  },
  layBallast: () => ballast(name).lay(),
  savePhoto: async (job: string) => {
    const photo = photoOf('image/jpeg', crypto.getRandomValues(new Uint8Array(20_000)))
    const event = newEvent('photographed', { job }, { step: 'call', photo: photo.hash })
    return repository.commit(command({ events: [event], photos: [photo] }))
  },
  recover: async () => {
    const { file, ...recovered } = await repository.archive.recover()
    return { ...recovered, bytes: file?.size }
  },
  backup: async () => {
    const pieces: Uint8Array<ArrayBuffer>[] = []
    const exported = await repository.archive.backUp(now(), (bytes) => void pieces.push(bytes))
    return { ...exported, text: await new Blob(pieces).text() }
  },
  /** Exports and lets every piece go at once, as a file on the disk takes it. */
  backupSize: async () => {
    let bytes = 0
    const start = performance.now()
    const { counts } = await repository.archive.backUp(now(), (piece) => void (bytes += piece.length))
    return { counts, megabytes: bytes / 1e6, ms: performance.now() - start }
  },
  check: async (text: string) => repository.archive.check(new Blob([text]).stream()),
  stage: async (text: string) => repository.archive.stage(new Blob([text]).stream()),
  addStaged: () => repository.archive.addStaged(),
  verify: () => repository.archive.verify(),
  acceptLoss: () => repository.acceptLoss(),
  jobs: () => repository.jobViews(),
  tally: () => repository.tally(),
  generate: (jobs: number, arrows: number, readings: number) => generate(repository.archive, jobs, arrows, readings),
  makeOldBook: (old: string) => makeOldBook(name, old),
  contentOf,
  spoilIndex,
  timings: (saves?: number) => timings(repository, saves),
  /** Opens as the app does: the list, the shelf, the rules. Gives how many lots it read. */
  start: async () => {
    const store = storeOf(repository)
    await store.getState().start('shop')
    return store.getState().shelf.lots.size
  },
  /** The values that are there, and every problem with the records of the whole book. */
  audit: async (job: string, whole = true) => {
    const { events, unread } = await repository.eventsOfJob(job)
    const values = events.flatMap((event) => (event.what === 'read' ? [event.body.reading.value] : []))
    const problems = whole ? (await repository.archive.verify()).problems : []
    return { values, unread: unread.length, problems, state: repository.state() }
  },
}

/** The planted fault of the tabs: looks where the log ends in one transaction and writes in another. */
async function raceIn(event: ReturnType<typeof reading>) {
  const book = new Book(name)
  await book.open()
  const tally = await tallyOf(book)
  const [made] = chained(tally.head, { id: browserIds.id(), by: 'Ansa', at: now(), events: [event] })
  await new Promise((go) => setTimeout(go, 5))
  await book.transaction('rw', book.events, book.meta, async () => {
    await book.events.add({ ...made!, lots: [] })
    await setMeta(book, 'tally', {
      ...tally,
      events: tally.events + 1,
      head: { log: made!.log, seq: made!.seq, hash: made!.hash },
    })
  })
  book.close()
}

declare global {
  interface Window {
    shop: typeof shop
    saved: (value: number) => void
    bookIsOpen?: () => void
  }
}
window.shop = shop
window.bookIsOpen?.()
