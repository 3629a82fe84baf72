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

/**
 * Parts, rules and the lots in stock: what was used up in the years before costs nothing on opening.
 *
 * @param also lots to read besides, used up or not
 */
export async function loadShelf(repository: AppRepository, also: readonly Id[] = []): Promise<Shelf> {
  const [parts, { lots, views }, rules, withMore] = await Promise.all([
    repository.headsOfKind('part'),
    repository.lotsOnShelf(),
    repository.headsOf('rules', RULES_SUBJECT),
    moreLots(repository, also),
  ])
  const heads = readable(rules as readonly ReadFact<FactOf<'rules'>>[])
  return withMore({
    parts: standing(readable(parts)),
    lots: standing(readable(lots)),
    lotViews: new Map(views.map((view) => [view.id, view])),
    rules: standing(heads).get(RULES_SUBJECT)?.body ?? DEFAULT_RULES,
    rulesHeads: heads.map((fact) => fact.hash),
  })
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
  const [parts, withLots] = await Promise.all([
    Promise.all(subjects.map((subject) => repository.headsOf('part', subject))),
    moreLots(repository, subjects),
  ])
  const partHeads = readable(parts.flat() as readonly ReadFact<FactOf<'part'>>[])
  return (before) => withLots({ ...before, parts: new Map([...before.parts, ...standing(partHeads)]) })
}

/**
 * These lots, with their figures, on a shelf that did not hold them or holds them as they were.
 *
 * @param known of a lot that it has a view of the figures alone are read
 */
export async function moreLots(
  repository: AppRepository,
  ids: readonly Id[],
  known?: Shelf,
): Promise<(before: Shelf) => Shelf> {
  const unknown = ids.filter((id) => known?.lotViews.has(id) !== true)
  const [heads, views] = await Promise.all([
    Promise.all(unknown.map((id) => repository.headsOf('lot', id))),
    Promise.all(ids.map((id) => repository.lotView(id))),
  ])
  const lots = standing(readable(heads.flat() as readonly ReadFact<FactOf<'lot'>>[]))
  return (before) => ({
    ...before,
    lots: new Map([...before.lots, ...lots]),
    lotViews: new Map([
      ...before.lotViews,
      ...views.flatMap((view): [Id, LotView][] => (view === undefined ? [] : [[view.id, view]])),
    ]),
  })
}
