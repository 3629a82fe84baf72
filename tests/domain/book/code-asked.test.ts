import { expect, it } from 'vitest'
import { codeAsked } from '@/domain/book/code-asked'
import { codeOf, jobNumber, plainCode } from '@/domain/records/code'
import { testId } from '@tests/support/test-id'

const job = jobNumber(testId(5), 104)
const record = codeOf('ab'.repeat(32))

it('reads a record, a job, and the tag of an arrow, however they are typed', () => {
  expect(codeAsked(` ${record} `)).toEqual({ word: plainCode(record).toLowerCase() })
  expect(codeAsked(job.toLowerCase())).toEqual({ word: plainCode(job).toLowerCase() })
  expect(codeAsked(`${job}/12`)).toEqual({ word: plainCode(job).toLowerCase(), arrow: 12 })
})

it.each(['', 'bison', `${job}/`, `${job}/x`, `${job}/1/2`, `${job}1/1`, '/1'])('takes “%s” for no code', (typed) => {
  expect(codeAsked(typed)).toBeUndefined()
})
