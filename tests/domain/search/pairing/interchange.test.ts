import { describe, expect, it } from 'vitest'
import type { BareArrow, LooseHead, Mounted } from '@/domain/search/pairing/interchange'
import { bestHeads, interchange, mounted } from '@/domain/search/pairing/interchange'
import { seeded } from '@tests/support/seeded'

const arrowOf = (id: string, gr: number, balanceIn = 15): BareArrow => ({
  id,
  gr,
  moment: gr * balanceIn,
  seatIn: 29.5,
  lengthIn: 29.5,
})
const headOf = (id: string, gr: number, centreIn = 1): LooseHead => ({ id, gr, centreIn })

function tray(roll: () => number) {
  const size = 1 + Math.floor(roll() * 6)
  const arrows = Array.from({ length: size }, (_, i) => arrowOf(`a${i}`, 500 + 6 * roll(), 14 + roll()))
  const heads = Array.from({ length: size + Math.floor(roll() * 2) }, (_, i) =>
    headOf(`h${i}`, 247 + 6 * roll(), 0.6 + roll()),
  )
  return { arrows, heads, targetGr: 750 + 4 * roll() }
}

/** Every way to give each arrow a head of its own. */
function* everyWay(arrows: number, heads: readonly number[]): Generator<readonly number[]> {
  if (arrows === 0) yield []
  else
    for (const head of heads)
      for (const rest of everyWay(
        arrows - 1,
        heads.filter((each) => each !== head),
      ))
        yield [head, ...rest]
}
const offs = (all: readonly Mounted[], targetGr: number) => all.map(({ gr }) => Math.abs(gr - targetGr))

describe('any head on any arrow', () => {
  it('finishes and balances as the whole arrow does', () => {
    // 250 gr at 30.5, 100 at 28.75, 290 at 15.0, 24 at 2.5, 10 at 0.2 over 29.5 in: 674 gr, FOC 24.9987 %, computed twice.
    const moment = 100 * 28.75 + 290 * 15 + 24 * 2.5 + 10 * 0.2
    const one = mounted({ id: 'a', gr: 424, moment, seatIn: 29.5, lengthIn: 29.5 }, headOf('h', 250, 1))
    expect(one.gr).toBe(674)
    expect(Math.abs(one.focPercent - 24.9987)).toBeLessThanOrEqual(0.00005)
  })

  it('is worst with the lightest head on the lightest arrow and the heaviest on the heaviest', () => {
    const roll = seeded(11)
    for (let n = 0; n < 300; n++) {
      const { arrows, heads, targetGr } = tray(roll)
      const { worst } = interchange(arrows, heads, targetGr)
      const least = (of: readonly { readonly gr: number }[]) => Math.min(...of.map(({ gr }) => gr))
      const most = (of: readonly { readonly gr: number }[]) => Math.max(...of.map(({ gr }) => gr))
      expect(worst!.lightest.gr).toBeCloseTo(least(arrows) + least(heads), 9)
      expect(worst!.heaviest.gr).toBeCloseTo(most(arrows) + most(heads), 9)
      const all = arrows.flatMap((arrow) => heads.map((head) => mounted(arrow, head)))
      expect(worst!.leastFoc.focPercent).toBe(Math.min(...all.map(({ focPercent }) => focPercent)))
      expect(worst!.mostFoc.focPercent).toBe(Math.max(...all.map(({ focPercent }) => focPercent)))
      expect(offs([worst!.furthest], targetGr)[0]).toBe(Math.max(...offs(all, targetGr)))
    }
  })

  it('comes best as trying every way says, for up to six arrows', () => {
    const roll = seeded(12)
    for (let n = 0; n < 200; n++) {
      const { arrows, heads, targetGr } = tray(roll)
      const { best } = bestHeads(arrows, heads, targetGr)
      const own = offs(best!, targetGr)
      expect(new Set(best!.map(({ head }) => head.id)).size).toBe(arrows.length)
      let [furthest, together] = [Infinity, Infinity]
      for (const way of everyWay(
        arrows.length,
        heads.map((_, i) => i),
      )) {
        const told = way.map((head, i) => Math.abs(arrows[i]!.gr + heads[head]!.gr - targetGr))
        const [most, sum] = [Math.max(...told), told.reduce((all, each) => all + each, 0)]
        if (most < furthest - 1e-9 || (most < furthest + 1e-9 && sum < together)) [furthest, together] = [most, sum]
      }
      expect(Math.max(...own)).toBeCloseTo(furthest, 9)
      expect(own.reduce((all, each) => all + each, 0)).toBeCloseTo(together, 9)
    }
  })

  it('says what is missing instead of a number', () => {
    const [arrow, head] = [arrowOf('a', 500), headOf('h', 250)]
    expect(interchange([], [head], 750)).toEqual({ worst: undefined, findings: [{ code: 'no-arrows' }] })
    expect(interchange([arrow], [], 750).findings).toEqual([{ code: 'no-heads' }])
    for (const gr of [NaN, -1, Infinity])
      expect(interchange([arrow], [headOf('h', gr)], 750).findings).toEqual([{ code: 'not-usable', id: 'h' }])
    for (const gr of [NaN, 0, Infinity])
      expect(bestHeads([arrowOf('a', gr)], [head], 750).findings).toEqual([{ code: 'not-usable', id: 'a' }])
    expect(bestHeads([arrow, arrowOf('b', 501)], [head], 750)).toEqual({
      best: undefined,
      findings: [{ code: 'fewer-heads-than-arrows', heads: 1, arrows: 2 }],
    })
  })
})
