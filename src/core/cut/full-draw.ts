import { DRAW_LENGTH_ADDS, DRAW_LENGTH_BOUNDS } from '../bow/power-stroke'
import type { Finding } from '../finding'
import { bounds, type Derivation, known, noAnswer, type Outcome, type Term, term } from '../outcome'
import { difference, inches, type Length, magnitude, sum } from '../quantity'
import { outside, refusal } from '../refusal'
import type { Landmark } from './findings'

/** A landmark at full draw, from the throat along the arrow. */
export interface Place {
  readonly at: Length
  readonly how: 'marked' | 'estimated'
}

export interface FullDraw {
  readonly rest: Place
  readonly riserFront: Place
  /** Absent: the hand stands no further forward than the riser. */
  readonly hand?: Place
}

export interface FullDrawKnown {
  /** On a nocked arrow at full draw, from the throat to the mark. Best. */
  readonly marks: Readonly<Partial<Record<Landmark, Length>>>
  /** Where each stands ahead of the grip pivot, with the draw length that puts the pivot on the arrow. */
  readonly drawLength?: Length
  readonly aheadOfPivot: Readonly<Partial<Record<Landmark, Length>>>
}

export const FULL_DRAW_BOUNDS = Object.freeze({
  mark: bounds(inches(5), inches(50)),
  aheadOfPivot: bounds(inches(-10), inches(10)),
  /** Any of them, marked or estimated. */
  place: bounds(inches(-5), inches(60)),
})
/** A mark and an estimate further apart than this cannot both be right. [CP] */
const DISAGREE = inches(1)

/** What keeps places at full draw from being judged by. */
export const placeProblems = ({ rest, riserFront, hand }: FullDraw): readonly Finding[] => [
  ...outside('rest at full draw', rest.at, FULL_DRAW_BOUNDS.place, 'in'),
  ...outside('riser front at full draw', riserFront.at, FULL_DRAW_BOUNDS.place, 'in'),
  ...(hand === undefined ? [] : outside('hand at full draw', hand.at, FULL_DRAW_BOUNDS.place, 'in')),
]

/**
 * Where rest, riser front and hand stand along the arrow at full draw: from a marked arrow where there is one, otherwise
 *
 *   from throat = draw length − 1¾ in + ahead of the pivot
 *
 * @returns the places; `full-draw-estimated` for each that is no mark; `mark-against-draw-length` where both are known and
 * disagree; `full-draw-not-known` when rest or riser front cannot be told; or `outside-model`
 *
 * Source: [F1880] for the draw length; that marks beat estimates [CP].
 */
export function fullDraw({ marks, drawLength, aheadOfPivot }: FullDrawKnown): Outcome<FullDraw> {
  const refused = refusal([
    ...entriesOf(marks).flatMap(([what, at]) => outside(`mark at the ${what}`, at, FULL_DRAW_BOUNDS.mark, 'in')),
    ...entriesOf(aheadOfPivot).flatMap(([what, at]) =>
      outside(`${what} ahead of the pivot`, at, FULL_DRAW_BOUNDS.aheadOfPivot, 'in'),
    ),
    ...(drawLength === undefined ? [] : outside('draw length', drawLength, DRAW_LENGTH_BOUNDS, 'in')),
  ])
  if (refused) return refused
  const estimateOf = (what: Landmark): Length | undefined => {
    const ahead = aheadOfPivot[what]
    return drawLength === undefined || ahead === undefined
      ? undefined
      : sum(difference(drawLength, DRAW_LENGTH_ADDS), ahead)
  }
  const placeOf = (what: Landmark): Place | undefined => {
    const marked = marks[what]
    const estimated = estimateOf(what)
    if (marked !== undefined) return { at: marked, how: 'marked' }
    return estimated === undefined ? undefined : { at: estimated, how: 'estimated' }
  }
  const rest = placeOf('rest')
  const riserFront = placeOf('riser front')
  const hand = placeOf('hand')
  if (rest === undefined || riserFront === undefined) {
    const missing = (['rest', 'riser front'] as const).filter((what) => placeOf(what) === undefined)
    return noAnswer({ code: 'full-draw-not-known', missing })
  }
  const places: readonly (readonly [Landmark, Place])[] = [
    ['rest', rest],
    ['riser front', riserFront],
    ...(hand === undefined ? [] : [['hand', hand] as const]),
  ]
  const findings = places.flatMap(([what, place]) => remarks(what, place, estimateOf(what)))
  const inputs: Term[] = [
    ...(drawLength === undefined ? [] : [term('draw length', drawLength, 'in')]),
    ...entriesOf(marks).map(([what, at]) => term(`mark at the ${what}`, at, 'in')),
    ...entriesOf(aheadOfPivot).map(([what, at]) => term(`${what} ahead of the pivot`, at, 'in')),
  ]
  const derivation: Derivation = {
    equation: 'the mark; without one, from throat = draw length − 1¾ in + ahead of the pivot',
    inputs,
    result: places.map(([what, { at }]) => term(what, at, 'in')),
    source: ['F1880', 'CP'],
  }
  return known({ rest, riserFront, ...(hand === undefined ? {} : { hand }) }, derivation, findings)
}

function remarks(what: Landmark, { at, how }: Place, estimated: Length | undefined): Finding[] {
  if (how === 'estimated') return [{ code: 'full-draw-estimated', what, at }]
  const apart = estimated === undefined ? undefined : magnitude(difference(at, estimated))
  return apart !== undefined && apart > DISAGREE
    ? [{ code: 'mark-against-draw-length', what, marked: at, estimated: estimated! }]
    : []
}

const entriesOf = (places: Readonly<Partial<Record<Landmark, Length>>>) =>
  Object.entries(places) as readonly [Landmark, Length][]
