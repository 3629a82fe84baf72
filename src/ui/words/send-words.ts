/** What stands in the way of signing off, a sentence each. */
import type { SignOffProblem } from '../../domain/bench/sign-off'
import { pointWord, stepWords } from './bench-words'
import { counted } from './format'

export function signOffProblemWords(problem: SignOffProblem): string {
  switch (problem.code) {
    case 'no-set':
      return 'No set is under way: there is nothing to sign off.'
    case 'nothing-built':
      return 'Every arrow of the set is scrapped: there is nothing to sign off.'
    case 'undecided-deviation':
      return `${problem.no === null ? 'The set' : `No. ${problem.no}`}: a deviation at ${stepWords(problem.step).title.toLowerCase()} is not decided yet.`
    case 'disputed-reading':
      return `No. ${problem.no}: two devices read ${pointWord(problem.point).toLowerCase()} apart. Keep one of the readings first.`
    case 'missing-weight':
      return `No. ${problem.no}: the finished weight is missing.`
    case 'not-inspected':
      return `No. ${problem.no}: the final inspection is not confirmed.`
    case 'decided-scrap-still-in-set':
      return `No. ${problem.no}: a deviation was decided as scrap, and the arrow is still in the set. Scrap it at the bench.`
    case 'counts-differ':
      return `The counts do not add up: ${counted(problem.ordered, 'arrow')} ordered, ${problem.started} started, ${problem.scrapped} scrapped, ${problem.accepted} accepted. Build what is missing or scrap what is over; or change the order on a new version of the sheet.`
  }
}
