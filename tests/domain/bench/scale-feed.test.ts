// Simulated readings as a bench gets them: moving, settled, overload, wrong unit, split, garbled. Sizes by SCALE_RUNS.
import { describe, expect, it } from 'vitest'
import { dice } from '@/demo/dice'
import { feedAfter, feedAt, NO_FEED } from '@/domain/bench/scale-feed'
import type { ScaleFeed } from '@/domain/bench/scale-feed'
import { lineSplitter, readScaleLine } from '@/domain/bench/scale-line'
import { USUAL_SERIAL } from '@/domain/bench/scale-source'
import type { ScaleOn } from '@/domain/bench/scale-state'
import { scaleAfter, scaleAnswer, takesItself } from '@/domain/bench/scale-state'

const RUNS = Number(process.env['SCALE_RUNS'] ?? 2000)

const ON: ScaleOn = {
  kind: 'on',
  source: 'serial',
  name: 'Scale 1',
  notUnderstood: '',
  settings: USUAL_SERIAL,
  readout: { kind: 'silent' },
  since: 0,
  taken: null,
  cleared: true,
  auto: true,
}
const after = (lines: readonly string[], every = 200, from = 0, feed: ScaleFeed = NO_FEED) =>
  lines.reduce((now, line, i) => feedAfter(now, readScaleLine(line), from + i * every), feed)

describe('what a scale shows', () => {
  it('has settled when it says so twice alike', () => {
    expect(after(['ST,GS,+826.4 GN']).readout.kind).toBe('moving')
    expect(after(['ST,GS,+826.4 GN', 'ST,GS,+826.4 GN']).readout).toMatchObject({ kind: 'settled', value: 826.4 })
    expect(after(['ST,GS,+826.4 GN', 'ST,GS,+826.5 GN']).readout.kind).toBe('moving')
    expect(after(['ST,GS,+826.4 GN', 'US,GS,+826.4 GN']).readout.kind).toBe('moving')
  })

  it('has settled when it says so once, on a key, and falls silent; not for ever', () => {
    const once = after(['ST,GS,+826.4 GN'])
    expect(feedAt(once, 500).readout.kind).toBe('moving')
    expect(feedAt(once, 700).readout.kind).toBe('settled')
    expect(feedAt(feedAt(once, 700), 25_000).readout.kind).toBe('silent')
  })

  it('must stand still for longer when it says nothing of it', () => {
    const line = '+826.4 GN'
    expect(after([line, line, line], 300).readout.kind).toBe('moving')
    expect(after([line, line, line, line, line], 300).readout.kind).toBe('settled')
    expect(after([line, line, line, line, line], 50).readout.kind).toBe('moving')
  })

  it('shows nothing once a scale that sent all the time is silent', () => {
    const on = after(['ST,GS,+826.4 GN', 'ST,GS,+826.4 GN'])
    expect(feedAt(on, 2000).readout.kind).toBe('settled')
    expect(feedAt(on, 5000).readout.kind).toBe('silent')
  })

  it('is unsettled by a garbled line, not by a heading', () => {
    const on = ['ST,GS,+826.4 GN', 'ST,GS,+826.4 GN']
    expect(after([...on, 'ST,GS,+8x6.4 GN']).readout.kind).toBe('moving')
    expect(after([...on, '--------']).readout.kind).toBe('settled')
  })
})

describe('what may be taken off a scale', () => {
  const shown = (lines: readonly string[], more: Partial<ScaleOn> = {}) => scaleAfter({ ...ON, ...more }, after(lines))
  const twice = (line: string) => [line, line]

  it('is a settled weight in grains, once', () => {
    const on = shown(twice('ST,GS,+826.4 GN'))
    expect(scaleAnswer(on)).toEqual({ kind: 'weight', text: '826.4', raw: 'ST,GS,+826.4 GN' })
    expect(scaleAnswer({ ...on, taken: on.since })).toEqual({ kind: 'no', why: 'taken before' })
  })

  it.each([
    [twice('US,GS,+826.4 GN'), 'moving'],
    [twice('ST,GS,+53.55 g'), 'other unit'],
    [twice('ST,GS,+826.4'), 'no unit'],
    [['OL'], 'overload'],
    [[], 'silent'],
  ] as const)('is not %j', (lines, why) => {
    expect(scaleAnswer(shown(lines))).toEqual({ kind: 'no', why })
  })

  it('is without a unit only where the shop has said that it stands in grains', () => {
    const settings = { ...USUAL_SERIAL, sendsGrains: true }
    expect(scaleAnswer(shown(twice('ST,GS,+826.4'), { settings })).kind).toBe('weight')
    expect(scaleAnswer(shown(twice('ST,GS,+53.5 g'), { settings })).kind).toBe('no')
  })

  it('takes by itself only what came onto an empty pan', () => {
    const on = shown(twice('ST,GS,+826.4 GN'))
    expect(takesItself(on)).toBe(true)
    expect(takesItself({ ...on, cleared: false })).toBe(false)
    expect(takesItself({ ...on, auto: false })).toBe(false)
    expect(takesItself(shown(twice('ST,GS,+0.0 GN')))).toBe(false)
    expect(takesItself(shown(twice('ST,GS,-826.4 GN')))).toBe(false)
  })
})

describe('a bench day of simulated weighings', () => {
  it(`takes each of ${RUNS} weights once and as it was, and nothing else`, () => {
    const chance = dice(20_261)
    let scale = ON
    let feed = NO_FEED
    const split = lineSplitter()
    let at = 0
    let wanted = 0
    const taken: number[] = []
    const put: number[] = []
    const hear = (text: string) => {
      // In pieces, as a port hands them over.
      for (let from = 0; from < text.length; ) {
        const size = 1 + Math.floor(chance.next() * 12)
        for (const line of split(text.slice(from, from + size))) feed = feedAfter(feed, readScaleLine(line), at)
        from += size
      }
      scale = scaleAfter(scale, feedAt(feed, at))
      at += 150
      if (!takesItself(scale)) return
      const answer = scaleAnswer(scale)
      if (answer.kind === 'weight') taken.push(Number(answer.text))
      scale = { ...scale, taken: scale.since, cleared: false }
    }
    const line = (state: string, gr: number, unit = 'GN') =>
      `${state},GS,${gr < 0 ? '-' : '+'}${Math.abs(gr).toFixed(1).padStart(7)} ${unit}\r\n`
    hear(line('ST', 0))
    for (let run = 0; run < RUNS; run++) {
      wanted = Math.round((20 + chance.next() * 1100) * 10) / 10
      for (let swing = 0; swing < 3; swing++) hear(line('US', wanted * (0.4 + chance.next())))
      // A stable line in passing, which a single agreeing one must not follow.
      if (chance.next() < 0.3) hear(line('ST', Math.round(wanted * 7) / 10))
      const mischief = chance.next()
      if (mischief < 0.1) {
        for (let i = 0; i < 4; i++) hear(line('ST', wanted / 15.432, ' g')) // left in grams: never taken
      } else if (mischief < 0.2) {
        for (let i = 0; i < 3; i++) hear('OL\r\n')
      } else if (mischief < 0.3) {
        for (let i = 0; i < 3; i++) hear(line('ST', -wanted)) // the tare is wrong
      } else if (mischief < 0.4) {
        for (let i = 0; i < 3; i++) hear(line('ST', wanted).replace(/\d\./, 'x.')) // a bit is lost
      } else {
        put.push(wanted)
        for (let i = 0; i < 3; i++) hear(line('ST', wanted))
        // A hand on it: it moves, and comes to rest again a little off. Still the same arrow.
        if (chance.next() < 0.5) {
          hear(line('US', wanted + 3))
          for (let i = 0; i < 3; i++) hear(line('ST', Math.round(wanted * 10 + 1) / 10))
        }
      }
      hear(line('US', wanted / 2))
      for (let i = 0; i < 2; i++) hear(line('ST', 0))
    }
    expect(taken).toEqual(put)
    expect(put.length).toBeGreaterThan(RUNS / 3)
  })
})
