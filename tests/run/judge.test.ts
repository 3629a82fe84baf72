import { describe, expect, it } from 'vitest'
import { judge } from './run-suite'

const passes = { passed: 3, failed: 0, skipped: [] }

describe('judge', () => {
  it('takes the counts of a suite that ran through', () => {
    expect(judge(passes)).toEqual({ counts: passes })
  })

  it.each([
    ['reported nothing', undefined, undefined],
    ['checked nothing', { passed: 0, failed: 0, skipped: [] }, undefined],
    ['passed every check but ended badly', passes, 'exit 1'],
    ['skipped a test without saying why', { ...passes, skipped: [{ name: 'weighs', why: ' ' }] }, undefined],
  ])('fails a suite that %s', (_what, counts, problem) => {
    const judged = judge(counts, problem)
    expect(judged.counts.failed).toBe(1)
    expect(judged.problem).toBeDefined()
  })

  it('lets a skip stand that says why', () => {
    const skipped = [{ name: 'power cut', why: 'needs root' }]
    expect(judge({ ...passes, skipped })).toEqual({ counts: { ...passes, skipped } })
  })
})
