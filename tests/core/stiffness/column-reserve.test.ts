import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Arrow } from '@/core/arrow/arrow'
import { grains, grainsPerInch, inches, inInches, inPoundsForce, poundsForce, scaled } from '@/core/quantity'
import { columnReserve } from '@/core/stiffness/column-reserve'
import { finishedMass } from '@/core/stiffness/critical-force'
import { lengthened } from '@/core/stiffness/lengthened'
import { nockForce } from '@/core/stiffness/nock-force'
import { outlineArrow } from '@/core/stiffness/outline-arrow'
import { answer } from '@tests/support/answer'
import { CUSTOMARY_PICKS } from './customary-picks'
import { heavyArrow, ofSpine } from './sample-arrow'

const launch = (lbf: number, virtualGr = 50) => ({ peakDraw: poundsForce(lbf), virtualMass: grains(virtualGr) })
const outline = (spine: number, gpi: number, frontGr: number, length = 28) =>
  outlineArrow({
    length: inches(length),
    rigidity: ofSpine(spine),
    shaftWeightPerLength: grainsPerInch(gpi),
    frontMass: grains(frontGr),
    rearMass: grains(40),
  })

/** Shaft of 28 in, a 12 gr nock reaching 0.55 in behind it, 28 gr of vanes at 1.5 to 4.3 in, the head at the front. */
const dressed = (spine: number, gpi: number, frontGr: number): Arrow => ({
  length: inches(28.55),
  shaft: { mass: grains(28 * gpi), rear: inches(0.55), rigidity: ofSpine(spine) },
  pieces: [
    { name: 'nock', mass: grains(12), from: inches(0), to: inches(0.55) },
    { name: 'vanes', mass: grains(28), from: inches(1.5), to: inches(4.3) },
    { name: 'head', mass: grains(frontGr), from: inches(28.55), to: inches(28.55) },
  ],
})

describe('columnReserve', () => {
  it.each(CUSTOMARY_PICKS)('is $reserve for the customary $lbf lb pick in outline', (pick) => {
    const reserve = answer(columnReserve(outline(pick.spine, pick.gpi, pick.frontGr), launch(pick.lbf)))
    expect(Math.abs(reserve - pick.reserve)).toBeLessThanOrEqual(0.0005)
  })

  it.each([
    // The 70 lb and the 85 lb pick as real columns, by finite elements and by shooting [OWN]
    { lbf: 70, spine: 340, gpi: 9.3, frontGr: 125, reserve: 0.799 },
    { lbf: 85, spine: 150, gpi: 13.27, frontGr: 590, reserve: 1.124 },
  ])('is $reserve for the $lbf lb pick with its nock and vanes on', ({ lbf, spine, gpi, frontGr, reserve }) => {
    const found = answer(columnReserve(dressed(spine, gpi, frontGr), launch(lbf)))
    expect(Math.abs(found - reserve)).toBeLessThanOrEqual(0.0005)
  })

  it('makes an inch of an even shaft worth 7.3 percent, 5.1 lb at 70 lb', () => {
    // (29/28)² − 1 at one weight of shaft; customarily about 5 lb [CP]
    const even = (length: number) =>
      columnReserve({ ...outline(340, 9.3, 125, length), shaft: { ...outline(340, 9.3, 125).shaft } }, launch(70))
    const inchWorth = answer(even(28)) / answer(even(29)) - 1
    expect(Math.abs(100 * inchWorth - 7.3)).toBeLessThanOrEqual(0.05)
    expect(Math.abs(70 * inchWorth - 5.1)).toBeLessThanOrEqual(0.05)
  })

  it('falls as the arrow is cut longer, the draw grows or the head gets heavier, and rises with a stiffer shaft', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 4, noNaN: true }),
        fc.double({ min: 1.001, max: 1.5, noNaN: true }),
        (inch, factor) => {
          const before = answer(columnReserve(heavyArrow, launch(72)))
          const heavier = heavyArrow.pieces.map((p) => (p.name === 'head' ? { ...p, mass: scaled(p.mass, factor) } : p))
          const stiffer = { ...heavyArrow.shaft, rigidity: scaled(heavyArrow.shaft.rigidity, factor) }
          expect(answer(columnReserve(lengthened(heavyArrow, inches(inch)), launch(72)))).toBeLessThan(before)
          expect(answer(columnReserve({ ...heavyArrow, pieces: heavier }, launch(72)))).toBeLessThan(before)
          expect(answer(columnReserve({ ...heavyArrow, shaft: stiffer }, launch(72)))).toBeGreaterThan(before)
          expect(answer(columnReserve(heavyArrow, launch(72 * factor))) * factor).toBeCloseTo(before, 12)
        },
      ),
      { numRuns: 30 },
    )
  })

  it('rises with the bow’s virtual mass, which takes its share of the force', () => {
    expect(answer(columnReserve(heavyArrow, launch(72, 110)))).toBeGreaterThan(
      answer(columnReserve(heavyArrow, launch(72, 60))),
    )
  })

  it('is refused for an arrow that cannot be one', () => {
    expect(columnReserve({ ...heavyArrow, length: inches(0) }, launch(72)).findings[0]).toMatchObject({
      input: 'arrow length',
    })
  })

  it('shows both forces and how each was found', () => {
    const found = columnReserve(heavyArrow, launch(72))
    expect(found.ok && found.derivation.steps?.map((step) => step.result[0]?.name)).toEqual([
      'critical force at the nock',
      'force at the nock',
    ])
    expect(found.ok && found.derivation.inputs.map((input) => input.value)).toHaveLength(2)
    expect(found.ok && found.derivation.inputs[0]!.value / found.derivation.inputs[1]!.value).toBeCloseTo(
      answer(found),
      12,
    )
  })
})

describe('nockForce', () => {
  it('is the peak draw weight less the share the bow’s own mass takes', () => {
    // [OWN] 70·800/880
    expect(inPoundsForce(answer(nockForce(launch(70, 80), grains(800))))).toBeCloseTo(63.636_363_636, 8)
  })

  it.each([
    [0.99, 50, 800, 'peak draw weight'],
    [300.1, 50, 800, 'peak draw weight'],
    [NaN, 50, 800, 'peak draw weight'],
    [70, -0.1, 800, 'virtual mass'],
    [70, 2000.1, 800, 'virtual mass'],
    [70, NaN, 800, 'virtual mass'],
    [70, 50, 9.9, 'finished weight'],
    [70, 50, 100_001, 'finished weight'],
    [70, 50, NaN, 'finished weight'],
  ])('gives no force at %d lb, virtual mass %d gr, arrow %d gr', (lbf, virtualGr, arrowGr, input) => {
    expect(nockForce(launch(lbf, virtualGr), grains(arrowGr))).toMatchObject({
      ok: false,
      findings: [{ code: 'outside-model', input }],
    })
  })

  it('is refused on behalf of the reserve', () => {
    expect(columnReserve(heavyArrow, launch(0))).toMatchObject({ ok: false, findings: [{ input: 'peak draw weight' }] })
  })
})

describe('lengthened', () => {
  it('keeps the weight per inch of the shaft and moves only what sits in front', () => {
    const longer = lengthened(heavyArrow, inches(1))
    const perInch = ({ shaft, length }: Arrow) => shaft.mass / (length - shaft.rear)
    expect(perInch(longer)).toBeCloseTo(perInch(heavyArrow), 12)
    expect(longer.pieces.map((p) => inInches(p.from))).toEqual(
      [0, 1.5, 27.45, 28.3, 28.5, 29.05].map((at) => expect.closeTo(at, 10)),
    )
  })

  it('is undone by shortening as much', () => {
    const back = lengthened(lengthened(heavyArrow, inches(1.25)), inches(-1.25))
    expect(back.shaft.mass).toBeCloseTo(heavyArrow.shaft.mass, 15)
    expect(back.length).toBeCloseTo(heavyArrow.length, 15)
    expect(finishedMass(back)).toBeCloseTo(finishedMass(heavyArrow), 15)
  })
})
