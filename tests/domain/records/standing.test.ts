import { describe, expect, it } from 'vitest'
import { disputed, standing } from '@/domain/records/standing'

const about = 'arrow 3, cut weight, 1'
const hashes = (claims: readonly { hash: string }[] | undefined) => claims?.map((claim) => claim.hash)

describe('standing', () => {
  it('is the reading, and after a correction the correction', () => {
    const read = { hash: 'a', about }
    expect(hashes(standing([read]).get(about))).toEqual(['a'])
    expect(hashes(standing([read, { hash: 'b', about, withdraws: 'a' }]).get(about))).toEqual(['b'])
  })

  it('is nothing when the reading was only taken back', () => {
    expect(
      standing([
        { hash: 'a', about },
        { hash: 'b', about, withdraws: 'a', silent: true },
      ]).size,
    ).toBe(0)
  })

  it('is both when two devices read the same point: disputed until one is withdrawn', () => {
    const [here, there] = [
      { hash: 'a', about },
      { hash: 'b', about },
    ]
    expect(disputed([here, there]).map(hashes)).toEqual([['a', 'b']])
    expect(disputed([here, there, { hash: 'c', about, withdraws: 'a', silent: true }])).toEqual([])
  })

  it('is both when two devices corrected the same reading', () => {
    const claims = [
      { hash: 'a', about },
      { hash: 'b', about, withdraws: 'a' },
      { hash: 'c', about, withdraws: 'a' },
    ]
    expect(disputed(claims).map(hashes)).toEqual([['b', 'c']])
  })

  it('keeps points apart', () => {
    expect(
      disputed([
        { hash: 'a', about },
        { hash: 'b', about: 'arrow 3, cut weight, 2' },
      ]),
    ).toEqual([])
  })
})
