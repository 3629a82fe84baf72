import { bounds, known, type Outcome, term } from '../outcome'
import { inches, type Length, scaled } from '../quantity'
import { outside, refusal } from '../refusal'
import { RUN_OUT_BOUNDS } from './run-out'

export const SPAN_BOUNDS = bounds(inches(2), inches(60))

/**
 * Run-out that a shaft bowed in one plane shows on other supports.
 *
 *   TIR = TIR₀·(S/S₀)²
 *
 * @returns the run-out at the middle of the new span, or `outside-model`
 *
 * Source: [ARR203] for the spans, 28 in and for shorter shafts 25 in; the sagitta of a flat bow goes with the square of
 * its chord [OWN].
 * Error: a kink does not follow it, its run-out goes with the span.
 */
export function runOutOverSpan(tir: Length, measuredOn: Length, span: Length): Outcome<Length> {
  const refused = refusal([
    ...outside('run-out', tir, RUN_OUT_BOUNDS.tir, 'in'),
    ...outside('span measured on', measuredOn, SPAN_BOUNDS, 'in'),
    ...outside('span', span, SPAN_BOUNDS, 'in'),
  ])
  if (refused) return refused
  const there = scaled(tir, (span / measuredOn) ** 2)
  return known(there, {
    equation: 'TIR = TIR₀·(S/S₀)²',
    inputs: [term('run-out', tir, 'in'), term('span measured on', measuredOn, 'in'), term('span', span, 'in')],
    result: [term('run-out over the span', there, 'in')],
    source: ['ARR203', 'OWN'],
  })
}
