/**
 * The tables of a book: facts and events as they were hashed, personal data and photos apart, views for
 * lists. Writes are strict: the browser answers only when the disk has.
 */
import { Dexie } from 'dexie'
import type { Table } from 'dexie'
import type { Event } from '../domain/records/event'
import type { Fact } from '../domain/records/fact'
import type { Personal } from '../domain/records/personal'
import type { Photo } from '../domain/records/photo'
import type { Hash, Id } from '../domain/records/scalars'
import type { ArrowRow, JobRow, LotRow } from '../domain/records/view-rules'
import { lotsOffTheShelf } from './version-steps'

/** The number of the tables below. A book that says a higher one was written by a later app and is not written to. */
export const SCHEMA = 3

/** Real and invented records never share a database. */
export const BOOKS = { shop: 'grainwright-shop', demo: 'grainwright-demo' } as const

/** `lots` is an index only: which lots the record says something about. It is not part of the record. */
export type FactRow = Fact & { readonly lots: readonly Id[] }
export type EventRow = Event & { readonly lots: readonly Id[] }
export interface HeadRow {
  readonly kind: string
  readonly subject: Id
  readonly heads: readonly Hash[]
  readonly words: readonly string[]
  readonly standsOn: readonly Hash[]
  /** The subjects it is part of: a lot's part. */
  readonly of: readonly Id[]
}
/** A record that an import brings, waiting to be looked at and added. */
export type StagedRow = { readonly hash: Hash } & (
  | { readonly kind: 'event'; readonly record: EventRow }
  | { readonly kind: 'fact'; readonly record: FactRow }
  | { readonly kind: 'personal'; readonly record: Personal }
  | { readonly kind: 'photo'; readonly record: Photo }
)
/** `standsOn` names what the view must be made again for: subjects and personal data. */
export type JobViewRow = JobRow & { readonly standsOn: readonly string[] }
export interface MetaRow {
  readonly key: 'schema' | 'tally' | 'imports' | 'backup' | 'backupFile'
  readonly value: unknown
}

/** Another IndexedDB than the browser's own, for tests. */
export interface Engine {
  readonly indexedDB?: IDBFactory
  readonly IDBKeyRange?: typeof IDBKeyRange
}

export class Book extends Dexie {
  declare facts: Table<FactRow, Hash>
  declare events: Table<EventRow, Hash>
  declare personal: Table<Personal, Hash>
  declare photos: Table<Photo, Hash>
  declare meta: Table<MetaRow, string>
  declare forgotten: Table<{ readonly hash: Hash }, Hash>
  declare staged: Table<StagedRow, Hash>
  declare heads: Table<HeadRow, [string, Id]>
  declare jobView: Table<JobViewRow, Id>
  declare arrowView: Table<ArrowRow, Id>
  declare lotView: Table<LotRow, Id>

  constructor(name: string, options: Engine = {}) {
    super(name, { ...options, autoOpen: false, chromeTransactionDurability: DURABILITY, cache: 'disabled' })
    this.version(1).stores({
      facts: 'hash,[kind+subject],*lots',
      events: 'hash,[log+seq],job,[job+arrow],command,*lots',
      personal: 'hash',
      photos: 'hash',
      meta: 'key',
      forgotten: 'hash',
      staged: 'hash,kind',
      heads: '[kind+subject],kind,*words,*standsOn',
      jobView: 'id,updated,*words,*standsOn,*lots',
      arrowView: 'id,job,lot',
      lotView: 'id',
    })
    this.version(2)
      .stores({ heads: '[kind+subject],kind,*words,*standsOn,*of', lotView: 'id,onShelf', staged: 'hash,[kind+hash]' })
      .upgrade(lotsOffTheShelf)
    this.version(SCHEMA).stores({ events: 'hash,[log+seq],job,command,*lots' }) // an index that nobody asked is gone
  }
}

/** `relaxed` exists for one check only: that the power-cut test sees the loss it guards against. No app is built with it. */
const DURABILITY =
  typeof GRAINWRIGHT_DURABILITY !== 'undefined' && GRAINWRIGHT_DURABILITY === 'relaxed' ? 'relaxed' : 'strict'
