/** Words of a pattern of the shop's own, and of lines that need one. */
import type { ScaleLine } from '../../domain/bench/scale-line'
import type { PatternProblem } from '../../domain/bench/scale-pattern'
import { showPlain } from './format'

export const notUnderstoodWords = (line: string): string =>
  `It sends lines that are not understood, such as “${line}”. Disconnect it and give a pattern for them.`

export function patternWords(problem: PatternProblem, line: string): string {
  switch (problem) {
    case 'no weight':
      return `“${line}” has no {weight}: put it where the digits stand.`
    case 'twice':
      return 'Each of {weight}, {state} and {unit} may stand once.'
    case 'too long':
      return 'That is longer than a line of a scale, or has too many places. Use {any} only for what changes.'
    case 'unknown place':
      return `“${line}” names a place that is none of {weight}, {state}, {unit} and {any}.`
    case 'no grains word':
      return 'Say below what stands for grains, or nothing it sends would be taken.'
  }
}

/** What a line that was tried comes to. */
export function lineReadWords(line: ScaleLine, sendsGrains: boolean): string {
  if (line.kind === 'noise') return 'not understood: it would be passed over'
  if (line.kind === 'overload') return 'overload'
  const state = line.stable === undefined ? 'says nothing of settling' : line.stable ? 'settled' : 'moving'
  const unit = line.unit ?? (sendsGrains ? 'no unit, taken as grains' : 'no unit')
  return `${showPlain(line.value)}, ${unit === 'other' ? 'not in grains' : unit}, ${state}`
}
