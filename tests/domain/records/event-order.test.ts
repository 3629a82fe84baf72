import { describe, expect, it } from 'vitest'
import fc from 'fast-check'
import { NO_ORDER, endAfter, inOrder, orderEnd } from '@/domain/records/event-order'

const event = fc.record({
  log: fc.constantFrom('a', 'b', 'c'),
  seq: fc.integer({ min: 1, max: 50 }),
  at: fc.integer({ min: 0, max: 20 }).map((minute) => `2031-05-04T09:${String(minute).padStart(2, '0')}:00.000Z`),
})
const events = fc.uniqueArray(event, { selector: ({ log, seq }) => `${log}${seq}` })

describe('inOrder', () => {
  it('is the same whatever order the events arrived in', () => {
    fc.assert(
      fc.property(events, fc.infiniteStream(fc.nat(1000)), (told, random) => {
        const shuffled = told.map((each) => ({ each, key: random.next().value })).toSorted((a, b) => a.key - b.key)
        expect(inOrder(shuffled.map(({ each }) => each))).toEqual(inOrder(told))
      }),
    )
  })

  it('keeps the sequence within each log, even when the clock was set back', () => {
    fc.assert(
      fc.property(events, (told) => {
        for (const log of ['a', 'b', 'c']) {
          const seqs = inOrder(told).flatMap((each) => (each.log === log ? [each.seq] : []))
          expect(seqs).toEqual(seqs.toSorted((a, b) => a - b))
        }
      }),
    )
  })

  it('goes by time between logs', () => {
    const at = (log: string, seq: number, minute: number) => ({ log, seq, at: `2031-05-04T09:0${minute}:00.000Z` })
    const [first, second, third] = [at('b', 1, 1), at('a', 1, 2), at('b', 2, 3)]
    expect(inOrder([third, second, first])).toEqual([first, second, third])
  })
})

describe('endAfter', () => {
  it('knows of one more event whether it comes last, without the others', () => {
    fc.assert(
      fc.property(events, event, (told, more) => {
        fc.pre(!told.some(({ log, seq }) => log === more.log && seq === more.seq))
        const ordered = inOrder(told)
        const isLast = inOrder([...told, more]).at(-1) === more
        expect(endAfter(orderEnd(ordered), more) !== undefined).toBe(isLast)
      }),
    )
  })

  it('comes by each event in turn to what the whole list ends at', () => {
    fc.assert(
      fc.property(events, (told) => {
        const ordered = inOrder(told)
        const end = ordered.reduce((before, each) => endAfter(before, each) ?? before, NO_ORDER)
        expect(end).toEqual(orderEnd(ordered))
      }),
    )
  })
})
