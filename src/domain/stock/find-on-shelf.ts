/** The parts of the shelf by kind, found by the beginnings of words; quick with several thousand of them. */
import { wordsIn } from '../records/words-in'
import type { Id } from '../records/scalars'
import { PART_KINDS } from './part'
import type { Part, PartKind } from './part'
import type { Shelf, Standing } from './shelf'
import { isOffShelf } from './lots-of-part'

export interface Shelved {
  readonly part: Standing<Part>
  readonly onHand: number
  readonly free: number
  /** One of its lots is on hold, and not used up. */
  readonly held: boolean
}
export interface ShelvedKind {
  readonly kind: PartKind
  readonly parts: readonly Shelved[]
}

const compare = new Intl.Collator('en', { numeric: true }).compare

/** Every part once, with the words it is found by; made anew only when the shelf changes. */
export function indexShelf(shelf: Shelf) {
  const counts = new Map<Id, { onHand: number; free: number; held: boolean }>()
  for (const { id, body } of shelf.lots.values()) {
    if (isOffShelf(shelf, id)) continue
    const { onHand = 0, reserved = 0 } = shelf.lotViews.get(id) ?? {}
    const own = counts.get(body.part) ?? { onHand: 0, free: 0, held: false }
    const free = body.hold === undefined ? onHand - reserved : 0
    counts.set(body.part, {
      onHand: own.onHand + onHand,
      free: own.free + free,
      held: own.held || body.hold !== undefined,
    })
  }
  return [...shelf.parts.values()]
    .map((part) => {
      const count = counts.get(part.id) ?? { onHand: 0, free: 0, held: false }
      return { part, ...count, words: wordsIn(`${part.body.kind} ${part.body.name}`) }
    })
    .sort((a, b) => compare(a.part.body.name, b.part.body.name))
}

export function findOnShelf(index: ReturnType<typeof indexShelf>, asked: string): readonly ShelvedKind[] {
  const wanted = wordsIn(asked)
  const byKind = new Map<PartKind, Shelved[]>(PART_KINDS.map((kind) => [kind, []]))
  for (const { words, ...shelved } of index) {
    if (wanted.every((word) => words.some((each) => each.startsWith(word)))) {
      byKind.get(shelved.part.body.kind)!.push(shelved)
    }
  }
  return [...byKind].flatMap(([kind, parts]) => (parts.length === 0 ? [] : [{ kind, parts }]))
}
