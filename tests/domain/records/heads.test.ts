import { describe, expect, it } from 'vitest'
import fc from 'fast-check'
import { heads } from '@/domain/records/heads'

const v = (hash: string, ...parents: string[]) => ({ hash, parents })

describe('heads', () => {
  it('is the version that no other follows', () => {
    expect(heads([v('a'), v('b', 'a'), v('c', 'b')])).toEqual([v('c', 'b')])
  })

  it('shows both when two devices followed the same version', () => {
    expect(heads([v('a'), v('b', 'a'), v('c', 'a')]).map((head) => head.hash)).toEqual(['b', 'c'])
  })

  it('is one again when a person joined them', () => {
    expect(heads([v('a'), v('b', 'a'), v('c', 'a'), v('d', 'b', 'c')]).map((head) => head.hash)).toEqual(['d'])
  })

  it('never loses the last word of anyone: every version is a head or followed by one', () => {
    const versions = fc
      .array(fc.array(fc.nat(30), { maxLength: 3 }), { maxLength: 30 })
      .map((all) => all.map((parents, i) => v(`${i}`, ...parents.filter((parent) => parent < i).map(String))))
    fc.assert(
      fc.property(versions, (all) => {
        const ends = new Set(heads(all).map((head) => head.hash))
        for (const version of all) {
          const followed = all.some((other) => other.parents.includes(version.hash))
          expect(ends.has(version.hash)).toBe(!followed)
        }
      }),
    )
  })
})
