import { type Outcome, bounds, known, noAnswer, term } from '../outcome'
import { type Length, difference, inches } from '../quantity'
import { outside, refusal } from '../refusal'

export const DRAW_LENGTH_BOUNDS = bounds(inches(10), inches(45))
export const BRACE_HEIGHT_BOUNDS = bounds(inches(2), inches(20))

/** Draw length is told from the grip pivot plus this much [F1880]. */
export const DRAW_LENGTH_ADDS = inches(1.75)

/**
 * How far the string moves the arrow: draw length − 1¾ in − brace height.
 *
 * @returns the stroke; `no-power-stroke` where none is left; or `outside-model`
 *
 * Source: [F1880].
 */
export function powerStroke(drawLength: Length, braceHeight: Length): Outcome<Length> {
  const refused = refusal([
    ...outside('draw length', drawLength, DRAW_LENGTH_BOUNDS, 'in'),
    ...outside('brace height', braceHeight, BRACE_HEIGHT_BOUNDS, 'in'),
  ])
  if (refused) return refused
  const stroke = difference(difference(drawLength, DRAW_LENGTH_ADDS), braceHeight)
  if (stroke < inches(1)) return noAnswer({ code: 'no-power-stroke', drawLength, braceHeight })
  return known(stroke, {
    equation: 'power stroke = draw length − 1¾ in − brace height',
    inputs: [term('draw length', drawLength, 'in'), term('brace height', braceHeight, 'in')],
    result: [term('power stroke', stroke, 'in')],
    source: ['F1880'],
  })
}
