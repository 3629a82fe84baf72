import { describe, expect, it } from 'vitest'
import { grams, kilogramsPerMetre, metres, newtonSquareMetres, scaled, sum } from '@/core/quantity'
import { bendingFrequency } from '@/core/stiffness/bending-frequency'
import { outlineArrow } from '@/core/stiffness/outline-arrow'
import { answer } from '@tests/support/answer'
import { heavyArrow } from './sample-arrow'

const LENGTH = 0.7239 // m
const SHAFT = 0.017_544_3 // kg
const RIGIDITY = 8.4873 // N·m²
const fronted = (share: number) =>
  outlineArrow({
    length: metres(LENGTH),
    rigidity: newtonSquareMetres(RIGIDITY),
    shaftWeightPerLength: kilogramsPerMetre(SHAFT / LENGTH),
    frontMass: grams(1000 * SHAFT * share),
    rearMass: grams(0),
  })

describe('bendingFrequency', () => {
  it.each([
    // [THOMSON] App. D for the bare beam; the others by finite elements and by the frequency equation [OWN]
    { share: 0, hertz: 127.16, root: 22.3733 },
    { share: 0.5, hertz: 96.86, root: 17.0415 },
    { share: 1, hertz: 92.85, root: 16.3364 },
  ])('is $hertz Hz with $share of the shaft’s weight in front', ({ share, hertz, root }) => {
    const found = answer(bendingFrequency(fronted(share)))
    expect(Math.abs(found - hertz)).toBeLessThanOrEqual(0.005)
    expect(Math.abs(2 * Math.PI * found * Math.sqrt((SHAFT * LENGTH ** 3) / RIGIDITY) - root)).toBeLessThanOrEqual(
      0.00005,
    )
  })

  it('meets the free beam’s cos β·cosh β = 1', () => {
    // [THOMSON] β₁L = 4.7300
    const beta = Math.sqrt(
      2 * Math.PI * answer(bendingFrequency(fronted(0))) * Math.sqrt((SHAFT * LENGTH ** 3) / RIGIDITY),
    )
    expect(Math.abs(beta - 4.73)).toBeLessThanOrEqual(0.00005)
    expect(Math.cos(beta) * Math.cosh(beta)).toBeCloseTo(1, 5)
  })

  it('is the same with the arrow turned end for end', () => {
    const { length, shaft, pieces } = heavyArrow
    const bare = { ...heavyArrow, shaft: { ...shaft, rear: metres(0) } }
    const turned = {
      ...bare,
      pieces: pieces.map((p) => ({ ...p, from: sum(length, scaled(p.to, -1)), to: sum(length, scaled(p.from, -1)) })),
    }
    expect(answer(bendingFrequency(turned)) / answer(bendingFrequency(bare))).toBeCloseTo(1, 9)
  })

  it('falls with weight in front and rises with stiffness as its square root', () => {
    const stiffer = { ...heavyArrow, shaft: { ...heavyArrow.shaft, rigidity: scaled(heavyArrow.shaft.rigidity, 4) } }
    const unbonded = {
      ...heavyArrow,
      pieces: heavyArrow.pieces.map(({ name, mass, from, to }) => ({ name, mass, from, to })),
    }
    const unbondedStiffer = { ...unbonded, shaft: stiffer.shaft }
    expect(answer(bendingFrequency(unbondedStiffer)) / answer(bendingFrequency(unbonded))).toBeCloseTo(2, 10)
    expect(answer(bendingFrequency(fronted(2)))).toBeLessThan(answer(bendingFrequency(fronted(1))))
    expect(answer(bendingFrequency(heavyArrow))).toBeGreaterThan(answer(bendingFrequency(unbonded)))
  })

  it('takes a weight in the middle of the shaft for one at rest when it is heavy enough', () => {
    // A free beam with an immovable middle is two cantilevers of half the length: βL = 1.8751 [THOMSON] App. D
    const half = LENGTH / 2
    const pinned = {
      ...fronted(0),
      pieces: [{ name: 'block', mass: grams(600), from: metres(half), to: metres(half) }],
    }
    const cantilever = (1.875_104 ** 2 / (2 * Math.PI)) * Math.sqrt(RIGIDITY / ((SHAFT / LENGTH) * half ** 4))
    expect(Math.abs(answer(bendingFrequency(pinned)) / cantilever - 1)).toBeLessThan(0.01)
  })
})
