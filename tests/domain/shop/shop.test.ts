import { describe, expect, it } from 'vitest'
import { DEFAULT_ROUTE } from '@/domain/bench/route'
import { readPlaces } from '@/domain/shop/read-places'
import { frontFirst, moved, switchedOff, withOwn, without, withUsual } from '@/domain/shop/route-changes'
import { placeRule } from '@/domain/shop/rules'

const keys = (route: readonly { key: string }[]) => route.map(({ key }) => key)

describe('the bench route', () => {
  it('gets a step back where it usually stands, whichever was switched off', () => {
    for (const { key } of DEFAULT_ROUTE) {
      const off = without(DEFAULT_ROUTE, key)
      expect(keys(switchedOff(off))).toEqual([key])
      expect(withUsual(off, key)).toEqual(DEFAULT_ROUTE)
    }
    expect(withUsual(DEFAULT_ROUTE, 'cut')).toBe(DEFAULT_ROUTE)
  })

  it('moves a step by one and not over an end', () => {
    expect(keys(moved(DEFAULT_ROUTE, 'spin', -1)).slice(0, 2)).toEqual(['spin', 'receive'])
    expect(moved(DEFAULT_ROUTE, 'receive', -1)).toBe(DEFAULT_ROUTE)
    expect(moved(DEFAULT_ROUTE, 'pack', 1)).toBe(DEFAULT_ROUTE)
  })

  it('takes a step of the shop’s own before packing, once', () => {
    const own = withOwn(DEFAULT_ROUTE, 'Engrave', 'arrow', 'Initials on the collar')
    expect(keys(own).slice(-2)).toEqual(['own:Engrave', 'pack'])
    expect(withOwn(own, 'Engrave', 'arrow', '')).toBe(own)
    expect(withOwn(own, ' ', 'arrow', '')).toBe(own)
  })

  // The other order of the trade: common practice, no source.
  it('bonds the front before it fletches in the other order, and loses no step', () => {
    const other = keys(frontFirst(DEFAULT_ROUTE))
    expect(other.indexOf('fletch')).toBeGreaterThan(other.indexOf('cure'))
    expect([...other].sort()).toEqual(keys(DEFAULT_ROUTE).sort())
  })
})

describe('the place rules that were read', () => {
  it('are rows of the shop’s table', () => {
    for (const row of readPlaces()) expect(placeRule.safeParse(row).success, row.place).toBe(true)
  })

  // 5 AAC 92.085; WAC 220-414-070; Victoria, Wildlife (Game) Regulations 2012, as the figures of the job have them.
  it.each([
    ['Alaska', 'any', { leastDrawWeightLb: 40, leastArrowGr: 300, leastArrowLengthIn: 20 }],
    ['Alaska', 'moose, elk, brown bear, musk ox, bison, goat', { leastDrawWeightLb: 50, leastArrowGr: 300 }],
    ['Washington', 'any', { leastArrowPerLbGr: 6, leastHeadWidthIn: 0.875 }],
    ['Victoria', 'sambar, rusa, red deer', { leastDrawWeightLb: 50, leastArrowGr: 400 }],
    ['Zimbabwe', 'buffalo', { leastHeadWidthIn: 1.181 }],
  ])('%s, %s', (place, game, figures) => {
    expect(readPlaces().find((row) => row.place === place && row.game === game)).toMatchObject(figures)
  })

  it('say where they are not the instrument itself', () => {
    const notes = Object.fromEntries(readPlaces().map(({ place, note }) => [place, note]))
    expect(notes['Zimbabwe']).toContain('press')
    expect(notes['Victoria']).toContain('since replaced')
    expect(notes['Washington']).toContain('no electronics')
  })
})
