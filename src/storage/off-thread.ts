/** Runs long work in a worker of its own. */
import type { Work, WorkAnswer } from './long-work'

export type Ask = Work & { readonly book: string }
export type Reply =
  | { readonly progress: number }
  | { readonly answer: WorkAnswer<Work['do']> }
  | { readonly failed: string }

/** @throws where the browser cannot hand a stream to a worker, before anything of it was read */
export function offThread<D extends Work['do']>(
  ask: Ask & { readonly do: D },
  progress: (done: number) => void = () => {},
): Promise<WorkAnswer<D>> {
  return new Promise((answer, fail) => {
    const worker = new Worker(new URL('./archive-worker.ts', import.meta.url), {
      type: 'module',
      name: 'grainwright-archive',
    })
    const end = (settle: () => void) => {
      worker.terminate()
      settle()
    }
    worker.addEventListener('error', (event) => end(() => fail(new Error(event.message))))
    worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => {
      if ('progress' in data) progress(data.progress)
      else if ('failed' in data) end(() => fail(new Error(data.failed)))
      else end(() => answer(data.answer as WorkAnswer<D>)) // the worker answers what it was asked
    })
    try {
      worker.postMessage(ask, 'source' in ask ? [ask.source] : [])
    } catch (error) {
      end(() => fail(error))
    }
  })
}
