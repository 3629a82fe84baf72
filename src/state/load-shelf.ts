/** Reads parts, lots and rules as they stand. What cannot be read is left out here and named by the integrity check. */
import { readable } from '../domain/records/read-fact'
import type { AnyFact, FactOf, ReadFact } from '../domain/records/read-fact'
import type { Id } from '../domain/records/scalars'
import { RULES_SUBJECT } from '../domain/shop/rules-subject'
import { DEFAULT_RULES } from '../domain/shop/rules'
import type { LotView } from '../domain/stock/lot-view'
import type { Shelf, Standing } from '../domain/stock/shelf'
import type { AppRepository } from './app-repository'

/** One standing record a subject; of several heads the one with the least hash stands and the others are its rivals. */
function standing<F extends AnyFact>(facts: readonly F[]): Map<string, Standing<F['body']>> {
  const bySubject = new Map<string, F[]>()
  for (const fact of facts) bySubject.set(fact.subject, [...(bySubject.get(fact.subject) ?? []), fact])
  return new Map(
    [...bySubject].map(([id, heads]) => {
      const [first, ...others] = heads.toSorted((a, b) => (a.hash < b.hash ? -1 : 1))
      return [id, { id, hash: first!.hash, body: first!.body, rivals: others.map((each) => each.hash) }]
    }),
  )
}

export async function loadShelf(repository: AppRepository): Promise<Shelf> {
  const [parts, lots, lotViews, rules] = await Promise.all([
    repository.headsOfKind('part'),
    repository.headsOfKind('lot'),
    repository.lotViews(),
    repository.headsOf('rules', RULES_SUBJECT),
  ])
  const heads = readable(rules as readonly ReadFact<FactOf<'rules'>>[])
  return {
    parts: standing(readable(parts)),
    lots: standing(readable(lots)),
    lotViews: new Map(lotViews.map((view) => [view.id, view])),
    rules: heads.toSorted((a, b) => (a.hash < b.hash ? -1 : 1))[0]?.body ?? DEFAULT_RULES,
    rulesHeads: heads.map((fact) => fact.hash),
  }
}

const FEW = 40 // subjects; more are read with the whole shelf

/**
 * What these subjects change of the shelf: one part among thousands must not read them all again.
 *
 * @returns undefined where so many changed, or the rules, that the whole shelf is to be read
 */
export async function shelfChange(
  repository: AppRepository,
  subjects: readonly Id[],
): Promise<((before: Shelf) => Shelf) | undefined> {
  if (subjects.length > FEW || subjects.includes(RULES_SUBJECT)) return undefined
  const [parts, lots, views] = await Promise.all([
    Promise.all(subjects.map((subject) => repository.headsOf('part', subject))),
    Promise.all(subjects.map((subject) => repository.headsOf('lot', subject))),
    lotViewsOf(repository, subjects),
  ])
  const partHeads = readable(parts.flat() as readonly ReadFact<FactOf<'part'>>[])
  const lotHeads = readable(lots.flat() as readonly ReadFact<FactOf<'lot'>>[])
  return (before) => ({
    ...before,
    parts: new Map([...before.parts, ...standing(partHeads)]),
    lots: new Map([...before.lots, ...standing(lotHeads)]),
    lotViews: new Map([...before.lotViews, ...views]),
  })
}

/** These lots' figures alone, by lot. */
export async function lotViewsOf(repository: AppRepository, lots: readonly Id[]): Promise<readonly [Id, LotView][]> {
  const views = await Promise.all(lots.map((lot) => repository.lotView(lot)))
  return views.flatMap((view): readonly [Id, LotView][] => (view === undefined ? [] : [[view.id, view]]))
}
