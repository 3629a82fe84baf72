/** Which of the shop's rows speak of this quarry, or of this game in this place. Compared by words, as people say them. */
import { wordsIn } from '../records/words-in'
import type { Rules } from '../shop/rules'

type QuarryRule = Rules['quarry'][number]
type PlaceRule = Rules['places'][number]

/** The row whose every word is among those said; of several the one that says most. */
export function quarryRule(rules: Rules, said: string | undefined): QuarryRule | undefined {
  const words = new Set(wordsIn(said ?? ''))
  const plural = (word: string) => words.has(word) || words.has(`${word}s`)
  return rules.quarry
    .filter(({ name }) => wordsIn(name).length > 0 && wordsIn(name).every(plural))
    .toSorted((a, b) => wordsIn(b.name).length - wordsIn(a.name).length)[0]
}

const ANY_GAME: ReadonlySet<string> = new Set(['any', 'all', 'big game', 'all game', 'any game'])

/** The rows of a place that speak of this game, or of any. */
export function placeRules(rules: Rules, place: string | undefined, quarry: string | undefined): readonly PlaceRule[] {
  const there = new Set(wordsIn(place ?? ''))
  const game = wordsIn(quarry ?? '')
  return rules.places.filter((row) => {
    const isThere = wordsIn(row.place).length > 0 && wordsIn(row.place).every((word) => there.has(word))
    const named = wordsIn(row.game)
    const speaksOfIt =
      ANY_GAME.has(row.game.toLowerCase()) || game.some((word) => named.includes(word) || named.includes(`${word}s`))
    return isThere && (speaksOfIt || game.length === 0)
  })
}
