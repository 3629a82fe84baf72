/**
 * A backup is a text file: one line of canonical JSON a record, so that it can be read in ten years with a text editor.
 *
 *   {"header":{"app":"Grainwright","format":1,"schema":3}}
 *   {"event":{…}}      by log and place in it
 *   {"fact":{…}}       by hash
 *   {"personal":{…}}   by hash
 *   {"photo":{…}}      by hash; the bytes in base64, cut into texts
 *   {"footer":{"counts":{…},"root":"…"}}
 *
 * The root is SHA-256 over every byte before the footer's line. No clock is in it: the same book gives the same bytes.
 */
import * as z from 'zod/mini'
import type { Counts } from '../../domain/records/backup'
import { PHOTO_TYPES } from '../../domain/records/photo'
import type { Photo } from '../../domain/records/photo'
import { count, hash } from '../../domain/records/scalars'

export const FORMAT = 1
export const NONE: Counts = { event: 0, fact: 0, personal: 0, photo: 0 }

export const header = z.strictObject({
  header: z.strictObject({ app: z.literal('Grainwright'), format: z.int(), schema: z.int() }),
})
export const footer = z.strictObject({
  footer: z.strictObject({
    counts: z.strictObject({ event: count, fact: count, personal: count, photo: count }),
    root: hash,
  }),
})

/** What a file may ask of whoever reads it. Sizes in bytes, inflated. */
export const LIMITS = {
  bytes: 1_000_000_000,
  rows: 5_000_000,
  depth: 32,
  text: 65_536, // UTF-16 code units of one text
  line: 4_000_000,
  bad: 10_000, // lines that do not read: with more, it is no damaged backup but something else
} as const

export const photoLine = z.strictObject({
  hash,
  type: z.enum(PHOTO_TYPES),
  bytes: z.array(z.base64()).check(z.maxLength(4)),
})

const PIECE = 48_000 // base64 characters, a multiple of 4

/** A photo as a line holds it: no text of it is longer than a text may be. */
export function photoToLine(photo: Photo): z.infer<typeof photoLine> {
  const text = btoa(Array.from(photo.bytes, (byte) => String.fromCharCode(byte)).join(''))
  const bytes = Array.from({ length: Math.ceil(text.length / PIECE) }, (_, i) => text.slice(i * PIECE, (i + 1) * PIECE))
  return { hash: photo.hash, type: photo.type, bytes }
}

export const photoFromLine = ({ hash, type, bytes }: z.infer<typeof photoLine>): Photo => ({
  hash,
  type,
  bytes: Uint8Array.from(atob(bytes.join('')), (character) => character.charCodeAt(0)),
})
