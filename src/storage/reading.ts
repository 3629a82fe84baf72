/** Everything a repository answers without writing. Lists come row by row: one row that does not read spoils no other. */
import type { Repository } from '../domain/ports'
import { readFact } from '../domain/records/read-fact'
import type { FactOf, ReadFact } from '../domain/records/read-fact'
import type { FactKind } from '../domain/records/kinds'
import type { Id } from '../domain/records/scalars'
import type { ArrowRow, JobRow, LotRow } from '../domain/records/view-rules'
import type { Book, FactRow, JobViewRow } from './book'
import { jobEvents } from './job-story'
import { meta, tallyOf } from './meta'
import { findByWords } from './find-by-words'
import { recordOf } from './rows'

type Answers<J extends JobRow, A extends ArrowRow, L extends LotRow> = Pick<
  Repository<J, A, L>,
  | 'eventsOfJob'
  | 'fact'
  | 'facts'
  | 'versionsOf'
  | 'headsOf'
  | 'headsOfKind'
  | 'findSubjects'
  | 'personal'
  | 'photo'
  | 'jobViews'
  | 'jobView'
  | 'jobViewsOf'
  | 'findJobs'
  | 'arrowViews'
  | 'arrowViewsOfLot'
  | 'lotsOnShelf'
  | 'lotsOfPart'
  | 'lotView'
  | 'tally'
  | 'backupState'
>

const there = <T>(rows: readonly (T | undefined)[]): T[] => rows.filter((row) => row !== undefined)

const LIST_LIMIT = 200 // rows a list shows before it asks to narrow the search

const read = (row: FactRow): ReadFact => readFact(recordOf(row))
/** Rows of one kind hold facts of that kind: the index says so. */
const readAs = <K extends FactKind>(row: FactRow) => read(row) as ReadFact<FactOf<K>>
const shown = <J extends JobRow>(row: JobViewRow): J => {
  const { standsOn: _, ...view } = row
  return view as unknown as J // what the view rules made is what they get back
}

export function reading<J extends JobRow, A extends ArrowRow, L extends LotRow>(book: Book): Answers<J, A, L> {
  const headFacts = async (rows: readonly { readonly heads: readonly string[] }[]) =>
    there(await book.facts.bulkGet(rows.flatMap((row) => row.heads)))

  const headsOfLots = async (lots: readonly LotRow[]) =>
    there(await book.heads.bulkGet(lots.map(({ id }): [string, Id] => ['lot', id])))
  /** Ids are in the order in which the lots were received. */
  const newestOf = (part: Id) => book.heads.where('of').equals(part).last()

  return {
    eventsOfJob: (job) => jobEvents(book, job),
    fact: async (hash) => {
      const row = await book.facts.get(hash)
      return row && read(row)
    },
    facts: async (hashes) => (await book.facts.bulkGet([...hashes])).map((row) => row && read(row)),
    versionsOf: async <K extends FactKind>(kind: K, subject: Id) => {
      const rows = await book.facts.where('[kind+subject]').equals([kind, subject]).toArray()
      return rows.toSorted((a, b) => (a.at < b.at || (a.at === b.at && a.hash < b.hash) ? -1 : 1)).map(readAs<K>)
    },
    headsOf: async <K extends FactKind>(kind: K, subject: Id) => {
      const row = await book.heads.get([kind, subject])
      return row ? (await headFacts([row])).map(readAs<K>) : []
    },
    headsOfKind: async <K extends FactKind>(kind: K) =>
      (await headFacts(await book.heads.where('kind').equals(kind).toArray())).map(readAs<K>),
    findSubjects: async (kind, words, limit = LIST_LIMIT) => {
      const keys = await findByWords(book.heads, words)
      return keys
        .filter(([of]) => of === kind)
        .slice(0, limit)
        .map(([, subject]) => subject)
    },
    personal: (hash) => book.personal.get(hash),
    photo: (hash) => book.photos.get(hash),

    jobViews: async (limit = LIST_LIMIT) =>
      (await book.jobView.orderBy('updated').reverse().limit(limit).toArray()).map(shown<J>),
    jobView: async (job) => {
      const row = await book.jobView.get(job)
      return row && shown<J>(row)
    },
    jobViewsOf: async (subject) => (await book.jobView.where('standsOn').equals(subject).toArray()).map(shown<J>),
    findJobs: async (words, limit = LIST_LIMIT) => {
      if (words.length === 0) {
        const rows = await book.jobView.orderBy('updated').reverse().limit(limit).toArray()
        return { jobs: rows.map(shown<J>), of: await book.jobView.count() }
      }
      // Ids are in the order in which the jobs were opened.
      const ids = (await findByWords(book.jobView, words)).toSorted((a, b) => (a > b ? -1 : 1))
      const rows = await book.jobView.bulkGet(ids.slice(0, limit))
      return { jobs: there(rows).map(shown<J>), of: ids.length }
    },
    arrowViews: async (job) => (await book.arrowView.where('job').equals(job).toArray()) as A[],
    arrowViewsOfLot: async (lot) => (await book.arrowView.where('lot').equals(lot).toArray()) as A[],
    lotsOnShelf: async () => {
      const views = await book.lotView.where('onShelf').equals(1).toArray()
      const inStock = await headsOfLots(views)
      const stocked = new Set(inStock.flatMap((row) => row.of))
      const parts = (await book.heads.orderBy('of').uniqueKeys()) as Id[]
      const newest = await Promise.all(parts.filter((part) => !stocked.has(part)).map(newestOf))
      const lots = [...inStock, ...there(newest)]
      views.push(...there(await book.lotView.bulkGet(there(newest).map(({ subject }) => subject))))
      return { lots: (await headFacts(lots)).map(readAs<'lot'>), views: views as L[] }
    },
    lotsOfPart: async (part) => (await book.heads.where('of').equals(part).primaryKeys()).map(([, subject]) => subject),
    lotView: async (lot) => (await book.lotView.get(lot)) as L | undefined,

    tally: () => tallyOf(book),
    backupState: async () => {
      const { facts, events } = await tallyOf(book)
      const backup = await meta(book, 'backup')
      return { at: backup?.at ?? null, lacks: facts + events - (backup?.rows ?? 0) }
    },
  }
}
