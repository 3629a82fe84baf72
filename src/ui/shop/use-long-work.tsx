/** Work on the whole book that takes its time: what is being done, how far it is, and what came of it or went wrong. */
import { useState } from 'react'
import { Label } from '../figures/label'
import look from './shop.module.css'

/** The whole, in what progress is counted in; left out where nobody can say. */
type Whole = number | (() => Promise<number>)

/** @param say hears what came of it */
export function useLongWork(say: (said: string) => void) {
  const [state, setState] = useState<{ readonly what: string; readonly share?: number }>()

  async function run(
    what: string,
    whole: Whole | undefined,
    work: (progress: (done: number) => void) => Promise<string>,
  ) {
    say('')
    setState({ what })
    try {
      const all = typeof whole === 'function' ? await whole() : whole
      const progress = (done: number) => {
        if (!all) return
        const share = Math.round(Math.min(1, done / all) * 100) / 100
        setState((before) => (before?.share === share ? before : { what, share }))
      }
      say(await work(progress))
    } catch (error) {
      say(`${what} failed: ${String(error)}. Nothing of the book was changed.`)
    }
    setState(undefined)
  }

  return {
    bar:
      state === undefined ? null : (
        <p className={look.actions}>
          <Label>{state.what}</Label>
          <progress max={1} value={state.share} aria-label={state.what} />
        </p>
      ),
    doing: (...work: Parameters<typeof run>) => void run(...work),
  }
}
