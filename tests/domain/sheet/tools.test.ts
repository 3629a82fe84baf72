import { describe, expect, it } from 'vitest'
import { inInches, inUnit } from '@/core/quantity'
import { cutFigures } from '@/domain/sheet/cut-figures'
import { flightOf, steeringOf } from '@/domain/sheet/flight-figures'
import { intoBand } from '@/domain/sheet/into-band'
import { sheetEnvelope } from '@/domain/sheet/sheet-envelope'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import { frontAheadOfRest, valuesAbout, VARIED, variedNow, whatIf } from '@/domain/sheet/what-if'
import { answer } from '@tests/support/answer'
import { demoSheet, USUAL_LINES } from '@tests/support/demo-sheet'

const sheet = demoSheet({ targetGr: 790, c2cIn: 28.5 })
const worked = sheetFigures(sheet)!
const reserveOf = (own: typeof sheet) => {
  const { value } = sheetFigures(own)!.figures!.columnReserve as { value: number | { value: number } }
  return typeof value === 'number' ? value : value.value
}

describe('what if', () => {
  it.each([
    ['head weight', 300],
    ['C2C', 30],
    ['draw weight', 80],
  ] as const)('%s up makes the column softer, and leaves the sheet as it was', (what, value) => {
    const before = JSON.stringify(sheet)
    expect(reserveOf(whatIf(sheet, what, value)!)).toBeLessThan(reserveOf(sheet))
    expect(JSON.stringify(sheet)).toBe(before)
  })

  it('moves the finished weight with the head, since the set is trimmed to its weight less head', () => {
    expect(whatIf(sheet, 'head weight', 300)!.plan.targetGr).toBe(840)
  })

  it('brings the shaft front forward by what C2C gains', () => {
    const longer = whatIf(sheet, 'C2C', 29.5)!
    const ahead = (own: typeof sheet) => inInches(frontAheadOfRest(own, sheetFigures(own)!)!)
    expect(ahead(longer) - ahead(sheet)).toBeCloseTo(1, 9)
    const { drawLengthIn: _, ...unknown } = sheet.bow
    expect(frontAheadOfRest({ ...sheet, bow: unknown }, worked)).toBeUndefined()
  })

  it('is the sheet itself at the value it has', () => {
    for (const what of VARIED) {
      expect(reserveOf(whatIf(sheet, what, variedNow(sheet, what)!)!)).toBeCloseTo(reserveOf(sheet), 12)
      expect(valuesAbout(variedNow(sheet, what)!, what)[3]).toBe(variedNow(sheet, what))
    }
  })

  it.each([0, -1, Number.NaN, Infinity])('does not take %d for a value', (value) => {
    for (const what of VARIED) expect(whatIf(sheet, what, value)).toBeUndefined()
  })

  it('has nothing to vary on an empty sheet', () => {
    const empty = { ...demoSheet({}, []), bow: { ...sheet.bow, peakDrawWeightLb: undefined as never } }
    for (const what of VARIED) expect(whatIf(empty, what, 100)).toBeUndefined()
  })
})

describe('the envelope of a sheet', () => {
  it('ends where the limit it names is reached, and no sooner', () => {
    const long = demoSheet({ targetGr: 800, c2cIn: 31.5 })
    const figures = sheetFigures(long)!
    const { drawWeight, headWeight } = sheetEnvelope(long, figures, cutFigures(long, figures))
    const up = answer(drawWeight!).up
    expect(up.end).toEqual({ kind: 'limit', limit: 'too soft' })
    const peak = 72 + inUnit(up.change, 'lbf')
    expect(reserveOf(whatIf(long, 'draw weight', peak)!)).toBeCloseTo(0.75, 1)
    expect(answer(headWeight!).up.change).toBeGreaterThan(0)
  })

  it('says by how much the draw may grow before the shaft front comes too near the rest', () => {
    const cut = cutFigures(sheet, worked)
    const { drawLength } = sheetEnvelope(sheet, worked, cut)
    const { up, down } = answer(drawLength!)
    const rest = answer(cut.fullDraw).rest.at
    expect(inInches(up.change)).toBeCloseTo(worked.geometry.shaftFrontIn - inInches(rest) - 1, 5)
    expect(down.end).toEqual({ kind: 'open' })
  })

  it('is not known without a bow', () => {
    const { peakDrawWeightLb: _, drawLengthIn: __, ...bow } = sheet.bow
    const own = { ...sheet, bow }
    const figures = sheetFigures(own)!
    expect(sheetEnvelope(own, figures, cutFigures(own, figures))).toEqual({
      drawWeight: undefined,
      headWeight: undefined,
      drawLength: undefined,
    })
  })
})

describe('the flight of a sheet', () => {
  it('loses speed and drops further with distance, and holds a row for the client’s own', () => {
    const rows = answer(flightOf({ ...sheet, hunt: { shotDistanceYd: 35 } }, worked)!)
    expect(rows.map(({ range }) => Math.round(inUnit(range, 'yd')))).toEqual([10, 20, 30, 35, 40, 50, 60])
    for (const [i, row] of rows.slice(1).entries()) {
      expect(row.speed.value).toBeLessThan(rows[i]!.speed.value)
      expect(row.drop.value).toBeGreaterThan(rows[i]!.drop.value)
    }
  })

  it('steers worse with a wide broadhead than with a field point', () => {
    const margin = (head: string) => {
      const own = demoSheet({ targetGr: 790, c2cIn: 28.5 }, [...USUAL_LINES.filter((n) => !n.startsWith('Two')), head])
      return answer(steeringOf(own, sheetFigures(own)!)!).least.margin
    }
    expect(margin('Two-blade 250')).toBeLessThan(margin('Field point 250'))
  })

  it('says nothing where there is no speed, and nothing of steering without vanes', () => {
    const { peakDrawWeightLb: _, ...bow } = sheet.bow
    const slow = { ...sheet, bow }
    expect(flightOf(slow, sheetFigures(slow)!)).toBeUndefined()
    const bare = { ...sheet, plan: { ...sheet.plan, lines: sheet.plan.lines.filter(({ count }) => count === 1) } }
    expect(steeringOf(bare, sheetFigures(bare)!)).toBeUndefined()
  })
})

describe('the grip at full draw', () => {
  const gripOf = (bow: Partial<typeof sheet.bow>) => {
    const own = { ...sheet, bow: { ...sheet.bow, ...bow } }
    return cutFigures(own, sheetFigures(own)!).grip!
  }

  it('has its pivot where the draw length puts it, or where the riser was marked', () => {
    // [F1880]: from the throat to the pivot is the draw length less 1¾ in.
    expect(inInches(gripOf({ drawLengthIn: 28.5 }).pivot)).toBeCloseTo(26.75, 9)
    const marked = { markAtRestIn: 27.2, markAtRiserIn: 28.4, riserFrontAheadOfPivotIn: 1.5 }
    expect(inInches(gripOf(marked).pivot)).toBeCloseTo(26.9, 9)
  })

  it('has cables only on a side that was told', () => {
    expect(gripOf({ cableSide: 'left' }).cables).toMatchObject({ side: 'left' })
    expect(gripOf({ cableSide: 'none' }).cables).toBeUndefined()
    expect(gripOf({}).cables).toBeUndefined()
  })
})

describe('the vanes past the cables', () => {
  const cutOf = (bow: Partial<typeof sheet.bow>, plan: Partial<typeof sheet.plan> = {}) => {
    const own = { ...sheet, bow: { ...sheet.bow, ...bow }, plan: { ...sheet.plan, ...plan } }
    return cutFigures(own, sheetFigures(own)!)
  }
  const offCable = (...given: Parameters<typeof cutOf>) =>
    answer(cutOf(...given).clearances!).find(({ what }) => what === 'vane off the cable')
  // Of the demo shop: four vanes on the shaft, from the axis to their outer edge.
  const vane = sheet.parts.find(({ part }) => part.kind === 'vane')!.part as { heightIn: number }
  const shaft = sheet.parts.find(({ part }) => part.kind === 'shaft')!.part as { outerDiameterMm: number }
  const edge = shaft.outerDiameterMm / 25.4 / 2 + vane.heightIn

  it('are judged once it is told how far off those run, by the shop’s rule, with vane and cable in the working', () => {
    const told = { arrowToCableIn: 0.9, cableSide: 'left' } as const
    expect(inInches(offCable(told, { cockVaneDeg: 0 })!.has)).toBeCloseTo(0.9 - edge, 9)
    expect(inInches(offCable(told, { cockVaneDeg: 45 })!.has)).toBeCloseTo(0.9 - edge * Math.SQRT1_2, 9)
    expect(inInches(offCable(told)!.needs)).toBe(sheet.rules.clearance.vaneOffCableIn)
    const { derivation } = cutOf(told).clearances as { derivation: { inputs: readonly { name: string }[] } }
    const inputs = derivation.inputs.map(({ name }) => name)
    expect(inputs).toEqual(expect.arrayContaining(['reach of the vane', 'arrow to cable']))
  })

  it('are said to be too near with what cures it, and to have room when the nock is turned', () => {
    const near = { arrowToCableIn: edge + 0.05, cableSide: 'right' } as const
    const short = (cockVaneDeg: number) => cutOf(near, { cockVaneDeg }).clearances!.findings
    expect(short(0)).toMatchObject([{ code: 'clearance-short', what: 'vane off the cable' }])
    expect(short(45)).toEqual([])
  })

  it('are not judged while nobody told, where no cables run, or without vanes', () => {
    expect(offCable({})).toBeUndefined()
    expect(offCable({ arrowToCableIn: 0.9, cableSide: 'none' })).toBeUndefined()
    const lines = sheet.plan.lines.filter(({ count }) => count === 1)
    const bare = answer(cutOf({ arrowToCableIn: 0.9 }, { lines }).clearances!).map(({ what }) => what)
    expect(bare).not.toContain('vane off the cable')
    expect(bare).not.toContain('vane tail ahead of the throat')
  })
})

describe('what brings a reserve into its band', () => {
  const waysOf = (own: typeof sheet) => {
    const figures = sheetFigures(own)!
    return intoBand(own, figures, cutFigures(own, figures))
  }
  const soft = { ...sheet, bow: { ...sheet.bow, peakDrawWeightLb: 110 } }
  const stiff = { ...sheet, bow: { ...sheet.bow, peakDrawWeightLb: 55 } }
  const band = sheet.rules.reserve.compound
  const spineTo = (own: typeof sheet, staticSpineIn: number) => ({
    ...own,
    parts: own.parts.map((each) =>
      each.part.kind === 'shaft' ? { ...each, part: { ...each.part, staticSpineIn } } : each,
    ),
  })

  it('is nothing while it lies in it, or is not known', () => {
    expect(reserveOf(sheet)).toBeGreaterThan(band.min)
    expect(reserveOf(sheet)).toBeLessThan(band.max)
    expect(waysOf(sheet)).toBeUndefined()
    const { peakDrawWeightLb: _, ...bow } = sheet.bow
    expect(waysOf({ ...sheet, bow })).toBeUndefined()
  })

  it.each([
    ['soft', soft, 'up', 1],
    ['stiff', stiff, 'down', -1],
  ] as const)('is each a change that does it, and one step less does not: too %s', (_, own, way, sign) => {
    const ways = waysOf(own)!
    expect(ways.way).toBe(way)
    const isIn = (tried: typeof sheet | undefined) => {
      const reserve = reserveOf(tried!)
      return reserve >= band.min && reserve <= band.max
    }
    expect(isIn(own)).toBe(false)
    let done = 0
    const holds = (to: number | undefined, step: number, tried: (to: number) => typeof sheet | undefined) => {
      if (to === undefined) return
      done += 1
      expect(isIn(tried(to))).toBe(true)
      expect(isIn(tried(to + sign * step))).toBe(false)
    }
    const { spine, c2c, head } = ways
    holds(spine?.ok ? inInches(spine.value) : undefined, 0.001, (to) => spineTo(own, to))
    holds(c2c?.ok ? inInches(c2c.value) : undefined, 0.01, (to) => whatIf(own, 'C2C', to))
    holds(head?.ok ? inUnit(head.value, 'gr') : undefined, 1, (to) => whatIf(own, 'head weight', to))
    expect(done).toBe(3)
  })

  it('says when the cut that does it would not stay clear', () => {
    expect(waysOf({ ...soft, bow: { ...soft.bow, drawLengthIn: 31 } })!.isClear).toBe(false)
    const { drawLengthIn: _, ...unknown } = soft.bow
    expect(waysOf({ ...soft, bow: unknown })!.isClear).toBeUndefined()
  })
})
