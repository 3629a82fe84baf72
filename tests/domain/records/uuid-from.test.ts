import { describe, expect, it } from 'vitest'
import { uuidFrom } from '@/domain/records/uuid-from'

describe('uuidFrom', () => {
  // [RFC9562] Appendix A.6: the example of a version 7 UUID, 2022-02-22T19:22:22Z, rand_a cc3, rand_b 18c4dc0c0c07398f.
  it('begins as the standard’s example and has its version and variant', () => {
    const id = uuidFrom(
      0x017f22e279b0,
      Uint8Array.from({ length: 16 }, (_, i) => i * 16),
    )
    expect(id.slice(0, 13)).toBe('017f22e2-79b0')
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/)
  })

  it('sorts by time', () => {
    const random = new Uint8Array(16).fill(255)
    expect(uuidFrom(1000, random) < uuidFrom(1001, new Uint8Array(16))).toBe(true)
  })

  it('is the same for the same moment and bytes, and another for others', () => {
    const bytes = Uint8Array.from({ length: 16 }, (_, i) => i)
    expect(uuidFrom(5, bytes)).toBe(uuidFrom(5, bytes))
    expect(uuidFrom(5, bytes)).not.toBe(uuidFrom(5, bytes.toReversed()))
  })
})
