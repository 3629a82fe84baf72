/** Runs long work in slices, so that the thread hears in between that it should stop. */

export interface Slices {
  /** Called after every slice that did not end the work. */
  readonly isStopped: () => boolean
  /** Milliseconds, from anywhere, never backwards. */
  readonly now: () => number
  /** Lets the thread hear its messages. */
  readonly breathe: () => Promise<void>
  /** Milliseconds of a slice. */
  readonly slice?: number
}

const SLICE = 16

/** @returns what the work returns, or undefined when it was stopped */
export async function runInSteps<P, R>(
  work: Generator<P, R>,
  { isStopped, now, breathe, slice = SLICE }: Slices,
  progress: (step: P) => void = () => {},
): Promise<R | undefined> {
  let began = now()
  for (;;) {
    const step = work.next()
    if (step.done === true) return step.value
    if (now() - began < slice) continue
    progress(step.value)
    await breathe()
    if (isStopped()) return undefined
    began = now()
  }
}
