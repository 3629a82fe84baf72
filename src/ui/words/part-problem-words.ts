/** What is wrong with a typed part: the field, what was entered, what is expected. */
import type { PartProblem } from '../../domain/stock/check-part'
import { showNumber } from './format'
import { partFieldWord } from './part-field-words'

export function partProblemWords(problem: PartProblem): string {
  switch (problem.code) {
    case 'no-name':
      return 'Name: nothing entered. Give the part the name it is asked for by.'
    case 'missing':
      return `${partFieldWord(problem.field)}: nothing entered yet, and the figures need it.`
    case 'refused':
      return `${problem.field}: ${problem.detail}`
    case 'not-inside':
      return `${partFieldWord(problem.field)}: ${showNumber(problem.inner, 3)} does not go into ${showNumber(problem.outer, 3)}; it must be the smaller one.`
    case 'bond-longer-than-post':
      return `Least bond: ${showNumber(problem.bondMm, 1)} mm is longer than the post, ${showNumber(problem.postMm, 1)} mm.`
    case 'weight-off-size':
      return `${partFieldWord(problem.field)}: of this size and material it weighs about ${showNumber(problem.leastGr, 0)} to ${showNumber(problem.mostGr, 0)} gr, not ${showNumber(problem.weightGr, 1)}. Look at the weight, its unit, the diameters and the lengths.`
    case 'weight-off-length':
      return `Catalogue weight: ${showNumber(problem.weightGr, 1)} gr is not ${showNumber(problem.perInchGr, 2)} gr/in over ${showNumber(problem.lengthIn, 2)} in, which is ${showNumber(problem.perInchGr * problem.lengthIn, 1)} gr.`
    case 'no-joint':
      return 'Glue left by a joint: enter at least one of fletch, post and collar.'
    case 'times-reversed':
      return 'Cure times: handle comes first, then shoot, then full strength.'
    case 'temperatures-reversed':
      return 'Temperatures: the lowest must lie below the highest.'
  }
}
