import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bowSpeed } from '@/core/bow/bow-speed'
import { grainsPerPound } from '@/core/energy/grains-per-pound'
import { kineticEnergy } from '@/core/energy/kinetic-energy'
import { momentum } from '@/core/energy/momentum'
import {
  feetPerSecond,
  grains,
  inFeetPerSecond,
  inFootPounds,
  inGrains,
  inInches,
  inSlugFeetPerSecond,
  inUnit,
  poundsForce,
} from '@/core/quantity'
import { assumedIn, valueIn } from '@/domain/call/follows'
import { implications } from '@/domain/call/implications'
import { QUESTIONS } from '@/domain/call/questions'
import { DEFAULT_RULES } from '@/domain/shop/rules'
import { EMPTY_SHELF } from '@/domain/stock/shelf'
import { answer } from '@tests/support/answer'
import { stockedShelf } from './stocked-shelf'
import { told, TODAY } from './told-call'

const follows = (answers: Parameters<typeof told>[0], shelf = EMPTY_SHELF) =>
  implications(told(answers), DEFAULT_RULES, shelf, TODAY)

describe('implications', () => {
  it('says something useful from draw weight and finished weight alone, and marks what it assumed', () => {
    const { flight, spine, shortest } = follows({ peakDrawWeightLb: 72, wishWeightGr: 825 })
    expect(inUnit(valueIn(flight.perLb)!, 'gr/lb')).toBeCloseTo(825 / 72, 9)
    const called = valueIn(spine)!
    expect(inInches(called.stiffest)).toBeLessThan(inInches(called.softest))
    expect(valueIn(shortest)?.isEstimated).toBe(true)
    const speed =
      flight.speed.kind === 'figure' && flight.speed.outcome.ok ? flight.speed.outcome.derivation : undefined
    expect(assumedIn(speed!).map(({ name }) => name)).toEqual(
      expect.arrayContaining(['draw length', 'rated speed', 'brace height', 'virtual mass']),
    )
  })

  it('assumes nothing of the bow that was told', () => {
    const { flight } = follows({
      peakDrawWeightLb: 72,
      wishWeightGr: 825,
      drawLengthIn: 28.5,
      braceHeightIn: 6.75,
      ratedSpeedFps: 330,
    })
    const speed =
      flight.speed.kind === 'figure' && flight.speed.outcome.ok ? flight.speed.outcome.derivation : undefined
    expect(assumedIn(speed!).map(({ name }) => name)).toEqual(['virtual mass'])
  })

  it('shows the figures that the core gives for the same bow and weight', () => {
    const chronograph: [number, number][] = [
      [452, 268],
      [601, 236.5],
    ]
    const { flight } = follows({ peakDrawWeightLb: 72, wishWeightGr: 825, chronograph })
    const mass = grains(825)
    const core = answer(
      bowSpeed(mass, {
        kind: 'compound',
        chronograph: chronograph.map(([gr, fps]) => ({ mass: grains(gr), speed: feetPerSecond(fps) })),
      }),
    )
    expect(valueIn(flight.speed)?.speed).toEqual(core.speed)
    expect(valueIn(flight.energy)?.value).toBe(answer(kineticEnergy(mass, core.speed.value)))
    expect(valueIn(flight.energy)?.low).toBe(answer(kineticEnergy(mass, core.speed.low)))
    expect(valueIn(flight.momentum)?.high).toBe(answer(momentum(mass, core.speed.high)))
    expect(valueIn(flight.perLb)).toBe(answer(grainsPerPound(mass, poundsForce(72))))
  })

  // Common practice, no source: a compound of 70 lb, 29 in, rated 335 ft/s, shoots 245, 220, 211, 201 ft/s.
  it.each([
    [650, 245],
    [825, 220],
    [900, 211],
    [1000, 201],
  ])('has a typical 70 lb compound shoot %d gr at about %d ft/s', (wishWeightGr, fps) => {
    const { flight } = follows({ peakDrawWeightLb: 70, drawLengthIn: 29, ratedSpeedFps: 335, wishWeightGr })
    const { speed } = valueIn(flight.speed)!
    expect(Math.abs(inFeetPerSecond(speed.value) - fps)).toBeLessThan(0.03 * fps) // the rating's own standard error
    expect(inFeetPerSecond(speed.low)).toBeLessThan(fps)
    expect(inFeetPerSecond(speed.high)).toBeGreaterThan(fps)
  })

  it('trusts the chronograph over the rating', () => {
    const bow = { peakDrawWeightLb: 70, drawLengthIn: 29, ratedSpeedFps: 335, wishWeightGr: 825 }
    expect(valueIn(follows(bow).flight.speed)?.provenance).toBe('rating')
    const measured = follows({
      ...bow,
      chronograph: [
        [450, 270],
        [600, 240],
      ],
    })
    expect(valueIn(measured.flight.speed)?.provenance).toBe('chronograph')
  })

  it('raises the sensible weight to what the guide demands', () => {
    const rule = valueIn(follows({ quarry: 'bison' }).weight)!
    expect([rule.low, rule.high].map(inGrains).map(Math.round)).toEqual([750, 950])
    const raised = valueIn(follows({ quarry: 'American bison', guideLeastGr: 900 }).weight)!
    expect(inGrains(raised.low)).toBeCloseTo(900, 9)
    expect(inGrains(raised.high)).toBeCloseTo(950, 9)
  })

  it('never calls a weight sensible below five grains a pound', () => {
    const { weight } = follows({ quarry: 'deer', peakDrawWeightLb: 140 })
    expect(inGrains(valueIn(weight)!.low)).toBeCloseTo(700, 9)
  })

  it('works with the wish, and says where it lies', () => {
    const { weight } = follows({ quarry: 'moose', wishWeightGr: 560 })
    expect(inGrains(valueIn(weight)!.working)).toBeCloseTo(560, 9)
    expect(valueIn(weight)!.reasons).toContainEqual({ kind: 'wish', gr: 560, is: 'light' })
  })

  it('asks for one of the answers that a figure stands on', () => {
    expect(follows({}).weight).toEqual({ kind: 'needs', anyOf: ['quarry', 'wishWeightGr', 'guideLeastGr'] })
    expect(follows({ quarry: 'moose' }).flight.speed).toMatchObject({ kind: 'needs' })
    expect(follows({ quarry: ' kudu ' }).weight).toEqual({
      kind: 'needs',
      anyOf: ['wishWeightGr', 'guideLeastGr'],
      noRuleFor: 'kudu',
    })
    expect(follows({ quarry: 'kudu', peakDrawWeightLb: 72 }).flight.energy).toEqual({
      kind: 'needs',
      anyOf: ['wishWeightGr', 'guideLeastGr'],
    })
    expect(follows({}).shortest).toMatchObject({ kind: 'needs' })
    expect(follows({}).reach).toEqual({ kind: 'needs', anyOf: [] })
  })

  // Page of the trade: at 28.5 in, rest 0.5 in ahead of the pivot and 1 in of shaft ahead of it, 27.7 in carbon to carbon
  // for field points (28.5 − 1.75 + 0.5 + 1.0 − 0.55).
  it('keeps the shaft front the shop’s clearance ahead of the rest', () => {
    const { shortest } = follows({ drawLengthIn: 28.5, restAheadOfPivotIn: 0.5, headKind: 'field point' })
    expect(inInches(valueIn(shortest)!.c2c)).toBeCloseTo(27.7, 9)
    expect(valueIn(shortest)!.by).toBe('rest')
  })

  it('takes the marks of a nocked arrow over any estimate, and brace height for nothing', () => {
    const marked = { drawLengthIn: 28.5, markAtRestIn: 27.1, markAtRiserIn: 28, headKind: 'broadhead' }
    const { shortest } = follows(marked)
    expect(inInches(valueIn(shortest)!.c2c)).toBeCloseTo(28 + 0.75 - 0.55, 9)
    expect(valueIn(shortest)!.isEstimated).toBe(false)
    expect(follows({ ...marked, braceHeightIn: 8 }).shortest).toEqual(shortest)
  })

  it('calls for a stiffer shaft as the bow gets stronger', () => {
    const softest = [50, 60, 70, 80].map((peakDrawWeightLb) =>
      inInches(valueIn(follows({ peakDrawWeightLb, wishWeightGr: 800 }).spine)!.softest),
    )
    expect(softest).toEqual(softest.toSorted((a, b) => b - a))
    expect(new Set(softest).size).toBe(4)
  })

  it('looks for the longest cut among the shafts on the shelf', () => {
    const { longest } = follows({ peakDrawWeightLb: 72, wishWeightGr: 825, drawLengthIn: 28.5 }, stockedShelf())
    expect(valueIn(longest)).toMatchObject({ isAssumed: false, shaft: { name: 'Tern 200' } })
  })

  it('bounds what the shelf can reach, and says which kinds it lacks', () => {
    const full = valueIn(follows({ peakDrawWeightLb: 72, wishWeightGr: 825 }, stockedShelf()).reach)!
    expect(full.missing).toEqual([])
    expect(inGrains(full.lightest)).toBeLessThan(inGrains(full.heaviest))
    const bare = valueIn(follows({ peakDrawWeightLb: 72, wishWeightGr: 825 }, stockedShelf('shaft', 'nock')).reach)!
    expect(bare.missing).toEqual(['front', 'head', 'fletching'])
  })

  it('counts the days from the one it is handed', () => {
    const { ship } = follows({ travelOn: '2027-01-14' })
    expect(valueIn(ship)).toMatchObject({ readyOn: '2026-12-03', arrivesOn: '2026-12-08', beginBy: '2026-12-30' })
    expect(inUnit(valueIn(ship)!.toSpare!, 'day')).toBeCloseTo(37, 9)
  })

  it('gives energy and momentum in the units of the trade', () => {
    // 650 gr at 250 ft/s: 90.1903 ft·lbf and 0.721522 slug·ft/s, from the definitions of NIST SP 811.
    const { flight } = follows({ wishWeightGr: 650, chronograph: [[650, 250]], peakDrawWeightLb: 70 })
    expect(Math.abs(inFootPounds(valueIn(flight.energy)!.value) - 90.1903)).toBeLessThan(0.00005)
    expect(Math.abs(inSlugFeetPerSecond(valueIn(flight.momentum)!.value) - 0.721522)).toBeLessThan(0.0000005)
  })

  it('answers for any answers that the questions allow', () => {
    const values = fc.record(
      Object.fromEntries(
        QUESTIONS.filter(({ shape }) => shape.kind === 'number').map(({ id, shape }) => [
          id,
          shape.kind === 'number' ? fc.double({ min: shape.min, max: shape.max, noNaN: true }) : fc.constant(0),
        ]),
      ),
      { requiredKeys: [] },
    )
    fc.assert(
      fc.property(values, (some) => {
        const all = follows(some as Parameters<typeof told>[0])
        const text = JSON.stringify(all)
        expect(text).not.toMatch(/null,"sd"|NaN|Infinity/)
      }),
      { numRuns: 60 },
    )
  })
})
