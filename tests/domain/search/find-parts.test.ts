import { describe, expect, it } from 'vitest'
import { reserveOf, solverFor } from '@/domain/search/column'
import { findParts } from '@/domain/search/find-parts'
import { blankJudgement, judge } from '@/domain/search/judge'
import { spaceOf } from '@/domain/search/space'
import type { StockItem } from '@/domain/search/stock-item'
import type { SearchProblem, Wish, Wishes } from '@/domain/search/wishes'
import { searchSpace } from '@tests/bench/search-spaces'
import { stagedLoops } from '@tests/bench/staged-loops'
import { everyCombination } from './every-combination'
import * as make from './shelf-of-stock'
import { between, type Dice, dice, oneOf, problemOf, whole } from './shelf-of-stock'

/** A small shelf with everything on it that can go wrong: too few, wrong thread, wrong bore, equal parts, odd kinds. */
function smallShelf(roll: Dice): StockItem[] {
  const few = (most: number) => whole(roll, 1, most)
  const free = () => oneOf(roll, [2, 6, 6, 6, 12, 12, 20, 20])
  const twin = (items: StockItem[]) =>
    roll() < 0.4
      ? [...items, ...items.slice(0, 1).map((i) => ({ ...i, lot: make.idOf(9_000_000 + whole(roll, 0, 1e6)) }))]
      : items
  return [
    ...twin(
      make.many(few(2), () => {
        const record = make.shaft(
          roll,
          roll() < 0.2
            ? { innerDiameterMm: 5.2 }
            : roll() < 0.2
              ? { rawLengthIn: 29 }
              : roll() < 0.2
                ? { maxFrontWeightGr: 350 }
                : {},
        )
        return make.item(record, free(), record.weightPerInchGr)
      }),
    ),
    ...make.many(few(2), () => make.item(make.nock(roll), free())),
    ...(roll() < 0.2
      ? [
          make.item(make.nock(roll, { fit: 'pin' }), 12),
          make.item({ ...make.nock(roll), kind: 'bushing' as const, flangeIn: 0.1, insideIn: 0.5, weightGr: 12 }, 12),
        ]
      : []),
    ...make.many(few(2), () => make.item(make.vane(roll), 4 * free())),
    ...make.many(whole(roll, 0, 1), () => make.item(make.wrap(roll), free())),
    ...twin(make.many(few(2), () => make.item(make.insert(roll, roll() < 0.3 ? { trimmable: false } : {}), free()))),
    ...(roll() < 0.2 ? [make.item(make.outsert(roll), free())] : []),
    ...make.many(whole(roll, 0, 1), () => make.item(make.collar(roll), free())),
    ...make.many(roll() < 0.3 ? 1 : 0, () => make.item(make.rearWeight(roll), 2 * free())),
    ...twin(make.many(few(2), () => make.item(make.broadhead(roll), free()))),
    ...make.many(whole(roll, 0, 1), () => make.item(make.fieldPoint(roll), free())),
  ]
}

/** Wishes with each constraint on or off, from easy to impossible. */
function wishes(roll: Dice): Partial<Wishes> {
  const on = () => roll() < 0.5
  const foc = between(roll, 10, 28)
  const reserve = between(roll, 0.5, 1.5)
  return {
    targetGr: Math.round(between(roll, 500, 1000)),
    toleranceGr: oneOf(roll, [0.5, 1, 10, 60]),
    overGr: oneOf(roll, [
      { min: 6, max: 9 },
      { min: 0, max: 0 },
      { min: 0, max: 60 },
    ]),
    quantity: oneOf(roll, [1, 3, 6]),
    c2cIn: { min: 27, max: 29, step: oneOf(roll, [0.5, 1]), ...(on() ? { aim: 28 } : {}) },
    ...(on()
      ? { foc: { min: foc, max: foc + oneOf(roll, [0, 2, 15]), tolerance: 0.5, ...(on() ? { aim: foc + 1 } : {}) } }
      : { foc: undefined }),
    ...(on()
      ? {
          reserve: {
            min: reserve,
            max: reserve + oneOf(roll, [0.01, 0.2, 0.8]),
            tolerance: 0.05,
            ...(on() ? { aim: reserve } : {}),
          },
        }
      : { reserve: undefined }),
    ...(on() ? {} : { clearance: undefined }),
    leastChance: on() ? oneOf(roll, [0.5, 0.9, 0.99]) : undefined,
    most: oneOf(roll, [1, 3, 7]),
  } as Partial<Wishes>
}

function randomProblem(seed: number): SearchProblem {
  const roll = dice(seed)
  const problem = problemOf(smallShelf(roll), wishes(roll))
  const frontPoint = roll() < 0.2 ? ('outsert shoulder' as const) : ('shaft front' as const)
  const build = { ...problem.build, fletchSide: oneOf(roll, ['right', 'left', 'straight'] as const), frontPoint }
  const launch = { peakDrawLb: between(roll, 50, 95), virtualMassGr: 85 }
  const { launch: _, ...unknownBow } = problem
  const asked: SearchProblem = roll() < 0.15 ? { ...unknownBow, build } : { ...unknownBow, launch, build }
  return roll() < 0.7 ? aimedAtOne(roll, asked) : asked
}

/** The same, with target, FOC and reserve such that one arrow of the shelf is about right. */
function aimedAtOne(roll: Dice, problem: SearchProblem): SearchProblem {
  const { bodies, rears } = spaceOf(problem)
  if (bodies.length === 0) return problem
  const { body, fronts } = oneOf(roll, bodies)
  const rear = oneOf(roll, rears)
  const front = oneOf(roll, fronts.all)
  const { foc, reserve, overGr } = problem.wishes
  const targetGr = body.weightGr + rear.weightGr + front.weightGr - (front.capacityGr > 0 ? overGr.max : 0)
  const aimed = { ...problem, wishes: { ...problem.wishes, targetGr } }
  const judged = blankJudgement()
  judge(aimed, body, rear, front, judged)
  const around = (wish: Wish, at: number) => ({
    ...wish,
    min: at - (wish.max - wish.min) * 0.7,
    max: at + (wish.max - wish.min) * 0.3,
  })
  const lowest = (wish: Wish) => ({ ...wish, min: Math.max(0, wish.min) })
  const stands = problem.launch && reserveOf(solverFor(problem.launch), body, rear, front, judged.trimGr)
  return {
    ...aimed,
    wishes: {
      ...aimed.wishes,
      ...(foc === undefined ? {} : { foc: around(foc, judged.foc) }),
      ...(reserve === undefined || stands === undefined ? {} : { reserve: lowest(around(reserve, stands)) }),
    },
  }
}

describe('findParts', () => {
  const STOCKS = 2400
  const tally = {
    fits: 0,
    misses: 0,
    nothing: 0,
    ties: 0,
    reserve: 0,
    chance: 0,
    foc: 0,
    clearance: 0,
    combinations: 0,
  }

  it.each(Array.from({ length: 24 }, (_, i) => i))(
    'returns exactly what brute force returns, shelves from %i hundred on',
    (hundred) => {
      for (let seed = hundred * 100; seed < hundred * 100 + 100; seed++) {
        const problem = randomProblem(seed)
        const all = everyCombination(problem)
        const { found, misses, counts } = findParts(problem)
        expect({ seed, fits: found.map((f) => f.rank), misses: misses.map((m) => m.rank) }).toEqual({ seed, ...all })
        tally.combinations += counts.combinations
        if (all.fits.length > 0) tally.fits += 1
        else if (all.misses.length > 0) tally.misses += 1
        else tally.nothing += 1
        const ranks = [...all.fits, ...all.misses]
        if (ranks.some((r, i) => i > 0 && ranks[i - 1]!.broken === r.broken && ranks[i - 1]!.distance === r.distance))
          tally.ties += 1
        if (problem.wishes.reserve !== undefined) tally.reserve += 1
        if (problem.wishes.leastChance !== undefined) tally.chance += 1
        if (problem.wishes.foc !== undefined) tally.foc += 1
        if (problem.wishes.clearance !== undefined) tally.clearance += 1
      }
    },
    60_000,
  )

  it('was put to more than 2,000 shelves, among them fits, misses, empty answers, ties, and each constraint on and off', () => {
    expect(tally.fits + tally.misses + tally.nothing).toBe(STOCKS)
    const { fits, misses, nothing, ties } = tally
    for (const kind of [fits, misses, nothing, ties]) expect(kind).toBeGreaterThan(100)
    for (const on of [tally.reserve, tally.chance, tally.foc, tally.clearance]) {
      expect(on).toBeGreaterThan(STOCKS / 4)
      expect(on).toBeLessThan((3 * STOCKS) / 4)
    }
  })

  it.each([1, 2, 3])(
    'returns what nested loops over a hundred thousand combinations return, shelf %i',
    (seed) => {
      const problem = searchSpace('10⁵', seed)
      expect(findParts(problem).found.map(({ rank }) => rank)).toEqual(stagedLoops(problem, true))
    },
    30_000,
  )
})
