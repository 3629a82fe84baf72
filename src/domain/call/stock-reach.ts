/**
 * What the shop's own parts could weigh put together: the lightest and the heaviest of each kind, at the likely cut. A
 * cheap bound: it asks nothing of fit, threads or numbers on hand, so it says for certain only what cannot be reached.
 */
import { type Outcome, type Term, known, term } from '../../core/outcome'
import { type Mass, grains } from '../../core/quantity'
import type { Part, PartKind } from '../stock/part'
import type { Shelf } from '../stock/shelf'
import type { Answers } from './answers'
import type { Follows } from './follows'
import { figure, needs } from './follows'
import { toldNumber, toldText } from './told'
import { FRONT_KINDS } from '../stock/part-places'

export interface StockReach {
  readonly lightest: Mass
  readonly heaviest: Mass
  /** Kinds of part an arrow cannot be without and the shelf has none of. */
  readonly missing: readonly ('shaft' | 'nock' | 'front' | 'head' | 'fletching')[]
}

interface Span {
  readonly name: string
  readonly low: number
  readonly high: number
  readonly least: string
  readonly most: string
}

const RINGS: readonly PartKind[] = ['collar', 'sleeve', 'footing']
const FEWEST_VANES = 3
const MOST_VANES = 4
const LIKE_WEIGHT_GR = 2 // a head this near the one wished for is that head

/** @param c2cIn the likely cut, in; `spineIn` the range called for, where it is known */
export function stockReach(
  answers: Answers,
  shelf: Shelf,
  c2cIn: number,
  spineIn: { readonly stiffest: number; readonly softest: number } | undefined,
): Follows<StockReach> {
  const parts = [...shelf.parts.values()].map((each) => each.body).filter((part) => !part.discontinued)
  if (parts.length === 0) return needs()
  const of = (...kinds: readonly PartKind[]) => parts.filter((part) => kinds.includes(part.kind))
  const shafts = of('shaft').filter(
    (part) =>
      part.kind === 'shaft' &&
      (spineIn === undefined || (part.staticSpineIn >= spineIn.stiffest && part.staticSpineIn <= spineIn.softest)),
  )
  const fletching = toldText(answers, 'fletching')
  const spans = [
    span('shaft', shafts, (part) => (part.kind === 'shaft' ? part.weightPerInchGr * c2cIn : 0)),
    span('nock', of('nock')),
    span('front', of(...FRONT_KINDS)),
    span('head', headsWished(answers, of('broadhead', 'field point'))),
    span(
      'fletching',
      of(
        ...(fletching === 'feathers'
          ? ['feather' as const]
          : fletching === 'vanes'
            ? ['vane' as const]
            : ['vane' as const, 'feather' as const]),
      ),
    ),
  ] as const
  const missing = (['shaft', 'nock', 'front', 'head', 'fletching'] as const).filter((_, i) => spans[i] === undefined)
  const extras = [span('collar', of(...RINGS)), span('wrap', of('wrap')), span('bushing', of('bushing'))].flatMap(
    (each) => (each === undefined ? [] : [{ ...each, low: 0, least: 'none' }]),
  )
  const needed = spans.flatMap((each) => each ?? [])
  return figure(bound([...needed.map(inSets), ...extras], missing))
}

/** Vanes come in threes or fours. */
const inSets = (each: Span): Span =>
  each.name === 'fletching' ? { ...each, low: each.low * FEWEST_VANES, high: each.high * MOST_VANES } : each

/** The heads that could be the one wished for; any head where none is. */
function headsWished(answers: Answers, heads: readonly Part[]): readonly Part[] {
  const kind = toldText(answers, 'headKind')
  const weight = toldNumber(answers, 'headWeightGr')
  const ofKind = kind === 'field point' || kind === 'broadhead' ? heads.filter((head) => head.kind === kind) : heads
  const like = ofKind.filter((head) => weight !== undefined && Math.abs(head.weightGr - weight) <= LIKE_WEIGHT_GR)
  return like.length > 0 ? like : ofKind
}

function span(name: string, parts: readonly Part[], weigh = (part: Part) => part.weightGr): Span | undefined {
  const sorted = parts.map((part) => ({ name: part.name, gr: weigh(part) })).toSorted((a, b) => a.gr - b.gr)
  const [first] = sorted
  const last = sorted.at(-1)
  if (first === undefined || last === undefined) return undefined
  return { name, low: first.gr, high: last.gr, least: first.name, most: last.name }
}

function bound(spans: readonly Span[], missing: StockReach['missing']): Outcome<StockReach> {
  const lightest = grains(spans.reduce((total, each) => total + each.low, 0))
  const heaviest = grains(spans.reduce((total, each) => total + each.high, 0))
  const terms = spans.flatMap((each): readonly Term[] => [
    term(`${each.name}, lightest`, grains(each.low), 'gr', 'catalogue', each.least),
    term(`${each.name}, heaviest`, grains(each.high), 'gr', 'catalogue', each.most),
  ])
  return known(
    { lightest, heaviest, missing },
    {
      equation:
        'lightest = Σ lightest of each kind; heaviest = Σ heaviest of each kind, one ring, wrap and bushing included',
      inputs: terms,
      result: [term('lightest', lightest, 'gr'), term('heaviest', heaviest, 'gr')],
      source: ['OWN'],
      note: 'A bound, not a plan: nothing is asked of fit or of numbers on hand.',
    },
  )
}
