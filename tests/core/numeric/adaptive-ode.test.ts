import { describe, expect, it } from 'vitest'
import { integrated as integratedInto } from '@/core/numeric/adaptive-ode'

/** The same with slopes as new arrays and plain states, for reading. */
const integrated = (
  slope: (at: number, state: readonly number[]) => readonly number[],
  ...[from, start, stops, tolerance]: [number, readonly number[], readonly number[], number]
) =>
  integratedInto((at, state, into) => into.set(slope(at, [...state])), from, start, stops, tolerance).map((state) => [
    ...state,
  ])

describe('integrated', () => {
  it('follows an exponential to its closed form', () => {
    const stops = [0.5, 1, 3, 10]
    const states = integrated((_, [y]) => [-y!], 0, [1], stops, 1e-12)
    stops.forEach((t, i) => expect(states[i]![0]!).toBeCloseTo(Math.exp(-t), 11))
  })

  it('keeps the energy of an oscillator over twenty turns', () => {
    const [end] = integrated((_, [x, v]) => [v!, -x!], 0, [1, 0], [40 * Math.PI], 1e-11)
    expect(end![0]!).toBeCloseTo(1, 8)
    expect(end![1]!).toBeCloseTo(0, 8)
  })

  it('is exact where the solution is a polynomial of the fourth degree', () => {
    const [end] = integrated((t) => [4 * t ** 3], 0, [0], [3], 1e-6)
    expect(end![0]!).toBeCloseTo(81, 10)
  })

  // Dormand and Prince's pair is of the fifth order: a tolerance 1000 times finer costs about 1000^(1/5) = 4 times the steps.
  it('spends about four times the steps for three more digits', () => {
    const calls = (tolerance: number) => {
      let n = 0
      integrated((_, [x, v]) => (n++, [v!, -x!]), 0, [1, 0], [50], tolerance)
      return n
    }
    const factor = calls(1e-11) / calls(1e-8)
    expect(factor).toBeGreaterThan(3)
    expect(factor).toBeLessThan(5)
  })

  it('gives the start at a stop that is the start', () => {
    expect(integrated(() => [1], 0, [7], [0, 0, 1], 1e-9)).toEqual([[7], [7], [8]])
  })

  // y' = y² from y(0) = 1 runs away at t = 1.
  it('gives only the stops it can reach', () => {
    const states = integrated((_, [y]) => [y! * y!], 0, [1], [0.5, 0.9, 2, 3], 1e-10)
    expect(states).toHaveLength(2)
    expect(states[0]![0]!).toBeCloseTo(2, 8)
    expect(states[1]![0]!).toBeCloseTo(10, 6)
  })

  it('gives up on a solution that would take it millions of steps', () => {
    expect(integrated((_, [y]) => [-1e7 * y!], 0, [1], [1e-7, 100], 1e-9)).toHaveLength(1)
  })

  it('stops where the slope is no number', () => {
    expect(integrated((t) => [t > 1 ? Number.NaN : 1], 0, [0], [0.5, 2], 1e-9)).toHaveLength(1)
  })
})
