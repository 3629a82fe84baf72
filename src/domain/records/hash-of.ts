/** SHA-256 [FIPS180] of canonical JSON, synchronous, so that it can be made inside a transaction. */
import { sha256 } from '@noble/hashes/sha2'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils'
import { canonical } from './canonical'
import type { Hash } from './scalars'

/** The hash of everything but the field `hash` itself. @throws TypeError as `canonical` does */
export function hashOf(record: object): Hash {
  return hashOfBytes(utf8ToBytes(canonical({ ...record, hash: undefined })))
}

export const hashOfBytes = (bytes: Uint8Array): Hash => bytesToHex(sha256(bytes))

/** The record with its hash written on it. */
export const hashed = <R extends object>(record: R): R & { hash: Hash } => ({ ...record, hash: hashOf(record) })
