import { describe, expect, it } from 'vitest'
import { bowSpeed } from '@/core/bow/bow-speed'
import { grains, inUnit } from '@/core/quantity'
import { callBow } from '@/domain/call/call-bow'
import { heaviestAtSpeed, LIMITS, usualAsking, wishesOf } from '@/domain/search/asking'
import { findParts } from '@/domain/search/find-parts'
import { searchProblem } from '@/domain/search/search-problem'
import { bowAnswers } from '@/domain/sheet/bow-answers'
import { answer } from '@tests/support/answer'
import { demoSheet } from '@tests/support/demo-sheet'
import { seeded } from '@tests/support/seeded'
import { demoShelf } from './demo-shelf'

const sheet = demoSheet({ targetGr: 815, c2cIn: 28 })
const shelf = demoShelf({ roll: seeded(3) })

describe('what a search is asked', () => {
  it('starts from the sheet, the shop’s rules and the call', () => {
    const told = { how: 'told', by: '', at: '' } as const
    const { numbers, on, kinds } = usualAsking(sheet, {
      wishFocPercent: { value: 22, ...told },
      wishSpeedFps: { value: 210, ...told },
      fletching: { value: 'feathers', ...told },
    })
    expect(numbers).toMatchObject({ targetGr: 815, c2cAimIn: 28, focAim: 22, leastSpeedFps: 210, reserveMin: 0.75 })
    expect(on).toEqual(LIMITS)
    expect(kinds).toContain('broadhead')
    expect(kinds).toContain('feather')
    expect(kinds).not.toContain('vane')
    expect(kinds).not.toContain('field point')
  })

  it('drops a limit that is switched off, and holds it when it is on', () => {
    const asking = usualAsking(sheet, {})
    expect(wishesOf(sheet, { ...asking, on: [] })).not.toHaveProperty('foc')
    const all = wishesOf(sheet, asking)
    expect(all).toMatchObject({ reserve: { min: 0.75, max: 1.3 }, leastChance: 0.9, foc: { min: 0, max: 50 } })
    expect(all.clearance!.frontIn).toBeGreaterThan(20)
  })

  it('keeps the lines that stay, and uses no kind that is struck out', () => {
    const asking = usualAsking(sheet, {})
    const held = sheet.plan.lines.filter(({ part }) =>
      ['Heron 200', 'Two-blade 250'].includes(sheet.parts.find(({ id }) => id === part)!.part.name),
    )
    const kinds = asking.kinds.filter((kind) => kind !== 'collar' && kind !== 'footing' && kind !== 'rear weight')
    const wishes = wishesOf(sheet, { ...asking, kinds, held: held.map(({ id }) => id) })
    const { found, misses } = findParts(searchProblem(sheet, shelf, wishes))
    const arrows = [...found, ...misses]
    expect(arrows.length).toBeGreaterThan(0)
    for (const { parts } of arrows) {
      expect(parts.shaft?.part).toBe(held[0]!.part)
      expect(parts.head?.part).toBe(held[1]!.part)
      expect(parts.ring).toBeUndefined()
      expect(parts['rear weights']).toBeUndefined()
    }
  })

  it('says in findings, not in an empty table, that a number is missing', () => {
    const { numbers, ...rest } = usualAsking(sheet, {})
    const { targetGr: _, ...missing } = numbers
    const answered = findParts(searchProblem(sheet, shelf, wishesOf(sheet, { ...rest, numbers: missing })))
    expect(answered.findings).toContainEqual(
      expect.objectContaining({ code: 'wish-not-a-number', wish: 'finished weight' }),
    )
  })
})

describe('heaviestAtSpeed', () => {
  it('is the weight that the bow throws just so fast', () => {
    const heaviest = heaviestAtSpeed(sheet, 230)!
    const { speed } = answer(bowSpeed(grains(heaviest), callBow(bowAnswers(sheet.bow)).known))
    expect(inUnit(speed.value, 'ft/s')).toBeCloseTo(230, 9)
  })

  it('is not known of a bow of which nothing is', () => {
    const { peakDrawWeightLb: _, ...bow } = sheet.bow
    expect(heaviestAtSpeed({ ...sheet, bow }, 230)).toBeUndefined()
    expect(heaviestAtSpeed(sheet, 0)).toBeUndefined()
    expect(heaviestAtSpeed(sheet, Number.NaN)).toBeUndefined()
  })
})
