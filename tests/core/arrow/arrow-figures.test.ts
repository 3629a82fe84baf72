import { describe, expect, it } from 'vitest'
import { arrowFigures, type ArrowInputs } from '@/core/arrow/arrow-figures'
import { balancePoint } from '@/core/balance/balance-point'
import { bowSpeed } from '@/core/bow/bow-speed'
import { bounds, type Outcome } from '@/core/outcome'
import {
  feetPerSecond,
  grains,
  inches,
  inFeetPerSecond,
  inGrains,
  inInches,
  inUnit,
  poundsForce,
  quantity,
  ratio,
} from '@/core/quantity'
import { columnReserve } from '@/core/stiffness/column-reserve'
import { heavyArrow, ofSpine } from '@tests/core/stiffness/sample-arrow'
import { answer } from '@tests/support/answer'

const bow = {
  kind: 'compound',
  peakDrawWeight: poundsForce(72),
  drawLength: inches(28.5),
  chronograph: [
    { mass: grains(452), speed: feetPerSecond(268) },
    { mass: grains(601), speed: feetPerSecond(236.5) },
  ],
} as const
const spread = { shaft: grains(1), pieces: heavyArrow.pieces.map(() => grains(0.4)), place: inches(0.02) }
const figuresOf = (changes: Partial<ArrowInputs> = {}) => arrowFigures({ arrow: heavyArrow, bow, ...changes })
const told = <T>(outcome: Outcome<T> | undefined): T => {
  if (outcome === undefined) throw new Error('there is no such figure')
  return answer(outcome)
}
const codes = (outcome: Outcome<unknown> | undefined) => outcome?.findings.map(({ code }) => code)

/** Ten grains of arrow off the strongest bow in the model, which moves no mass of its own: far beyond the speeds of arrows. */
const tooFast = {
  arrow: { length: inches(28), shaft: { mass: grains(10), rear: inches(0), rigidity: ofSpine(340) }, pieces: [] },
  bow: {
    kind: 'compound',
    peakDrawWeight: poundsForce(300),
    virtualMass: { value: grains(0), sd: grains(0) },
    forceDraw: [6, 16, 30].map((draw, i) => ({ draw: inches(draw), force: poundsForce([0, 300, 300][i]!) })),
  },
} as const

describe('arrowFigures', () => {
  it('works out the sum of the parts, and FOC to the shaft front where no other length is told', () => {
    const { finished, balance, foc } = figuresOf()
    expect(inGrains(answer(finished))).toBeCloseTo(341 + 11 + 28 + 152 + 20 + 2.2 + 250, 9)
    expect(balance).toMatchObject({ value: answer(balancePoint(heavyArrow)).point })
    expect(answer(foc)).toBeCloseTo(answer(balancePoint(heavyArrow)).point / heavyArrow.length - 0.5, 12)
  })

  it('measures FOC to the length told, with the balance point under it in the working', () => {
    const { foc } = figuresOf({ focLength: inches(29) })
    expect(answer(foc)).toBeCloseTo(answer(balancePoint(heavyArrow)).point / inches(29) - 0.5, 12)
    expect(foc.ok && foc.derivation.steps?.[0]?.result.map(({ name }) => name)).toContain('balance point')
  })

  it('gives the balance point its band once it is told how unsure the parts are', () => {
    const { balance } = figuresOf({ spread })
    const { value, low, high, sd } = answer(balance) as { value: number; low: number; high: number; sd: number }
    expect(value).toBe(answer(balancePoint(heavyArrow)).point)
    expect(high - low).toBeCloseTo(2 * 1.959_964 * sd, 9) // 95 % of a normal distribution
    expect(inInches(quantity(sd, 'm'))).toBeGreaterThan(0.001)
  })

  // [MECHANICS]: E = ½mv² and p = mv at the value and at both ends of the band.
  it('carries the band of the speed through energy and momentum', () => {
    const { speed, kineticEnergy, momentum, provenance } = figuresOf()
    const [v, e, p] = [told(speed), told(kineticEnergy), told(momentum)]
    const mass = grains(804.2)
    expect(provenance).toBe('chronograph')
    for (const end of ['value', 'low', 'high'] as const) {
      expect(e[end] / ((mass * v[end] ** 2) / 2)).toBeCloseTo(1, 12)
      expect(p[end] / (mass * v[end])).toBeCloseTo(1, 12)
    }
    expect(p.sd / (mass * v.sd)).toBeCloseTo(1, 9)
    expect(e.sd / ((mass * ((v.value + v.sd) ** 2 - v.value ** 2)) / 2)).toBeCloseTo(1, 9)
  })

  it('keeps the working of the speed under energy and momentum', () => {
    const { kineticEnergy, momentum } = figuresOf()
    for (const outcome of [kineticEnergy, momentum]) {
      const steps = outcome?.ok ? outcome.derivation.steps : []
      expect(steps?.map(({ equation }) => equation)).toEqual(['v = √(2·E / (m + m_v))'])
    }
  })

  it('hands on what the bow is worth: energy, virtual mass, speed and where it came from', () => {
    const fitted = figuresOf()
    const from = answer(bowSpeed(grains(804.2), bow))
    expect(told(fitted.bowEnergy)).toEqual(from.energy)
    expect(told(fitted.virtualMass)).toEqual(from.virtualMass)
    expect(told(fitted.speed).value).toBeCloseTo(from.speed.value, 9)
    // 804.2 gr on 72 lb.
    expect(inUnit(told(fitted.grainsPerPound), 'gr/lb')).toBeCloseTo(804.2 / 72, 9)
  })

  it.each([
    ['a chronograph', { chronograph: bow.chronograph }, 'chronograph'],
    ['a force-draw curve', { forceDraw: tooFast.bow.forceDraw }, 'force-draw curve'],
    [
      'a rating',
      { ratedSpeed: feetPerSecond(335), peakDrawWeight: bow.peakDrawWeight, drawLength: bow.drawLength },
      'rating',
    ],
  ] as const)('takes the speed from %s alone', (_, known, provenance) => {
    const figures = figuresOf({ bow: { kind: 'compound', ...known } })
    expect(figures.provenance).toBe(provenance)
    expect(inFeetPerSecond(told(figures.speed).value)).toBeGreaterThan(100)
  })

  it.each([{ kind: 'recurve' }, { kind: 'recurve', chronograph: [], forceDraw: [] }] as const)(
    'has no figure of a bow of which nothing is known, %o',
    (nothing) => {
      const figures = figuresOf({ bow: nothing })
      const { finished, balance, foc, ...ofBow } = figures
      expect([finished.ok, balance.ok, foc.ok]).toEqual([true, true, true])
      expect(Object.values(ofBow).filter((each) => each !== undefined)).toEqual([])
    },
  )

  it('works out weight per pound and the reserve by the typical virtual mass while no speed is known', () => {
    const { columnReserve: reserve, speed } = figuresOf({ bow: { kind: 'longbow', peakDrawWeight: poundsForce(72) } })
    expect(speed).toBeUndefined()
    const launch = { peakDraw: poundsForce(72), virtualMass: grains(130) } // common practice, no source
    expect(told(reserve)).toMatchObject({ value: answer(columnReserve(heavyArrow, launch)) })
  })

  it('believes a virtual mass that is told before the typical one', () => {
    const virtualMass = { value: grains(60) }
    const { columnReserve: reserve } = figuresOf({
      bow: { kind: 'compound', peakDrawWeight: poundsForce(72), virtualMass },
    })
    const launch = { peakDraw: poundsForce(72), virtualMass: grains(60) }
    expect(told(reserve)).toMatchObject({ value: answer(columnReserve(heavyArrow, launch)) })
  })

  it('gives the reserve its band from two chronograph readings, near in weight as they may be', () => {
    const reserve = told(figuresOf().columnReserve) as { readonly value: number; readonly low: number }
    expect(reserve.low).toBeLessThan(reserve.value)
  })

  it('gives the reserve without a band where its band would mean nothing', () => {
    const virtualMass = { value: grains(60), sd: grains(1500) }
    const { columnReserve: reserve } = figuresOf({
      bow: { kind: 'compound', peakDrawWeight: poundsForce(72), virtualMass },
      reserveBand: bounds(ratio(0.01), ratio(0.02)),
    })
    const launch = { peakDraw: poundsForce(72), virtualMass: grains(60) }
    expect(told(reserve)).toBe(answer(columnReserve(heavyArrow, launch)))
    expect(codes(reserve)).toEqual(['reserve-above-band'])
  })

  it('says on which side of the band the reserve is, and nothing within it', () => {
    const typical = { kind: 'compound', peakDrawWeight: poundsForce(72) } as const
    const { value } = told(figuresOf({ bow: typical }).columnReserve) as { readonly value: number }
    const band = (low: number, high: number) =>
      codes(figuresOf({ bow: typical, reserveBand: bounds(ratio(value * low), ratio(value * high)) }).columnReserve)
    expect(band(1.01, 2)).toEqual(['reserve-below-band'])
    expect(band(0.5, 0.99)).toEqual(['reserve-above-band'])
    expect(band(0.99, 1.01)).toEqual([])
  })

  it('says what is wrong with the arrow in every figure that needs it', () => {
    const broken = { ...heavyArrow, shaft: { ...heavyArrow.shaft, mass: grains(NaN) } }
    const figures = figuresOf({ arrow: broken, reserveBand: bounds(ratio(0.75), ratio(1.3)) })
    for (const outcome of [figures.finished, figures.balance, figures.foc, figures.columnReserve]) {
      expect(outcome).toMatchObject({ ok: false, findings: [{ code: 'outside-model' }] })
    }
    expect([figures.speed, figures.kineticEnergy, figures.momentum, figures.grainsPerPound]).toEqual(
      Array.from({ length: 4 }),
    )
    expect(figures.bowEnergy?.ok).toBe(true)
  })

  it('refuses FOC to a length that is none', () => {
    expect(figuresOf({ focLength: inches(NaN) }).foc).toMatchObject({
      ok: false,
      findings: [{ input: 'arrow length' }],
    })
  })

  it('says in speed, energy and momentum why a bow gives no speed', () => {
    const figures = figuresOf({ bow: { ...bow, chronographSd: feetPerSecond(NaN) } })
    for (const outcome of [figures.bowEnergy, figures.virtualMass, figures.speed]) {
      expect(outcome).toMatchObject({ ok: false, findings: [{ input: 'chronograph error' }] })
    }
    expect(figures.kineticEnergy).toEqual(figures.speed)
    expect(figures.momentum).toEqual(figures.speed)
    expect(figures.provenance).toBeUndefined()
  })

  it('gives no energy or momentum where the speed, or an end of its band, is beyond any arrow', () => {
    const figures = figuresOf(tooFast)
    expect(inFeetPerSecond(told(figures.speed).value)).toBeGreaterThan(2000)
    for (const outcome of [figures.kineticEnergy, figures.momentum]) {
      expect(outcome).toMatchObject({ ok: false, findings: [{ input: 'arrow speed' }] })
    }
  })
})
