/** How the app asks for a search: off the main thread in the browser, at once where there is no other thread. */
import type { FoundParts, SearchProgress } from './find-parts'
import type { SearchProblem } from './wishes'

export type SearchEnd =
  | { readonly kind: 'found'; readonly answer: FoundParts }
  /** It was told to stop. */
  | { readonly kind: 'stopped' }
  /** A newer search took its place. */
  | { readonly kind: 'replaced' }
  | { readonly kind: 'failed'; readonly detail: string }

export interface RunningSearch {
  /** Never rejects. */
  readonly end: Promise<SearchEnd>
  /** Ends it at once; what it had found is dropped. */
  stop(): void
}

export interface Searcher {
  /** Starts a search. One that is under way ends as replaced: only the newest ever answers. */
  find(problem: SearchProblem, progress?: (progress: SearchProgress) => void): RunningSearch
  close(): void
}
