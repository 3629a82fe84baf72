import { describe, expect, it } from 'vitest'
import type { Bow } from '@/domain/call/bow'
import { cutFigures } from '@/domain/sheet/cut-figures'
import type { Plan } from '@/domain/sheet/plan'
import { planProblems } from '@/domain/sheet/plan-problems'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import type { Part } from '@/domain/stock/part'
import { planProblemWords } from '@/ui/words/plan-problem-words'
import { demoSheet, USUAL_LINES } from '@tests/support/demo-sheet'

interface Change {
  readonly plan?: Partial<Plan>
  readonly bow?: Partial<Bow>
  /** One part taken for another, by name; `undefined` for one left out. */
  readonly swap?: Readonly<Record<string, string | undefined>>
  readonly more?: readonly string[]
  /** A part as another maker makes it. */
  readonly made?: (part: Part) => Part
}

/** What is said of a sound plan with one thing changed: a 72 lb bow, 28.5 in of draw, 803 gr of parts for 800. */
function said({ plan = {}, bow = {}, swap = {}, more = [], made = (part) => part }: Change): readonly string[] {
  const names = USUAL_LINES.map((name) => (name in swap ? swap[name] : name)).filter((name) => name !== undefined)
  const sound = demoSheet({ c2cIn: 28.5, targetGr: 800, ...plan }, [...names, ...more], bow)
  const sheet = { ...sound, parts: sound.parts.map(({ id, part }) => ({ id, part: made(part) })) }
  const worked = sheetFigures(sheet)
  const problems = planProblems(sheet, worked, worked && cutFigures(sheet, worked))
  return problems.map((problem) => `${problem.level}: ${planProblemWords(problem)}`)
}

describe('a plan', () => {
  it('that is sound gets no sentence', () => {
    expect(said({})).toEqual([])
  })

  // A builder's twelve ways to plan wrong: common practice, no source. Numbers by the parts of the demo shop.
  it.each<[string, Change, string]>([
    [
      'is lighter than its number',
      { plan: { targetGr: 900 } },
      'stop: Lighter than the target by 97.1 gr before anything is trimmed, and grains come off, not on. Choose a heavier insert, collar or head, or lower the target.',
    ],
    [
      'trims the bond too short',
      { plan: { targetGr: 700 } },
      'stop: 102.9 gr must come off, and the post can give 78.6 gr before its bond gets too short. Choose a lighter insert, collar or head, or raise the target.',
    ],
    [
      'has nothing that may be trimmed',
      { plan: { targetGr: 640 }, swap: { 'Long post 158': 'Light insert 45' } },
      'stop: Heavier than the target by 49.9 gr, and no part of it may be trimmed. Choose an insert with a post that may be trimmed, or raise the target.',
    ],
    [
      'is too light for the bow',
      { plan: { targetGr: 340 } },
      'stop: 4.72 gr per pound is under 5.0: too light for this bow; the archer can be hurt and the bow break. Raise the target or ask for less draw weight.',
    ],
    [
      'has a post wider than the bore',
      { swap: { 'Long post 158': 'Wide post 140' } },
      'stop: Wide post 140: a post of 6.14 mm does not go into a bore of 5.28 mm. Choose another insert or another shaft.',
    ],
    [
      'has a collar tighter than the shaft',
      { swap: { 'Heron 200': 'Plover 250' } },
      'stop: Ring 15: a hole of 7.22 mm does not go over a shaft of 7.70 mm. Choose a wider one or a thinner shaft.',
    ],
    [
      'puts two parts in one place',
      { more: ['Footing 24'] },
      'stop: Footing 24 and Ring 15 stand in the same place over 0.40 in. Set one of them back or remove it.',
    ],
    [
      'screws a head into another thread',
      { made: (part) => (part.kind === 'broadhead' ? { ...part, thread: 'M5' } : part) },
      'stop: Two-blade 250 has the thread M5, its seat 8-32. Choose a head or an insert that fit, or add an adapter.',
    ],
    [
      'turns the bevel against the fletch',
      { plan: { fletchSide: 'left' } },
      'stop: A right bevel on a left fletch: they would turn the arrow against each other. Change the head or the side of the fletch.',
    ],
    [
      'cuts more than the raw shaft has',
      { plan: { c2cIn: 32.5 } },
      'stop: C2C 32.50 in is longer than the raw shaft, 32.00 in. Shorten it or choose a longer shaft.',
    ],
    [
      'draws the blades onto the hand',
      { plan: { c2cIn: 24, targetGr: 745 }, bow: { markAtRestIn: 27, markAtRiserIn: 28.2 } },
      'stop: C2C 24.00 in is too short: at full draw the arrow clears rest, riser and hand from 27.99 in on. Lengthen it.',
    ],
    [
      'passes over the shaft maker’s limit',
      { bow: { peakDrawWeightLb: 92 } },
      'stop: 92 lb is over the shaft maker’s limit of 90 lb. The maker’s limit stands above any figure here: choose a stronger shaft.',
    ],
  ])('that %s gets its sentence, and is not frozen', (_, change, sentence) => {
    expect(said(change)).toContain(sentence)
  })

  it.each<[string, Change, string]>([
    [
      'has vanes behind the shaft',
      { plan: { vaneTailIn: 0.3 } },
      'stop: The vane tail at 0.30 in would lie behind the shaft, which begins 0.55 in ahead of the throat. Move it forward.',
    ],
    [
      'carries more in front than the shaft maker allows',
      { swap: { 'Heron 200': 'Heron 300' } },
      'stop: 423 gr in front is over the shaft maker’s limit of 400 gr. Choose a stronger shaft or less weight in front.',
    ],
    [
      'has no length that clears and is stiff enough',
      { bow: { drawLengthIn: 31, peakDrawWeightLb: 90 } },
      'look: No cut length fits: clearance asks for at least 30.79 in C2C, stiffness allows at most 30.56 in. Choose a stiffer shaft or less weight in front, or have the full-draw marks measured.',
    ],
    [
      'has nothing to measure from',
      { swap: { 'Clip 11': undefined } },
      'stop: No nock yet: add one; every length runs from its throat.',
    ],
    [
      'leaves too little of the post in the shaft',
      { made: (part) => (part.kind === 'insert' ? { ...part, postLengthIn: 0.9, leastBondMm: 20 } : part) },
      'look: Long post 158: 21.8 mm of post are left in the shaft to be bonded, and it takes 25.0. Choose a longer post, or trim less off it.',
    ],
    [
      'has vanes beyond the clamp',
      { plan: { vaneTailIn: 4 } },
      'stop: The vanes would reach 6.60 in ahead of the throat, and the clamp of the jig ends at 6.50. Choose shorter vanes or move the tail back.',
    ],
    [
      'has a pin nock and nothing to hold the pin',
      { swap: { 'Clip 11': 'Pin nock 8' }, plan: { targetGr: 795 } },
      'stop: Pin nock 8 goes onto a pin, and there is no bushing to hold one. Add a bushing or choose another nock.',
    ],
    [
      'has a bushing behind a nock that is pressed in',
      { more: ['Bushing 12'] },
      'stop: Bushing 12 holds a pin, and Clip 11 goes straight into the shaft. Remove the bushing or choose a pin nock.',
    ],
    ['has two shafts', { more: ['Heron 230'] }, 'stop: Two lines of shaft: an arrow has one. Remove the other.'],
    [
      'leaves the glue out',
      { swap: { 'Vane glue': undefined, 'Slow epoxy': undefined }, plan: { targetGr: 795 } },
      'look: No glue yet: its weight is left out of the forecast.',
    ],
  ])('that %s gets its sentence', (_, change, sentence) => {
    expect(said(change)).toContain(sentence)
  })

  it('without a target is judged by its parts as soon as an arrow is whole, and no shaft by itself', () => {
    const isTooLight = (change: Change) =>
      said({ ...change, plan: { targetGr: undefined } }).some((sentence) => sentence.includes('too light for this bow'))
    const others = Object.fromEntries(
      USUAL_LINES.filter((name) => name !== 'Heron 200').map((name) => [name, undefined]),
    )
    expect(isTooLight({})).toBe(false)
    expect(isTooLight({ bow: { peakDrawWeightLb: 200 } })).toBe(true)
    expect(isTooLight({ bow: { peakDrawWeightLb: 200 }, swap: others })).toBe(false)
    expect(isTooLight({ bow: { peakDrawWeightLb: 200 }, swap: { 'Clip 11': undefined } })).toBe(false)
  })
  it('says so in the figures as well: the weight per pound of a shaft by itself is a figure, and no warning', () => {
    const gpp = (names: readonly string[]) =>
      sheetFigures(demoSheet({ c2cIn: 28.5 }, names, { peakDrawWeightLb: 200 }))?.figures?.grainsPerPound
    const codes = (names: readonly string[]) => gpp(names)?.findings.map(({ code }) => code)
    expect(codes(USUAL_LINES)).toEqual(['arrow-light-for-bow'])
    expect(codes(['Heron 200', 'Clip 11'])).toEqual([])
    expect(gpp(['Heron 200', 'Clip 11'])).toMatchObject({ ok: true })
  })
})
