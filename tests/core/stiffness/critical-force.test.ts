import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Arrow, Piece } from '@/core/arrow/arrow'
import { gigapascals, grains, inches, millimetres, newtonSquareMetres, kilograms, metres } from '@/core/quantity'
import { bendingFrequency } from '@/core/stiffness/bending-frequency'
import { criticalForce } from '@/core/stiffness/critical-force'
import { answer } from '@tests/support/answer'
import { heavyArrow } from './sample-arrow'

const withShaft = (shaft: Partial<Arrow['shaft']>): Arrow => ({
  ...heavyArrow,
  shaft: { ...heavyArrow.shaft, ...shaft },
})
const withPart = (part: Partial<Piece>): Arrow => ({
  ...heavyArrow,
  pieces: [{ name: 'wrap', mass: grains(8), from: inches(1), to: inches(5), ...part }],
})

describe('criticalForce', () => {
  it('shows every number that went in', () => {
    const found = criticalForce(heavyArrow)
    const names = found.ok ? found.derivation.inputs.map(({ name }) => name) : []
    expect(names).toContain('shaft rigidity')
    expect(names).toContain('post, rigidity')
    expect(names).toContain('head, weight')
    expect(names.filter((name) => name.endsWith(', rigidity'))).toHaveLength(2)
  })

  it('answers for more parts than most arrows have', () => {
    const many = { ...heavyArrow, pieces: Array.from({ length: 60 }, () => heavyArrow.pieces).flat() }
    expect(answer(criticalForce(many))).toBeGreaterThan(0)
  })

  it.each<[string, Arrow, object]>([
    ['a length just too short', { ...heavyArrow, length: inches(3.99) }, { input: 'arrow length' }],
    ['a length just too long', { ...heavyArrow, length: inches(80.01) }, { input: 'arrow length' }],
    ['no length', { ...heavyArrow, length: inches(NaN) }, { input: 'arrow length' }],
    ['a shaft rear too far behind', withShaft({ rear: inches(-6.01) }), { input: 'shaft rear' }],
    ['a shaft rear too far ahead', withShaft({ rear: inches(12.01) }), { input: 'shaft rear' }],
    [
      'a shaft that starts at its own front',
      { ...withShaft({ rear: inches(5) }), length: inches(5) },
      { code: 'shaft-has-no-length' },
    ],
    ['a shaft too light', withShaft({ mass: grains(9.9) }), { input: 'shaft weight' }],
    ['a shaft too heavy', withShaft({ mass: grains(10_001) }), { input: 'shaft weight' }],
    ['a shaft too soft', withShaft({ rigidity: newtonSquareMetres(0.84) }), { input: 'flexural rigidity' }],
    ['a shaft too stiff', withShaft({ rigidity: newtonSquareMetres(127.5) }), { input: 'flexural rigidity' }],
    ['a part of negative weight', withPart({ mass: grains(-0.1) }), { input: 'weight of wrap' }],
    ['a part too heavy', withPart({ mass: grains(10_001) }), { input: 'weight of wrap' }],
    ['a part too far behind', withPart({ from: inches(-24.1) }), { input: 'rear end of wrap' }],
    ['a part too far ahead', withPart({ to: inches(120.1) }), { input: 'front end of wrap' }],
    ['a part that runs backwards', withPart({ from: inches(5.1) }), { code: 'part-runs-backwards', part: 'wrap' }],
    [
      'a tube with an impossible bore',
      withPart({
        bonded: { outerDiameter: millimetres(5), innerDiameter: millimetres(6), youngsModulus: gigapascals(70) },
      }),
      { code: 'bore-wider-than-tube', part: 'wrap' },
    ],
  ])('says what is wrong with %s, and so does the frequency', (_, arrow, finding) => {
    expect(criticalForce(arrow)).toMatchObject({ ok: false, findings: [finding] })
    expect(bendingFrequency(arrow)).toMatchObject({ ok: false, findings: [finding] })
  })

  it('names everything that is wrong at once', () => {
    const found = criticalForce({ ...withPart({ mass: grains(NaN) }), length: inches(-1) })
    expect(found.findings.map((f) => f.code)).toEqual(['outside-model', 'shaft-has-no-length', 'outside-model'])
  })

  it('never answers with anything but a finite force above nothing, whatever it is given', { timeout: 60_000 }, () => {
    const wild = fc.oneof(fc.double(), fc.constantFrom(0, -1, 1e-320, NaN, Infinity, -Infinity, 1e300))
    const sane = (min: number, max: number) =>
      fc.oneof({ weight: 9, arbitrary: fc.double({ min, max, noNaN: true }) }, wild)
    const place = sane(-0.5, 3).map(metres)
    const mass = sane(0, 0.6).map(kilograms)
    const piece = fc.record({
      name: fc.constant('part'),
      mass,
      from: place,
      to: place,
      bonded: fc.option(
        fc.record({
          outerDiameter: sane(0, 0.04).map(metres),
          innerDiameter: sane(0, 0.04).map(metres),
          youngsModulus: sane(0, 1e12).map((n) => gigapascals(n / 1e9)),
        }),
        { nil: undefined },
      ),
    })
    const arrow = fc.record({
      length: sane(0.1, 2).map(metres),
      shaft: fc.record({
        mass: sane(0.001, 0.6).map(kilograms),
        rear: place,
        rigidity: sane(1, 120).map(newtonSquareMetres),
      }),
      pieces: fc.array(
        piece.map(({ bonded, ...rest }) => (bonded === undefined ? rest : { ...rest, bonded })),
        { maxLength: 3 },
      ),
    })
    let answered = 0
    fc.assert(
      fc.property(arrow, (a) => {
        for (const found of [criticalForce(a), bendingFrequency(a)]) {
          if (found.ok) answered++
          else expect(found.findings.length).toBeGreaterThan(0)
          expect(!found.ok || (Number.isFinite(found.value) && found.value > 0)).toBe(true)
        }
      }),
      { numRuns: 3000 },
    )
    expect(answered).toBeGreaterThan(100)
  })
})
