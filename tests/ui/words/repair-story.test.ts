import { expect, it } from 'vitest'
import type { Repair } from '@/domain/send/repairs'
import { repairStoryWords } from '@/ui/words/afterwards-words'

const repair = (what: string, ended: Repair['ended']) => ({ what, reason: 'cracked on a miss', ended }) as Repair
const closed = { how: 'closed', at: '2026-12-09T10:00:00.000Z' } as Repair['ended']
const retired = { how: 'retired', at: '2026-12-09T10:00:00.000Z' } as Repair['ended']

it('says of a repair what is to be done, what was, and what was not', () => {
  const told = (what: string) => [null, closed, retired].map((ended) => repairStoryWords(repair(what, ended)))
  expect(told('nock replaced')).toEqual([
    'on the bench, nock to be replaced: cracked on a miss',
    'nock replaced 9 Dec 2026: cracked on a miss',
    'nock not replaced: retired instead',
  ])
  expect(told('refletched')).toEqual([
    'on the bench, to be refletched: cracked on a miss',
    'refletched 9 Dec 2026: cracked on a miss',
    'not refletched: retired instead',
  ])
})
