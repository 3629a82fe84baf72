/** Versions of one subject that two devices made apart: all of them, and the joining by the one a person keeps. */
import type { FactKind } from '../domain/records/kinds'
import { readable } from '../domain/records/read-fact'
import type { AnyFact } from '../domain/records/read-fact'
import type { Id } from '../domain/records/scalars'
import { newFact } from '../domain/records/write'
import type { AppRepository } from './app-repository'
import type { AppState } from './app-store'

export type Joinable = Extract<FactKind, 'part' | 'lot' | 'rules' | 'client'>

export interface Head {
  readonly fact: AnyFact
  /** What it says, a client's personal data in place of their hash. */
  readonly fields: Readonly<Record<string, unknown>>
}

/** @returns none where fewer than two versions stand */
export async function headsApart(repository: AppRepository, kind: Joinable, subject: Id): Promise<readonly Head[]> {
  const facts = readable(await repository.headsOf(kind, subject)) as readonly AnyFact[] // of one kind: the index says so
  if (facts.length < 2) return []
  return Promise.all(
    facts.map(async (fact) => {
      if (fact.kind !== 'client') return { fact, fields: fact.body }
      const { personal, ...rest } = fact.body
      return { fact, fields: { ...(await repository.personal(personal))?.fields, ...rest } }
    }),
  )
}

/** Keeps one of them as the version that follows them all; the others stay in the record. */
export const joinHeads = ({ write }: Pick<AppState, 'write'>, heads: readonly Head[], kept: Head): Promise<boolean> =>
  write((said) => {
    const { kind, subject, body } = kept.fact
    const parents = heads.map(({ fact }) => fact.hash)
    const reason = `kept of ${heads.length} versions made apart: the one of ${kept.fact.by}`
    return { facts: [newFact(said, kind, subject, body, { parents, reason }) as AnyFact] }
  })
