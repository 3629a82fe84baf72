type State = Float64Array
/** Writes the slope at a state into `into`, which is handed in so that nothing is allocated in the inner loop. */
export type Slope = (at: number, state: State, into: State) => void

// Dormand and Prince 5(4), [DP80] table 2: nodes, stages, and the fifth-order weights less the fourth-order ones.
const NODES = [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1]
const STAGES = [
  [],
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
]
const ERRORS = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40]
const MOST_STEPS = 20_000

/**
 * Integrates a system of ordinary differential equations with a step that adapts itself, and gives the state at each
 * stop. Plain numbers in the caller's units.
 *
 * @param stops ascending, none before `from`; each is met exactly
 * @param tolerance of one step, relative to each component's size plus one
 * @returns the states in the order of the stops; fewer than stops where the solution cannot be carried that far
 *
 * Source: [DP80].
 */
export function integrated(
  slope: Slope,
  from: number,
  start: readonly number[],
  stops: readonly number[],
  tolerance: number,
): readonly State[] {
  const states: State[] = []
  const slopes = NODES.map(() => new Float64Array(start.length))
  const next = new Float64Array(start.length)
  const state = Float64Array.from(start)
  let at = from
  slope(at, state, slopes[0]!)
  let step = Number.POSITIVE_INFINITY // the first is cut to the first stop, then by its own error
  let left = MOST_STEPS
  for (const stop of stops) {
    while (at < stop) {
      if (left-- === 0) return states
      const isLast = at + step >= stop
      const h = isLast ? stop - at : step
      if (at + h === at) return states // the solution runs away, or is no number, just ahead
      const error = stepped(slope, at, state, slopes, h, next) / tolerance
      const factor = error === 0 ? 5 : Math.min(5, Math.max(0.2, 0.9 * error ** -0.2))
      if (error <= 1) {
        at = isLast ? stop : at + h
        state.set(next)
        slopes[0]!.set(slopes.at(-1)!) // the last slope is the next step's first
        step = isLast ? Math.max(step, h * factor) : h * factor
      } else step = h * (Number.isNaN(factor) ? 0.2 : factor)
    }
    states.push(state.slice())
  }
  return states
}

/** One step of length h from the first of the slopes, written into `next`; its largest error, relative to size plus one. */
function stepped(slope: Slope, at: number, state: State, slopes: readonly State[], h: number, next: State): number {
  for (let stage = 1; stage < NODES.length; stage++) {
    const weights = STAGES[stage]!
    for (let i = 0; i < next.length; i++) next[i] = state[i]! + h * weighted(weights, slopes, i)
    slope(at + NODES[stage]! * h, next, slopes[stage]!)
  }
  let worst = 0
  for (let i = 0; i < next.length; i++) {
    const size = 1 + Math.max(Math.abs(state[i]!), Math.abs(next[i]!))
    worst = Math.max(worst, Math.abs(h * weighted(ERRORS, slopes, i)) / size) // NaN stays NaN
  }
  return worst
}

function weighted(weights: readonly number[], slopes: readonly State[], i: number): number {
  let total = 0
  for (let k = 0; k < weights.length; k++) total += weights[k]! * slopes[k]![i]!
  return total
}
