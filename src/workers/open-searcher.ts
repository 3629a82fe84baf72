/** The searcher of a browser: its thread is started with the first search. */
import type { Searcher } from '../domain/search/searcher'
import { searcherAt } from './searcher-at'

export function openSearcher(): Searcher {
  const worker = new Worker(new URL('./search-worker.ts', import.meta.url), {
    type: 'module',
    name: 'grainwright-search',
  })
  return searcherAt(worker, () => worker.terminate())
}
