import { describe, expect, it } from 'vitest'
import type { BookProblem, BookReport } from '@/domain/records/book-report'
import { bookProblemWords, checkedWords, foundWords } from '@/ui/words/book-report-words'
import { testId } from '@tests/support/test-id'

const log = testId(1)
const hash = 'ab'.repeat(32)
const report: BookReport = {
  facts: 12,
  events: 1,
  personal: 1,
  tooNew: 0,
  problems: [],
  logs: [{ log, seq: 1, hash }],
}
const PROBLEMS: readonly (readonly [BookProblem, RegExp])[] = [
  [{ problem: 'changed', log, seq: 7 }, /event 7: it does not fit its hash/],
  [{ problem: 'gap', log, from: 4, to: 4 }, /event 4 is missing/],
  [{ problem: 'gap', log, from: 4, to: 9 }, /events 4 to 9 are missing/],
  [{ problem: 'fork', log, seq: 5 }, /event 5: two events stand in one place/],
  [{ problem: 'unchained', log, seq: 6 }, /event 6: it does not follow/],
  [{ problem: 'unreadable', table: 'facts', key: hash, detail: 'no kind' }, /^Record abababab cannot be read: no kind/],
  [{ problem: 'changed record', table: 'personal', key: hash }, /^Personal entry abababab does not fit its hash/],
  [
    { problem: 'named missing', record: hash, named: 'cd'.repeat(32) },
    /^Record abababab names .*cdcdcdcd, which is not/,
  ],
  [{ problem: 'parent missing', fact: hash, parent: 'cd'.repeat(32) }, /^Record abababab follows record cdcdcdcd/],
]

describe('the report of a whole-book check', () => {
  it('says what was checked, and that it is whole', () => {
    expect(checkedWords(report)).toContain('12 records, 1 event in 1 log and 1 personal entry checked')
    expect(checkedWords({ ...report, tooNew: 2 })).toContain('2 of them were written by a later app')
    expect(foundWords(report)).toBe('Every one is whole.')
  })

  it.each(PROBLEMS)('says %o in a sentence', (problem, words) => {
    expect(bookProblemWords(problem)).toMatch(words)
    expect(foundWords({ ...report, problems: [problem] })).toMatch(/^1 problem found\. Nothing was changed\./)
  })

  it('does not claim to have listed all of very many', () => {
    const problems = Array.from({ length: 1000 }, (_, seq) => ({ problem: 'changed' as const, log, seq }))
    expect(foundWords({ ...report, problems })).toMatch(/^At least 1000 problems found/)
  })
})
