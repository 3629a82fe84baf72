import { difference, greatest, type Mass, magnitude, sameDimension } from '../quantity'
import { known, noAnswer, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { mean } from '../statistics/mean'
import { WEIGHT_BOUNDS } from './weight-bounds'

export interface LessHead {
  /** What every arrow is trimmed to, without its head. */
  readonly target: Mass
  readonly meanHead: Mass
  /** How far the head furthest from the mean takes an arrow off the number. */
  readonly widest: Mass
}

/**
 * The weight less head that a set is trimmed to, so that any of its heads may go on any arrow.
 *
 *   target less head = finished target − mean head
 *
 * @param finished the finished target
 * @param heads the weight of each head of the set, at least one
 * @returns the target less head, `too-few-values`, or `outside-model` (also when the heads outweigh the arrow)
 *
 * Source: definition; trimming less head is common practice, no source [CP].
 */
export function lessHead(finished: Mass, heads: readonly Mass[]): Outcome<LessHead> {
  const [first] = heads
  if (first === undefined) return noAnswer({ code: 'too-few-values', figure: 'mean head', got: 0, needed: 1 })
  const refused = refusal([
    ...outside('finished target', finished, WEIGHT_BOUNDS, 'gr'),
    ...heads.flatMap((head) => outside('head', head, WEIGHT_BOUNDS, 'gr')),
  ])
  if (refused) return refused
  const meanHead = sameDimension(first, mean(heads))
  const target = difference(finished, meanHead)
  const light = refusal(outside('target less head', target, WEIGHT_BOUNDS, 'gr'))
  if (light) return light
  const off = heads.map((head) => magnitude(difference(head, meanHead)))
  return known(
    { target, meanHead, widest: greatest(off[0]!, ...off) },
    {
      equation: 'target less head = finished target − mean head',
      inputs: [term('finished target', finished, 'gr'), ...heads.map((head, i) => term(`head ${i + 1}`, head, 'gr'))],
      result: [term('target less head', target, 'gr'), term('mean head', meanHead, 'gr')],
      source: ['CP'],
    },
  )
}
