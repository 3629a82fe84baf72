/** What may stand on one axis: the shelf's items that are allowed there, enough for the whole set and fit for the bow. */
import type { Part, PartKind, PartOf } from '../stock/part'
import { AXES, type Axis, type KindOn } from './axes'
import type { SearchFinding } from './findings'
import { isOfKind, type StockItem, type StockItemOf } from './stock-item'
import type { SearchProblem } from './wishes'

/** One choice on an axis: so many pieces of an item. Weights are of all pieces together, gr; a shaft's are per inch. */
export interface Option<P extends Part = Part> {
  readonly item: StockItem<P>
  readonly count: number
  readonly weightGr: number
  /** Variances, gr². */
  readonly ownVar: number
  readonly sharedVar: number
  /** How many more such arrows the stock would be enough for. */
  readonly spare: number
  readonly priceCents: number
}

export type OptionOf<K extends PartKind> = Option<PartOf<K>>

/** `undefined` among the options: go without. */
export interface OptionsOf<A extends Axis> {
  readonly options: readonly (OptionOf<KindOn<A>> | undefined)[]
  readonly findings: readonly SearchFinding[]
}

export function optionsOn<A extends Axis>(axis: A, problem: SearchProblem): OptionsOf<A> {
  const asked = problem.wishes.axes?.[axis]
  const usual = AXES[axis]
  const kinds = usual.kinds.filter((kind) => asked?.kinds?.includes(kind) ?? true) as readonly KindOn<A>[]
  const without = asked?.without ?? usual.without
  if (without === 'must') return { options: [undefined], findings: [] }
  const wanted = problem.stock.filter(
    (item): item is StockItemOf<KindOn<A>> =>
      isOfKind(item, ...kinds) &&
      (asked?.only?.some(({ part, lot }) => part === item.part && (lot === undefined || lot === item.lot)) ?? true),
  )
  const findings: SearchFinding[] = []
  const options: (OptionOf<KindOn<A>> | undefined)[] = without === 'may' ? [undefined] : []
  let short = 0
  let unfit = 0
  for (const item of wanted) {
    const against = unfitFor(item, problem)
    if (against !== undefined) {
      findings.push(against)
      unfit += 1
      continue
    }
    const before = options.length
    for (const count of asked?.counts ?? usual.counts) {
      const spare = Math.floor(item.free / count) - problem.wishes.quantity
      if (spare >= 0) options.push(optionOf(item, count, spare))
    }
    if (options.length > before) continue
    short += 1
    const needed = problem.wishes.quantity * Math.min(...(asked?.counts ?? usual.counts))
    findings.push({ code: 'short-of-stock', axis, part: item.part, lot: item.lot, free: item.free, needed })
  }
  if (options.length === 0) findings.push({ code: 'nothing-for-axis', axis, onShelf: wanted.length, short, unfit })
  return { options, findings }
}

const optionOf = <P extends Part>(item: StockItem<P>, count: number, spare: number): Option<P> => ({
  item,
  count,
  weightGr: item.weightGr * count,
  ownVar: item.ownSdGr ** 2 * count,
  sharedVar: (item.sharedSdGr * count) ** 2,
  spare,
  priceCents: item.record.priceCents * count,
})

/** Why an item cannot be used on this bow and build at all. */
function unfitFor(item: StockItem, { launch, build }: SearchProblem): SearchFinding | undefined {
  const { part } = item
  if (isOfKind(item, 'shaft')) {
    const { maxDrawWeightLb: limitLb } = item.record
    const drawLb = launch?.peakDrawLb
    if (limitLb === undefined || drawLb === undefined || drawLb <= limitLb) return undefined
    return { code: 'draw-above-shaft-limit', part, limitLb, drawLb }
  }
  if (!isOfKind(item, 'broadhead')) return undefined
  const { bevel } = item.record
  const fletch = build.fletchSide
  if (bevel === 'none' || bevel === 'double' || fletch === 'straight' || bevel === fletch) return undefined
  return { code: 'bevel-against-fletch', part, bevel, fletch }
}
