import { describe, expect, it } from 'vitest'
import { grains, inGrains } from '@/core/quantity'
import { glueByDifference } from '@/core/weight/glue-by-difference'
import { lessHead } from '@/core/weight/less-head'
import { predictedPart } from '@/core/weight/predicted-part'
import { ASK_BELOW, readingSurprise } from '@/core/weight/reading-surprise'
import { TYPICAL_GLUE, TYPICAL_SPREAD } from '@/core/weight/typical-spread'
import { answer } from '@tests/support/answer'

describe('lessHead', () => {
  it('takes the mean head off the target, so that heads can be swapped', () => {
    const { target, meanHead, widest } = answer(lessHead(grains(825), [250.4, 249.1, 251].map(grains)))
    expect(inGrains(meanHead)).toBeCloseTo(250 + 0.5 / 3, 9)
    expect(inGrains(target)).toBeCloseTo(825 - 250 - 0.5 / 3, 9)
    expect(inGrains(widest)).toBeCloseTo(250 + 0.5 / 3 - 249.1, 9)
  })

  it.each([
    ['no head', 825, [], { code: 'too-few-values' }],
    ['a head that is no number', 825, [NaN], { input: 'head' }],
    ['a target that is no number', NaN, [250], { input: 'finished target' }],
    ['heads heavier than the arrow', 200, [250], { input: 'target less head' }],
  ])('gives nothing for %s', (_, target, heads, finding) => {
    expect(lessHead(grains(target), heads.map(grains))).toMatchObject({ ok: false, findings: [finding] })
  })
})

describe('glueByDifference', () => {
  it('is the whole less its parts', () => {
    expect(inGrains(answer(glueByDifference(grains(372.6), [341.2, 28.1, 2].map(grains))))).toBeCloseTo(1.3, 9)
    expect(inGrains(answer(glueByDifference(grains(3), [])))).toBeCloseTo(3, 12)
  })

  it('asks about a whole that weighs less than its parts', () => {
    expect(glueByDifference(grains(370), [341.2, 28.9].map(grains))).toMatchObject({
      ok: false,
      findings: [{ code: 'lighter-than-its-parts' }],
    })
  })

  it.each([
    [NaN, [1]],
    [10, [-1]],
    [10, [Infinity]],
  ])('gives nothing for %d less %j', (whole, parts) => {
    expect(glueByDifference(grains(whole), parts.map(grains))).toMatchObject({
      ok: false,
      findings: [{ code: 'outside-model' }],
    })
  })

  it('teaches a joint its glue as a lot teaches its weight', () => {
    const { nominal, sd, ownShare } = TYPICAL_GLUE.post
    const readings = [2.4, 2.2, 2.5, 2.3].map((gr) => ({ mass: grains(gr), pieces: 1 }))
    const learned = answer(
      predictedPart({ nominal, tolerance: grains(inGrains(sd) * Math.sqrt(3)), ownShare }, readings),
    )
    expect(inGrains(learned.estimate.value)).toBeGreaterThan(2)
    expect(inGrains(learned.estimate.value)).toBeLessThan(2.35)
  })
})

describe('readingSurprise', () => {
  const insert = answer(predictedPart({ nominal: grains(100), tolerance: grains(0.5) }, []))

  it('asks about a reading rarer than one in a thousand, and not about one just inside', () => {
    const { findings } = readingSurprise(grains(101), insert)
    expect(findings).toMatchObject([{ code: 'surprising-reading', reading: grains(101) }])
    const [finding] = findings
    const ends = finding?.code === 'surprising-reading' ? [finding.low, finding.high] : []
    expect(ends.map(inGrains)).toEqual([expect.closeTo(99.0501, 4), expect.closeTo(100.9499, 4)])
    // normal quantile of 0.9995 is 3.2905 (M): 3.2905 · 0.288675 = 0.9499
    expect(readingSurprise(grains(100.949), insert).findings).toEqual([])
    expect(answer(readingSurprise(grains(100.9499), insert))).toBeCloseTo(ASK_BELOW, 4)
  })

  it('is certain to be at least as far off as not at all', () => {
    expect(answer(readingSurprise(grains(100), insert))).toBeCloseTo(1, 9)
  })

  it('uses the degrees of what was learned', () => {
    const learned = answer(
      predictedPart({ nominal: grains(100), tolerance: grains(0.5) }, [{ mass: grains(100), pieces: 1 }]),
    )
    expect(answer(readingSurprise(grains(100.5), learned))).toBeGreaterThan(0)
  })

  it.each([
    ['reading', grains(NaN), insert],
    ['standard deviation', grains(100), { ...insert, estimate: { ...insert.estimate, sd: grains(0) } }],
    ['expected weight', grains(100), { ...insert, estimate: { ...insert.estimate, value: grains(NaN) } }],
  ])('names a %s it cannot take', (input, reading, predicted) => {
    expect(readingSurprise(reading, predicted)).toMatchObject({ ok: false, findings: [{ input }] })
  })
})

describe('TYPICAL_SPREAD', () => {
  // Common practice, no source: matched 1.0, unsorted 2.5, between lots 4 gr; four vanes together 0.2.
  it('holds the figures of the trade', () => {
    const within = ({ sd, ownShare }: { sd: number; ownShare: number }) =>
      inGrains(grains(1)) && (sd / grains(1)) * Math.sqrt(ownShare)
    expect(within(TYPICAL_SPREAD['matched shaft'])).toBeCloseTo(1, 12)
    expect(within(TYPICAL_SPREAD['unsorted shaft'])).toBeCloseTo(2.5, 12)
    expect((TYPICAL_SPREAD['matched shaft'].sd / grains(1)) ** 2).toBeCloseTo(17, 9)
    expect((2 * TYPICAL_SPREAD.vane.sd) / grains(1)).toBeCloseTo(0.2, 12)
  })
})
