/** A small picture, personal like a note. It lies in a table of its own and is named by the hash of its bytes. */
import { hashOfBytes } from './hash-of'
import type { Hash } from './scalars'

export const PHOTO_TYPES = ['image/jpeg', 'image/png', 'image/webp'] as const
/** Bytes. A browser keeps values of 64 KiB and more in files of their own, which can be lost alone. */
export const PHOTO_LIMIT = 60 * 1024

export interface Photo {
  readonly hash: Hash
  readonly type: (typeof PHOTO_TYPES)[number]
  readonly bytes: Uint8Array
}

export const photoOf = (type: Photo['type'], bytes: Uint8Array): Photo => ({ hash: hashOfBytes(bytes), type, bytes })
