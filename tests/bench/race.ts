/** Compares two ways of doing the same within one run, turn about, so that the machine's speed cancels out. */
export interface Race {
  readonly name: string
  /** What is measured, and what it is measured against. Both do the work once a call. */
  readonly subject: () => unknown
  readonly reference: () => unknown
  /** The most that subject ÷ reference may be. */
  readonly atMost: number
}

export interface Raced {
  readonly ratio: number
  /** Medians, seconds. */
  readonly subject: number
  readonly reference: number
}

const ROUNDS = 15
const SECONDS_A_ROUND = 0.02

export function race({ subject, reference }: Race): Raced {
  const calls = [callsPerRound(subject), callsPerRound(reference)] as const
  const times: [number[], number[]] = [[], []]
  for (let round = 0; round < ROUNDS; round += 1) {
    times[0].push(secondsOf(subject, calls[0]))
    times[1].push(secondsOf(reference, calls[1]))
  }
  const [ours, theirs] = times.map(median) as [number, number]
  return { ratio: ours / theirs, subject: ours, reference: theirs }
}

/** Enough calls to outlast the clock's resolution; also warms the code up. */
function callsPerRound(work: () => unknown): number {
  let calls = 1
  while (secondsOf(work, calls) * calls < SECONDS_A_ROUND) calls *= 2
  return calls
}

let kept: unknown
function secondsOf(work: () => unknown, calls: number): number {
  const began = performance.now()
  for (let call = 0; call < calls; call += 1) kept = work()
  return (performance.now() - began) / 1000 / calls
}
/** Keeps the compiler from dropping work whose result nobody reads. */
export const lastResult = () => kept

const median = (values: readonly number[]) => values.toSorted((a, b) => a - b)[values.length >> 1]!
