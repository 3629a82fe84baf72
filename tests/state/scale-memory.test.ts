import { describe, expect, it } from 'vitest'
import { benchScale } from '@/domain/bench/bench-scale'
import { USUAL_SERIAL } from '@/domain/bench/scale-source'
import { DEFAULT_RULES } from '@/domain/shop/rules'
import { afterConnecting, againWish, settingsOf } from '@/state/scale-memory'

const SLOW = { ...USUAL_SERIAL, baudRate: 1200, pattern: { line: '{weight} {unit}', settled: '', grains: 'gn' } }
const wish = (name: string, settings = USUAL_SERIAL) => ({ kind: 'serial', name, settings, again: false }) as const

describe('what the device remembers of its scales', () => {
  it('is the settings of each by its name', () => {
    const kept = afterConnecting(afterConnecting(null, wish('Scale 1', SLOW)), wish('Scale 2'))
    expect(settingsOf(kept, 'Scale 1')).toEqual(SLOW)
    expect(settingsOf(kept, 'Scale 2')).toEqual(USUAL_SERIAL)
    expect(settingsOf(kept, 'Scale 3')).toEqual(USUAL_SERIAL)
    expect(settingsOf(kept, 'toString')).toEqual(USUAL_SERIAL)
  })

  it('opens the last one again, and none after the demo scale', () => {
    const kept = afterConnecting(null, wish('Scale 1', SLOW))
    expect(againWish(kept)).toEqual({ ...wish('Scale 1', SLOW), again: true })
    expect(againWish(afterConnecting(kept, { kind: 'demo', name: 'Scale 1' }))).toBeNull()
    expect(settingsOf(afterConnecting(kept, { kind: 'demo', name: 'Scale 1' }), 'Scale 1')).toEqual(SLOW)
  })

  it.each([null, '', '{', 'null', '7', '{"settings":null}', '{"last":"x"}'])('is nothing in %j', (kept) => {
    expect(settingsOf(kept, 'Scale 1')).toEqual(USUAL_SERIAL)
  })

  it('leaves out a pattern that reads nothing', () => {
    const kept = afterConnecting(null, wish('A', { ...USUAL_SERIAL, pattern: { ...SLOW.pattern, line: '{wait}' } }))
    expect(settingsOf(kept, 'A')).toEqual(USUAL_SERIAL)
  })
})

describe('the scale at the bench', () => {
  const [usual] = DEFAULT_RULES.scales
  const fine = { ...usual!, name: 'Fine', capacityGr: 300 }
  it('is the one chosen, as the shop has it today; else as the sheet has it; else the first', () => {
    expect(benchScale('Fine', [usual!, fine], [usual!])).toBe(fine)
    expect(benchScale('Fine', [usual!], [fine])).toBe(fine)
    expect(benchScale('', [usual!, fine], [])).toBe(usual)
    expect(benchScale('gone', [], [fine])).toBe(fine)
    expect(benchScale('', [], [])).toBeUndefined()
  })
})
