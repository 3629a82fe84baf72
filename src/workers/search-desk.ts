/** What the search's thread answers to: one search at a time, told apart by number; a later one stops the one before. */
import { type FoundParts, findPartsInSteps, type SearchProgress } from '../domain/search/find-parts'
import type { SearchProblem } from '../domain/search/wishes'
import { runInSteps } from './run-in-steps'

export interface SearchDesk {
  /** @returns undefined when it was stopped or a later one was asked for */
  find(
    number: number,
    problem: SearchProblem,
    progress: (progress: SearchProgress) => void,
  ): Promise<FoundParts | undefined>
  /** Stops the search of this number, and any that was asked for before it. */
  stop(number: number): void
}

export function searchDesk(): SearchDesk {
  let newest = 0
  let stopped = 0
  return {
    find(number, problem, progress) {
      newest = Math.max(newest, number)
      const isStopped = () => number < newest || number <= stopped
      const slices = { isStopped, now: () => performance.now(), breathe }
      return runInSteps(findPartsInSteps(problem), slices, progress)
    },
    stop(number) {
      stopped = Math.max(stopped, number)
    },
  }
}

const breathe = () => new Promise<void>((go) => setTimeout(go, 0))
