import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import fc from 'fast-check'
import { canonical } from '@/domain/records/canonical'
import { hashOf, hashOfBytes, hashed } from '@/domain/records/hash-of'

describe('hashOf', () => {
  // [FIPS180] SHA-256, the examples of its authors: one block, two blocks, none.
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ])('of the bytes of "%s" is the published digest', (text, digest) => {
    expect(hashOfBytes(new TextEncoder().encode(text))).toBe(digest)
  })

  it('is what another implementation makes of the canonical text', () => {
    fc.assert(
      fc.property(
        fc.dictionary(
          fc.string().filter((name) => name !== '__proto__'),
          fc.jsonValue(),
        ),
        (record) => {
          const { hash: _, ...rest } = record
          expect(hashOf(record)).toBe(createHash('sha256').update(canonical(rest)).digest('hex'))
        },
      ),
    )
  })

  it('leaves the hash itself out', () => {
    const record = hashed({ weightGr: 412.3 })
    expect(hashOf(record)).toBe(record.hash)
    expect(hashOf({ ...record, hash: 'another' })).toBe(record.hash)
  })

  it('changes with any field', () => {
    expect(hashOf({ weightGr: 412.3 })).not.toBe(hashOf({ weightGr: 412.4 }))
  })
})
