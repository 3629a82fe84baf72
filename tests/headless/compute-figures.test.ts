import { describe, expect, it } from 'vitest'
import { computeFigures } from '@/headless/compute-figures'
import { demoSheet, USUAL_LINES } from '@tests/support/demo-sheet'
import { OUTPUT_NAMES } from './compute-page'
import { OPEN_EXAMPLE } from './open-example'

type Output = Readonly<Record<string, unknown>> & {
  readonly flight: readonly Readonly<Record<string, number>>[]
  readonly findings: readonly { readonly figure: string; readonly code: string }[]
}
function outputOf(told: unknown, working = false): Output {
  const answer = computeFigures(told, working)
  if (!answer.ok) throw new Error(answer.faults.join('\n'))
  return answer.output as Output
}
const faultsOf = (told: unknown) => {
  const answer = computeFigures(told, false)
  return answer.ok ? [] : answer.faults
}
const near = (value: unknown, expected: number, relative: number) =>
  expect(Math.abs((value as number) / expected - 1)).toBeLessThan(relative)
const withBow = (bow: object) => outputOf({ ...OPEN_EXAMPLE, bow })

describe('the open inputs', () => {
  // Computed apart, in another language: sums, a least-squares library, a dense eigenvalue library on 60 cubic elements, an
  // integrator of order 8 to 1e-11.
  it('give what an independent computation of the example gives', () => {
    const output = outputOf(OPEN_EXAMPLE)
    const expected = INDEPENDENT
    for (const [name, value] of Object.entries(expected.figures)) near(output[name], value, 1e-7)
    expected.flight.forEach((row, i) => {
      for (const [name, value] of Object.entries(row)) near(output.flight[i]![name], value, 1e-9)
    })
  })

  it('answer every name of the page, and no other', () => {
    expect(Object.keys(outputOf(OPEN_EXAMPLE))).toEqual(OUTPUT_NAMES)
    expect(Object.keys(outputOf(OPEN_EXAMPLE, true))).toEqual([...OUTPUT_NAMES, 'working'])
  })

  it('take one reading with the virtual mass told, or with that of the kind of bow', () => {
    // E = ½(m + m_v)v²: (500 + 60) gr and (500 + 90) gr at 250 ft/s over 450 436.68.
    const chronograph = [{ arrowGr: 500, speedFps: 250 }]
    near(
      withBow({ peakDrawWeightLbf: 60, virtualMassGr: 60, chronograph })['bowEnergyFtLbf'],
      (560 * 250 ** 2) / 450_436.68,
      1e-7,
    )
    near(
      withBow({ peakDrawWeightLbf: 60, kind: 'recurve', chronograph })['bowEnergyFtLbf'],
      (590 * 250 ** 2) / 450_436.68,
      1e-7,
    )
  })

  it('take a rated speed where there is no reading, and say what it still needs', () => {
    const rated = {
      peakDrawWeightLbf: 72,
      drawLengthIn: 28.5,
      braceHeightIn: 6.75,
      ratedSpeedFps: 335,
      virtualMassGr: 60,
    }
    // ½(350 + 60) gr·335²/450 436.68, times 72/70 and 20/21.5.
    near(withBow(rated)['bowEnergyFtLbf'], ((410 * 335 ** 2) / 450_436.68) * (72 / 70) * (20 / 21.5), 1e-7)
    const { drawLengthIn: _, ...short } = rated
    const output = withBow(short)
    expect(output['speedFps']).toBeNull()
    expect(output.findings.map(({ code }) => code)).toContain('rating-needs')
  })

  it('prefer readings to a rating, whatever else is told', () => {
    const output = withBow({ ...OPEN_EXAMPLE.bow, ratedSpeedFps: 400 })
    expect(output['speedFrom']).toBe('chronograph')
    expect(output['speedFps']).toBe(outputOf(OPEN_EXAMPLE)['speedFps'])
  })

  it.each([
    ['two equal weights', [500, 250, 500, 251], 'equal-weights'],
    ['speed that rises with weight', [500, 250, 600, 262], 'speed-does-not-fall-with-weight'],
  ])('answer %s with a finding', (_, [a, v, b, w], code) => {
    const chronograph = [
      { arrowGr: a, speedFps: v },
      { arrowGr: b, speedFps: w },
    ]
    expect(withBow({ peakDrawWeightLbf: 60, chronograph }).findings.map((finding) => finding.code)).toContain(code)
  })

  it('give weight, balance and FOC without any bow, and the reserve with a draw weight alone', () => {
    const { bow: _, ...noBow } = OPEN_EXAMPLE
    const none = outputOf(noBow)
    expect(none['finishedGr']).toBeCloseTo(756.2, 9)
    expect(none).toMatchObject({ grainsPerPound: null, speedFps: null, columnReserve: null, flight: [], findings: [] })
    const some = withBow({ peakDrawWeightLbf: 72 })
    expect(some).toMatchObject({ speedFps: null, flight: [] })
    expect(some['virtualMassGr']).toBeCloseTo(80, 9)
    expect(some['columnReserve']).toBeGreaterThan(0)
  })

  it('say how far the arrow is from its target, and nothing where none is told', () => {
    expect(outputOf(OPEN_EXAMPLE)['overTargetGr']).toBeCloseTo(-68.8, 9)
    const { targetGr: _, ...untold } = OPEN_EXAMPLE
    expect(outputOf(untold)['overTargetGr']).toBeNull()
  })

  it('let parts overlap: two posts in one place are as stiff as both and weigh as much', () => {
    const post = OPEN_EXAMPLE.parts[1]!
    const half = { ...post, weightGr: post.weightGr / 2, bonded: { ...post.bonded!, youngsModulusGPa: 96.5 } }
    const split = outputOf({ ...OPEN_EXAMPLE, parts: [OPEN_EXAMPLE.parts[0], half, half, OPEN_EXAMPLE.parts[2]] })
    near(split['columnReserve'], outputOf(OPEN_EXAMPLE)['columnReserve'] as number, 1e-12)
  })

  it('come back as an array for an array, sheets and open inputs mixed', () => {
    const sheet = demoSheet({ c2cIn: 27.5, targetGr: 825 }, USUAL_LINES)
    const answers = outputOf([OPEN_EXAMPLE, sheet, { kind: 'sheet', body: sheet }]) as unknown as readonly Output[]
    expect(answers).toHaveLength(3)
    expect(answers[0]).toEqual(outputOf(OPEN_EXAMPLE))
    expect(answers[1]).toEqual(answers[2])
    expect(outputOf([])).toEqual([])
  })
})

describe('what is wrong', () => {
  it.each([
    [5, 'input: expected an object'],
    [null, 'input: expected an object, found null'],
    [{}, 'format: expected "grainwright.inputs/1", or an exported sheet'],
    [{ ...OPEN_EXAMPLE, format: 'grainwright.inputs/2' }, 'format: '],
    [{ ...OPEN_EXAMPLE, lengthIn: 'long' }, 'lengthIn: '],
    [{ ...OPEN_EXAMPLE, lengthIn: -1 }, 'lengthIn: '],
    [{ ...OPEN_EXAMPLE, weight: 3 }, 'input: '],
    [{ ...OPEN_EXAMPLE, shaft: { ...OPEN_EXAMPLE.shaft, staticSpineIn: 200 } }, 'shaft.staticSpineIn: 200'],
    [{ ...OPEN_EXAMPLE, shaft: { ...OPEN_EXAMPLE.shaft, rearIn: 29 } }, 'shaft.rearIn: lies ahead'],
    [{ ...OPEN_EXAMPLE, parts: [{ name: 'x', weightGr: 1, fromIn: 2, toIn: 1 }] }, 'parts[0].toIn: lies behind'],
    [{ ...OPEN_EXAMPLE, bow: { chronograph: [{ arrowGr: 1 }] } }, 'bow.chronograph[0].speedFps: '],
    [[OPEN_EXAMPLE, 3], '[1]: expected an object'],
    [[OPEN_EXAMPLE, { ...OPEN_EXAMPLE, lengthIn: null }], '[1].lengthIn: '],
    [demoSheet({}), 'plan: has no shaft or no cut length'],
    [{ ...demoSheet({}), plan: { ...demoSheet({}).plan, quantity: 0.5 } }, 'plan.quantity: '],
  ])('is told with its path: %#', (told, start) => {
    expect(faultsOf(told)[0]?.slice(0, start.length)).toBe(start)
  })
})

const INDEPENDENT = {
  figures: {
    finishedGr: 756.2,
    balanceIn: 21.6385546152,
    focPercent: 27.1427972021,
    grainsPerPound: 10.5027777778,
    bowEnergyFtLbf: 83.6204833694,
    virtualMassGr: 72.4170874825,
    speedFps: 213.204451778,
    kineticEnergyFtLbf: 76.3124614242,
    momentumSlugFtS: 0.715861801083,
    columnReserve: 1.11603041866,
  },
  flight: [
    {
      rangeYd: 20.0,
      speedFps: 209.467056484,
      dropIn: 15.4800957826,
      timeS: 0.284056006527,
      kineticEnergyFtLbf: 73.6604527978,
    },
    {
      rangeYd: 40.0,
      speedFps: 206.200301085,
      dropIn: 62.7013787963,
      timeS: 0.573455068923,
      kineticEnergyFtLbf: 71.3808170293,
    },
    {
      rangeYd: 60.0,
      speedFps: 203.415011533,
      dropIn: 142.870794139,
      timeS: 0.868313966177,
      kineticEnergyFtLbf: 69.4654612435,
    },
  ],
} as const satisfies {
  readonly figures: Readonly<Record<string, number>>
  readonly flight: readonly Readonly<Record<string, number>>[]
}
