/** What the shop has: its parts and lots as they stand today, what the lots hold, and the shop's rules. */
import type { Hash, Id } from '../records/scalars'
import type { Rules } from '../shop/rules'
import { DEFAULT_RULES } from '../shop/rules'
import type { Lot } from './lot'
import type { LotView } from './lot-view'
import type { Part, PartKind, PartOf } from './part'

/** A record as it stands: its present version and, where two devices changed it apart, the other versions. */
export interface Standing<T> {
  readonly id: Id
  readonly hash: Hash
  readonly body: T
  readonly rivals: readonly Hash[]
}

export interface Shelf {
  readonly parts: ReadonlyMap<Id, Standing<Part>>
  /** Those in stock; of a part with none, its newest; and used-up ones that an open job names or a part's page has asked for. */
  readonly lots: ReadonlyMap<Id, Standing<Lot>>
  readonly lotViews: ReadonlyMap<Id, LotView>
  readonly rules: Rules
  /** The versions of the rules that today's follow; empty while the shop still has the defaults. */
  readonly rulesHeads: readonly Hash[]
}

export const EMPTY_SHELF: Shelf = {
  parts: new Map(),
  lots: new Map(),
  lotViews: new Map(),
  rules: DEFAULT_RULES,
  rulesHeads: [],
}

/** As people count: 9 before 10. */
const byName = new Intl.Collator('en', { numeric: true }).compare

/** The parts of these kinds that are still made, by name. */
export function partsOfKind<K extends PartKind>(shelf: Shelf, ...kinds: readonly K[]) {
  return [...shelf.parts.values()]
    .filter((each): each is Standing<PartOf<K>> => (kinds as readonly string[]).includes(each.body.kind))
    .toSorted((a, b) => byName(a.body.name, b.body.name))
}
