import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Minimise, PairItem, Tray } from '@/domain/search/pairing/pairing'
import { worthBefore } from '@/domain/search/pairing/pairing'
import { pairSet } from '@/domain/search/pairing/pair-set'
import { seeded } from '@tests/support/seeded'
import { everyPairing } from './every-pairing'

/** Arrows, then inserts with a post to trim, then rings, then heads; as many lists as asked for. */
function randomTray(seed: number, arrows: number, lists: number, more = 0): Tray {
  const roll = seeded(seed)
  const likely = [
    { gr: 400, spread: 8, gives: 0 },
    { gr: 150, spread: 1.5, gives: 4 },
    { gr: 30, spread: 0.6, gives: 0 },
    { gr: 250, spread: 4, gives: 0 },
  ]
  const made = likely.slice(0, lists).map(({ gr, spread, gives }, list) =>
    Array.from(
      { length: arrows + (list === 0 ? 0 : Math.floor(roll() * (more + 1))) },
      (_, i): PairItem => ({
        id: `${list}-${i}`,
        gr: Math.round((gr + spread * (roll() - 0.5)) * 10) / 10,
        givesGr: gives * (0.5 + roll()),
      }),
    ),
  )
  const middle = likely.slice(0, lists).reduce((sum, { gr }) => sum + gr, 0)
  return { lists: made, besidesGr: 3.8, targetGr: middle + 3.8 - 6 * roll() + 1, toleranceGr: 0.5 }
}

const BOTH: readonly Minimise[] = ['trimming', 'spread']

function isAsGoodAs(tray: Tray, minimise: Minimise, tell: string): boolean {
  const { set } = pairSet(tray, minimise)
  const best = everyPairing(tray, minimise)
  expect(set!.worth.missGr, tell).toBeGreaterThanOrEqual(best.missGr - 1e-6)
  if (set!.isBest) {
    expect(Math.abs(set!.worth.missGr - best.missGr), tell).toBeLessThan(1e-6)
    expect(Math.abs(set!.worth.value - best.value), tell).toBeLessThan(1e-6)
    return true
  }
  // What it says of how far it may be from the best is true.
  expect(worthBefore(set!.bound, { missGr: best.missGr + 1e-6, value: best.value + 1e-6 }), tell).toBeLessThanOrEqual(0)
  return false
}

describe('pairSet', () => {
  it.each(BOTH)('pairs two lists as brute force does, least %s', (minimise) => {
    for (let seed = 1; seed <= 300; seed++) {
      const tray = randomTray(seed, 1 + (seed % 6), 2, seed % 3)
      expect(isAsGoodAs(tray, minimise, `seed ${seed}`)).toBe(true)
    }
  })

  it.each(BOTH)(
    'pairs three and four lists as brute force does, or says how far it may be off, least %s',
    (minimise) => {
      let best = 0
      let seen = 0
      for (let seed = 1; seed <= 60; seed++) {
        const lists = 3 + (seed % 2)
        const tray = randomTray(seed, lists === 3 ? 1 + (seed % 6) : 1 + (seed % 5), lists, seed % 5 === 0 ? 1 : 0)
        if (isAsGoodAs(tray, minimise, `seed ${seed}`)) best += 1
        seen += 1
      }
      expect(best / seen).toBeGreaterThan(0.95)
    },
    120_000,
  )

  it.each(BOTH)(
    'pairs six arrows of four lists as brute force does, or says how far it may be off, least %s',
    (minimise) => {
      isAsGoodAs(randomTray(3, 6, 4), minimise, 'six of four')
    },
    240_000,
  )

  it('puts lightest with heaviest where two lists are to lie close together (the rearrangement law)', () => {
    const weights = fc.array(fc.integer({ min: 0, max: 400 }), { minLength: 2, maxLength: 9 })
    fc.assert(
      fc.property(fc.tuple(weights, weights), ([a, b]) => {
        const n = Math.min(a.length, b.length)
        const list = (from: readonly number[]) =>
          from.slice(0, n).map((tenths, i) => ({ id: `${i}`, gr: tenths / 10, givesGr: 0 }))
        const [arrows, heads] = [list(a), list(b)]
        const tray: Tray = { lists: [arrows, heads], besidesGr: 0, targetGr: 1, toleranceGr: 5000 }
        const rising = arrows.map(({ gr }) => gr).toSorted((x, y) => x - y)
        const falling = heads.map(({ gr }) => gr).toSorted((x, y) => y - x)
        const sums = rising.map((gr, i) => gr + falling[i]!)
        const opposite = Math.max(...sums) - Math.min(...sums)
        expect(pairSet(tray, 'spread').set!.spreadGr).toBeCloseTo(opposite, 9)
      }),
      { numRuns: 300 },
    )
  })

  it('uses each item once, trims each arrow to the target, and says what is left over', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const tray = randomTray(seed, 6, 4, 2)
      const { set } = pairSet(tray, 'trimming')
      const used = set!.arrows.flatMap(({ items }) => items.map(({ id }) => id))
      const left = set!.left.flat().map(({ id }) => id)
      expect(new Set(used).size).toBe(24)
      expect([...used, ...left].toSorted()).toEqual(
        tray.lists
          .flat()
          .map(({ id }) => id)
          .toSorted(),
      )
      for (const { items, beforeGr, trimGr, finishedGr, missGr } of set!.arrows) {
        expect(beforeGr).toBeCloseTo(
          items.reduce((sum, { gr }) => sum + gr, tray.besidesGr),
          9,
        )
        expect(trimGr).toBeLessThanOrEqual(items.reduce((sum, { givesGr }) => sum + givesGr, 0) + 1e-9)
        expect(finishedGr).toBeCloseTo(beforeGr - trimGr, 9)
        if (missGr === 0) expect(Math.abs(finishedGr - tray.targetGr)).toBeLessThanOrEqual(tray.toleranceGr + 1e-9)
      }
    }
  }, 60_000)

  it('names the arrows that cannot reach the target with these parts', () => {
    const tray = { ...randomTray(1, 4, 3), targetGr: 700 }
    const { set, findings } = pairSet(tray, 'trimming')
    expect(findings).toEqual([
      { code: 'arrows-miss-target', arrows: ['0-0', '0-1', '0-2', '0-3'], missGr: set!.worth.missGr },
    ])
  })

  it.each<[string, Partial<Tray>, object]>([
    ['no arrows', { lists: [[], []] }, { code: 'no-arrows' }],
    ['no lists', { lists: [] }, { code: 'no-arrows' }],
    [
      'too few heads',
      { lists: [randomTray(1, 4, 1).lists[0]!, randomTray(1, 3, 1).lists[0]!] },
      { code: 'list-too-short', list: 1, has: 3, needs: 4 },
    ],
    [
      'a weight that is none',
      { lists: [[{ id: 'x', gr: Number.NaN, givesGr: 0 }]] },
      { code: 'weight-not-usable', id: 'x' },
    ],
    ['a negative weight', { besidesGr: -1 }, { code: 'weight-not-usable', id: 'besides', gr: -1 }],
    ['no target', { targetGr: 0 }, { code: 'target-not-usable', targetGr: 0 }],
    ['an infinite tolerance', { toleranceGr: Infinity }, { code: 'target-not-usable' }],
    [
      'more arrows than a tray holds',
      { lists: [randomTray(1, 25, 1).lists[0]!] },
      { code: 'too-many-arrows', arrows: 25, most: 24 },
    ],
  ])('has findings and no pairing for %s', (_, change, finding) => {
    const { set, findings } = pairSet({ ...randomTray(1, 4, 3), ...change }, 'spread')
    expect(set).toBeUndefined()
    expect(findings[0]).toMatchObject(finding)
  })

  it('pairs twelve arrows of four lists, and says how near to the best it is', () => {
    for (const minimise of BOTH) {
      const { set } = pairSet(randomTray(5, 12, 4, 2), minimise)
      expect(worthBefore(set!.bound, set!.worth)).toBeLessThanOrEqual(1e-9)
    }
  })
})
