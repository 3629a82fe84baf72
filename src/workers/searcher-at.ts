/** A searcher that speaks to a desk at the other end of a line: a worker, or a message port. */
import { type Endpoint, proxy, releaseProxy, wrap } from 'comlink'
import type { SearchEnd, Searcher } from '../domain/search/searcher'
import type { SearchDesk } from './search-desk'

/** @param hangUp ends the thread at the other end */
export function searcherAt(line: Endpoint, hangUp: () => void): Searcher {
  const desk = wrap<SearchDesk>(line)
  let number = 0
  let leave: (end: SearchEnd) => void = () => {}
  // A worker that cannot be loaded, or breaks, never answers.
  line.addEventListener('error', (event) => leave({ kind: 'failed', detail: messageOf(event) }))
  return {
    find(problem, progress = () => {}) {
      leave({ kind: 'replaced' })
      number += 1
      const own = number
      let isOver = false
      const end = new Promise<SearchEnd>((settle) => {
        const over = (told: SearchEnd) => {
          isOver = true
          settle(told)
        }
        leave = over
        const heard = proxy((step: Parameters<typeof progress>[0]) => {
          if (!isOver) progress(step)
        })
        desk.find(own, problem, heard).then(
          (answer) => over(answer === undefined ? { kind: 'stopped' } : { kind: 'found', answer }),
          (error: unknown) => over({ kind: 'failed', detail: String(error) }),
        )
      })
      const stop = () => {
        if (isOver) return
        leave({ kind: 'stopped' })
        void desk.stop(own)
      }
      return { end, stop }
    },
    close() {
      leave({ kind: 'stopped' })
      desk[releaseProxy]()
      hangUp()
    },
  }
}

const messageOf = (event: object) => ('message' in event ? String(event.message) : 'the search could not be started')
