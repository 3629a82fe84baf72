import { describe, expect, it } from 'vitest'
import { builtChanges, sheetChanges } from '@/domain/book/compared-versions'
import type { Built } from '@/domain/book/compared-versions'
import { DEFAULT_RULES } from '@/domain/shop/rules'
import type { Sheet } from '@/domain/sheet/sheet'
import { changedWord, sideWords } from '@/ui/words/version-words'
import { arrowBuilt } from '@tests/support/arrow-built'
import { demoSheet, USUAL_LINES } from '@tests/support/demo-sheet'
import { testId } from '@tests/support/test-id'

const plan = { targetGr: 815, c2cIn: 28, quantity: 3 }
const first = demoSheet(plan)
const said = (before: Sheet, after: Sheet) =>
  sheetChanges(before, after).map((change) => [
    changedWord(change),
    sideWords(change, change.before),
    sideWords(change, change.after),
  ])

describe('the difference of two sheets', () => {
  it('is nothing between a sheet and itself, nor when only its lines were typed in anew', () => {
    expect(sheetChanges(first, first)).toEqual([])
    const anew = first.plan.lines.map((line, i) => ({ ...line, id: testId(7000 + i) })).toReversed()
    expect(sheetChanges(first, { ...first, plan: { ...first.plan, lines: anew } })).toEqual([])
  })

  it('says a changed plan and a changed part in the words of the trade', () => {
    const names = USUAL_LINES.map((name) => (name === 'Two-blade 250' ? 'Left-bevel 250' : name))
    const second = demoSheet({ ...plan, targetGr: 820.5, fletchSide: 'left' }, names)
    expect(said(first, second)).toEqual([
      ['Finished weight, gr', '815', '820.5'],
      ['Side of the fletch', 'right', 'left'],
      ['Head', 'Two-blade 250', 'Left-bevel 250'],
    ])
  })

  it('says what came and what went, field by field', () => {
    const without = demoSheet(
      plan,
      USUAL_LINES.filter((name) => name !== 'Ring 15'),
    )
    expect(said(first, without)).toEqual([
      ['Collar', 'Ring 15', 'none'],
      ['Collar, lot', 'unknown', 'none'],
      ['Collar, how many', '1', 'none'],
    ])
    expect(said(without, first)[0]).toEqual(['Collar', 'none', 'Ring 15'])
  })

  it('tells a bow measured anew, a shop rule, a catalogue figure and a step switched off', () => {
    const second: Sheet = {
      ...first,
      bow: { ...first.bow, peakDrawWeightLb: 74, chronograph: [{ arrowGr: 601, speedFps: 236.5 }] },
      rules: { ...DEFAULT_RULES, clearance: { ...DEFAULT_RULES.clearance, frontAheadOfRestIn: 1.25 } },
      parts: first.parts.map(({ id, part }) => ({
        id,
        part: part.name === 'Ring 15' ? { ...part, weightGr: 15.5 } : part,
      })),
      route: first.route.filter(({ key }) => key !== 'edge'),
    }
    const words = said(first, second)
    expect(words).toContainEqual(['Peak draw weight, lb', '72', '74'])
    expect(words).toContainEqual(['Chronograph readings', 'none', '601 gr 236.5 ft/s'])
    expect(words).toContainEqual(['Shop rule: clearance, front ahead of rest, in', '1', '1.25'])
    expect(words).toContainEqual(['Ring 15, weight, gr', '15', '15.5'])
    expect(words.some(([what]) => what!.startsWith('Step ') && what!.endsWith(', confirm'))).toBe(true)
  })
})

const arrows = [arrowBuilt(1, { finishedWeight: 815.1 }), arrowBuilt(2, { finishedWeight: 814.8, headWeight: 250.1 })]
const counts = { started: 3, accepted: 2, scrapped: 1, sent: 0 }
const asBuilt = { job: testId(9000), jobCode: 'TEST-1-0', version: 1, sheet: 'a'.repeat(64), arrows: [], counts }
const built: Built = { asBuilt: { ...asBuilt, builders: ['Ilse'], signedOffBy: 'Ilse' }, arrows, sheet: first }

describe('the difference of two as-builts', () => {
  it('names the arrow, the reading and the part that was fitted in a repair', () => {
    const [one, two] = arrows as [(typeof arrows)[0], (typeof arrows)[0]]
    const nock = first.plan.lines.find(({ part }) => first.parts.some((p) => p.id === part && p.part.kind === 'nock'))!
    const repaired = {
      ...arrowBuilt(2, { finishedWeight: 812.9, headWeight: 250.1 }),
      fitted: [{ line: nock.id, part: nock.part, lot: null }],
    }
    const after: Built = {
      ...built,
      asBuilt: { ...built.asBuilt, version: 2, signedOffBy: 'Runa' },
      arrows: [one, repaired],
    }
    const words = builtChanges(built, after).map((change) => [
      changedWord(change),
      sideWords(change, change.before),
      sideWords(change, change.after),
    ])
    expect(words).toEqual([
      ['Signed off by', 'Ilse', 'Runa'],
      ['No. 2, finished weight, with head', '814.8 gr', '812.9 gr'],
      ['No. 2, nock fitted', 'none', 'Clip 11, lot unknown'],
    ])
    expect(builtChanges(built, { ...built, arrows: [two, one] })).toEqual([])
  })

  it('takes a reading that was withdrawn for none', () => {
    const [one, two] = arrows as [(typeof arrows)[0], (typeof arrows)[0]]
    const withdrawn = { event: 'b'.repeat(64), by: 'Ilse', at: '2026-03-03T09:00:00.000Z', reason: 'scale not cleared' }
    const changed = { ...two, readings: two.readings.map((kept) => ({ ...kept, withdrawn })) }
    const changes = builtChanges(built, { ...built, arrows: [one, changed] })
    expect(changes.map(({ field }) => field.at(-1))).toEqual(expect.arrayContaining(['finishedWeight', 'headWeight']))
    expect(changes).toHaveLength(2)
  })
})
