import type { Finding } from '../finding'
import { known, noAnswer, type Outcome, term } from '../outcome'
import { type Dimension, inUnit, type Quantity, scaled, type UnitOf } from '../quantity'
import { refusal } from '../refusal'
import type { Margin } from './margin'

/** What ends the envelope on one side: a limit, the end of what can be told, or nothing as far as was looked. */
export type EnvelopeEnd<L extends string> =
  | { readonly kind: 'limit'; readonly limit: L }
  | { readonly kind: 'not known' }
  | { readonly kind: 'open' }

export interface EnvelopeSide<D extends Dimension, L extends string> {
  /** Greatest change that is still inside; downwards it is 0 or less. */
  readonly change: Quantity<D>
  readonly end: EnvelopeEnd<L>
}

export interface Envelope<D extends Dimension, L extends string> {
  readonly down: EnvelopeSide<D, L>
  readonly up: EnvelopeSide<D, L>
}

export interface EnvelopeQuestion<D extends Dimension, L extends string> {
  /** What changes: draw weight, draw length, head weight. */
  readonly what: string
  readonly unit: UnitOf<D>
  /** How far to look, either way. */
  readonly furthestDown: Quantity<D>
  readonly furthestUp: Quantity<D>
  /** Every limit's margin when it has changed by so much. */
  readonly evaluate: (change: Quantity<D>) => Outcome<readonly Margin<L>[]>
}

const STEPS = 20 // looks on the way out; a limit left and met again within one is not seen
const HALVINGS = 22 // on the step it is left in: to 1e-8 of the way

/**
 * By how much one thing may drift before an arrow leaves the first of its limits.
 *
 *   greatest |Δ| such that every margin(Δ') ≥ 0 for all Δ' between 0 and Δ
 *
 * @returns the greatest change either way and what is reached first there; `envelope-not-known-past` on a side that ends where
 * no figure is; `envelope-already-left` naming each limit that is broken before anything changes; the refusal at no change
 *
 * Source: [OWN], by steps outwards and halving.
 */
export function envelope<D extends Dimension, L extends string>(
  question: EnvelopeQuestion<D, L>,
): Outcome<Envelope<D, L>> {
  const { what, unit, furthestDown, furthestUp, evaluate } = question
  const refused = refusal([furthestDown, furthestUp].flatMap((reach) => reachProblem(question, reach)))
  if (refused) return refused
  const now = evaluate(scaled(furthestUp, 0))
  if (!now.ok) return now
  const left = now.value.filter(({ margin }) => !(margin >= 0)).map(({ limit }) => limit)
  if (left.length > 0) return noAnswer({ code: 'envelope-already-left', limits: left })
  const down = sideOf(evaluate, scaled(furthestDown, -1))
  const up = sideOf(evaluate, furthestUp)
  const findings = [down, up].flatMap(({ change, end }): Finding[] =>
    end.kind === 'not known' ? [{ code: 'envelope-not-known-past', what, change: inUnit(change, unit), unit }] : [],
  )
  return known(
    { down, up },
    {
      equation: 'greatest change with every margin at 0 or above on the way there',
      inputs: [term('looked at downwards', furthestDown, unit), term('looked at upwards', furthestUp, unit)],
      result: [
        term(`${what} may fall by`, scaled(down.change, -1), unit),
        term(`${what} may rise by`, up.change, unit),
      ],
      source: ['OWN'],
      note: `Reached first: below, ${endName(down.end)}; above, ${endName(up.end)}.`,
      steps: [now.derivation],
    },
    findings,
  )
}

function sideOf<D extends Dimension, L extends string>(
  evaluate: EnvelopeQuestion<D, L>['evaluate'],
  furthest: Quantity<D>,
): EnvelopeSide<D, L> {
  /** What has ended at a share of the way, or nothing. */
  const endAt = (share: number): EnvelopeEnd<L> | undefined => {
    const there = evaluate(scaled(furthest, share))
    if (!there.ok || there.value.some(({ margin }) => Number.isNaN(margin))) return { kind: 'not known' }
    const broken = there.value.find(({ margin }) => margin < 0)
    return broken && { kind: 'limit', limit: broken.limit }
  }
  for (let step = 1; step <= STEPS; step++) {
    let end = endAt(step / STEPS)
    if (end === undefined) continue
    let inside = (step - 1) / STEPS
    let outside = step / STEPS
    for (let i = 0; i < HALVINGS; i++) {
      const middle = (inside + outside) / 2
      const there = endAt(middle)
      if (there === undefined) inside = middle
      else {
        outside = middle
        end = there
      }
    }
    return { change: scaled(furthest, inside), end }
  }
  return { change: furthest, end: { kind: 'open' } }
}

const endName = (end: EnvelopeEnd<string>) =>
  end.kind === 'limit' ? end.limit : end.kind === 'open' ? 'nothing as far as was looked' : 'where no figure is known'

const reachProblem = <D extends Dimension>(
  { what, unit }: { readonly what: string; readonly unit: UnitOf<D> },
  reach: Quantity<D>,
): readonly Finding[] =>
  reach >= 0 && Number.isFinite(reach) ? [] : [{ code: 'envelope-reach', what, reach: inUnit(reach, unit), unit }]
