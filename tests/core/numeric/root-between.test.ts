import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { outsideModel } from '@/core/finding'
import { rootBetween } from '@/core/numeric/root-between'
import { bounds, known, noAnswer, type Outcome } from '@/core/outcome'
import { ratio } from '@/core/quantity'
import { answer } from '@tests/support/answer'

const plain = (value: number): Outcome<number> =>
  known(value, { equation: '', inputs: [], result: [], source: ['OWN'] })
const refused = noAnswer(outsideModel('x', ratio(0), bounds(ratio(1), ratio(2)), '1'))

describe('rootBetween', () => {
  it.each([
    // Abramowitz and Stegun, table 1.1 (from memory)
    ['√2', (x: number) => x * x - 2, 0, 2, 1.414_213_562_373_095],
    ['π', (x: number) => Math.sin(x), 3, 4, 3.141_592_653_589_793],
    ['e', (x: number) => Math.log(x) - 1, 1, 10, 2.718_281_828_459_045],
    ['the cube root of 3', (x: number) => x ** 3 - 3, -1, 50, 1.442_249_570_307_408],
  ])('finds %s', (_, f, low, high, root) => {
    expect(answer(rootBetween((x) => plain(f(x)), low, high, 1e-13))).toBeCloseTo(root, 11)
  })

  it('takes either end that is a root already', () => {
    expect(answer(rootBetween((x) => plain(x - 1), 1, 2, 1e-9))).toBe(1)
    expect(answer(rootBetween((x) => plain(x - 2), 1, 2, 1e-9))).toBe(2)
  })

  it('finds the root of a function that is flat on one side, in few steps', () => {
    let calls = 0
    const root = answer(
      rootBetween(
        (x) => {
          calls++
          return plain(x ** 9 - 0.5)
        },
        0,
        5,
        1e-12,
      ),
    )
    expect(root).toBeCloseTo(0.5 ** (1 / 9), 10)
    expect(calls).toBeLessThan(80)
  })

  it('finds any root of a rising function', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.99, max: 0.99, noNaN: true }), (root) => {
        expect(answer(rootBetween((x) => plain(Math.expm1(3 * (x - root))), -1, 1, 1e-12))).toBeCloseTo(root, 10)
      }),
    )
  })

  it('keeps the root between its ends where values are too small to multiply', () => {
    for (const root of [2.47e-322, 1e-200, -1e-200]) {
      expect(answer(rootBetween((x) => plain(Math.expm1(3 * (x - root))), -1, 1, 1e-12))).toBeCloseTo(root, 10)
    }
    expect(answer(rootBetween((x) => plain(1e-200 * (x - 0.3)), 0, 1, 1e-12))).toBeCloseTo(0.3, 10)
  })

  it.each([
    ['at the low end', (x: number) => x === 0],
    ['at the high end', (x: number) => x === 1],
    ['between', (x: number) => x !== 0 && x !== 1],
  ])('hands on a refusal %s', (_, refuses) => {
    expect(rootBetween((x) => (refuses(x) ? refused : plain(x - 0.3)), 0, 1, 1e-9)).toBe(refused)
  })

  it('ends on a function that has no root to be found exactly', () => {
    expect(answer(rootBetween((x) => plain(x < 0.3 ? -1 : 1), 0, 1, 0))).toBeCloseTo(0.3, 10)
  })
})
