import { describe, expect, it } from 'vitest'
import type { Job } from '@/domain/job/job'
import { signOff, signOffProblems } from '@/domain/bench/sign-off'
import { building } from '@/domain/bench/bench'
import type { BenchArrow } from '@/domain/bench/bench'
import { signOffProblemWords } from '@/ui/words/send-words'
import { sentOrder } from '@tests/support/sent-order'
import { testId } from '@tests/support/test-id'

const { built, sheet, said } = await sentOrder()

const changed = (no: number, change: (arrow: BenchArrow) => BenchArrow): Job => ({
  ...built,
  bench: { ...built.bench!, arrows: built.bench!.arrows.map((each) => (each.no === no ? change(each) : each)) },
})
const words = (job: Job, ordered = sheet) => signOffProblems(job, ordered).map(signOffProblemWords)
const deviating = (decision: 'scrap' | null): Job => ({
  ...built,
  bench: {
    ...built.bench!,
    deviations: [
      {
        id: testId(1),
        step: 'cut',
        point: 'c2c',
        required: '28.00 in',
        found: '27.90 in',
        why: '',
        arrow: built.bench!.arrows[1]!.id,
        openedBy: 'Ilse',
        openedAt: said.at,
        decision:
          decision === null ? null : { disposition: decision, reason: 'short', decidedBy: 'Ilse', decidedAt: said.at },
      },
    ],
  },
})

describe('signing off', () => {
  it('has nothing against a set that was built to the end', () => {
    expect(words(built)).toEqual([])
    expect(signOff(built, sheet, said).facts).toHaveLength(building(built.bench!).length + 1)
  })

  it('names the arrow whose finished weight is missing', () => {
    const job = changed(2, (arrow) => ({
      ...arrow,
      readings: arrow.readings.filter(({ reading }) => reading.point !== 'finishedWeight'),
    }))
    expect(words(job)).toEqual(['No. 2: the finished weight is missing.'])
    expect(() => signOff(job, sheet, said)).toThrow('not ready')
  })

  it('does not count a finished weight that was withdrawn', () => {
    const withdrawn = { event: 'f'.repeat(64), by: 'Ilse', at: said.at, reason: 'scale not clear' }
    const job = changed(3, (arrow) => ({
      ...arrow,
      readings: arrow.readings.map((kept) => (kept.reading.point === 'finishedWeight' ? { ...kept, withdrawn } : kept)),
    }))
    expect(words(job)).toEqual(['No. 3: the finished weight is missing.'])
  })

  it('names the arrow that was not inspected', () => {
    const job = changed(1, (arrow) => ({
      ...arrow,
      confirmed: arrow.confirmed.filter(({ step }) => step !== 'inspect'),
    }))
    expect(words(job)).toEqual(['No. 1: the final inspection is not confirmed.'])
  })

  it('names the step and the arrow of a deviation that nobody has decided', () => {
    expect(words(deviating(null))).toEqual(['No. 2: a deviation at cut is not decided yet.'])
  })

  it('does not let an arrow leave that was decided to be scrap', () => {
    expect(words(deviating('scrap'))[0]).toContain('No. 2: a deviation was decided as scrap, and the arrow is still')
  })

  it('says how the counts differ when one was scrapped and none built in its place', () => {
    const job = changed(2, (arrow) => ({ ...arrow, state: 'scrapped', cause: 'split at the point' }))
    expect(words(job)).toEqual([
      expect.stringContaining('3 arrows ordered, 3 started, 1 scrapped, 2 accepted') as string,
    ])
  })

  it('says how the counts differ when more leave than were ordered', () => {
    const fewer = { ...sheet, plan: { ...sheet.plan, quantity: 2, spares: 0 } }
    expect(words(built, fewer)).toEqual([
      expect.stringContaining('2 arrows ordered, 3 started, 0 scrapped, 3 accepted') as string,
    ])
  })

  it('lets a planned spare go along', () => {
    const spare = { ...sheet, plan: { ...sheet.plan, quantity: 2, spares: 1 } }
    expect(words(built, spare)).toEqual([])
  })

  it('signs off no empty set', () => {
    expect(words({ ...built, bench: null })).toEqual(['No set is under way: there is nothing to sign off.'])
    const none = { ...built, bench: { ...built.bench!, arrows: [] } }
    expect(words(none)).toEqual(['Every arrow of the set is scrapped: there is nothing to sign off.'])
  })
})
