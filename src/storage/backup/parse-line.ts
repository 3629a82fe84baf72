/** One line of a backup: unknown text in, a record rebuilt from known fields or a sentence out. */
import type { Counts } from '../../domain/records/backup'
import { canonical } from '../../domain/records/canonical'
import { fitsHash } from '../../domain/records/chain'
import { hashOfBytes } from '../../domain/records/hash-of'
import { personal } from '../../domain/records/personal'
import type { Personal } from '../../domain/records/personal'
import { PHOTO_LIMIT } from '../../domain/records/photo'
import type { Photo } from '../../domain/records/photo'
import { readEvent } from '../../domain/records/read-event'
import type { ReadEvent } from '../../domain/records/read-event'
import { readFact } from '../../domain/records/read-fact'
import type { ReadFact } from '../../domain/records/read-fact'
import { footer, header, LIMITS, photoFromLine, photoLine } from './format'
import { Refused } from './lines'

export type ParsedLine =
  | { readonly kind: 'header'; readonly format: number; readonly schema: number }
  | { readonly kind: 'footer'; readonly counts: Counts; readonly root: string }
  | { readonly kind: 'event'; readonly read: Exclude<ReadEvent, { kind: 'unreadable' }>; readonly raw: object }
  | { readonly kind: 'fact'; readonly read: Exclude<ReadFact, { kind: 'unreadable' }>; readonly raw: object }
  | { readonly kind: 'personal'; readonly record: Personal }
  | { readonly kind: 'photo'; readonly record: Photo }
  | { readonly kind: 'bad'; readonly problem: string }

const bad = (problem: string): ParsedLine => ({ kind: 'bad', problem })

/** @throws Refused when the line asks for more than the limits allow */
export function parseLine(text: string): ParsedLine {
  checkSize(text)
  let value: unknown
  try {
    value = JSON.parse(text)
  } catch {
    return bad('is not JSON')
  }
  // The canonical text is the only one there is: a field given twice, a number out of range, a stray space all differ.
  if (canonicalOr(value) !== text) return bad('is not written in the canonical form')
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return bad('is not a record')
  const [kind, ...more] = Object.keys(value)
  if (kind === undefined || more.length > 0) return bad('is not one record')
  return recordIn(kind, value)
}

function recordIn(kind: string, line: object): ParsedLine {
  const raw: unknown = Object.values(line)[0]
  switch (kind) {
    case 'header': {
      const read = header.safeParse(line)
      return read.success ? { kind, ...read.data.header } : bad('is no header this app knows')
    }
    case 'footer': {
      const read = footer.safeParse(line)
      return read.success ? { kind, ...read.data.footer } : bad('is no footer this app knows')
    }
    case 'event': {
      const read = readEvent(raw)
      if (read.kind === 'unreadable') return bad(read.problem)
      if (!fitsHash(raw as { hash: string })) return bad('does not fit its hash')
      return { kind, read, raw: raw as object }
    }
    case 'fact': {
      const read = readFact(raw)
      return read.kind === 'unreadable' ? bad(read.problem) : { kind, read, raw: raw as object }
    }
    case 'personal': {
      const read = personal.safeParse(raw)
      if (!read.success) return bad('is no personal record')
      return fitsHash(read.data) ? { kind, record: read.data } : bad('does not fit its hash')
    }
    case 'photo': {
      const read = photoLine.safeParse(raw)
      if (!read.success) return bad('is no photo')
      const record = photoFromLine(read.data)
      if (record.bytes.length > PHOTO_LIMIT) return bad('is a photo larger than this app keeps')
      return hashOfBytes(record.bytes) === record.hash ? { kind, record } : bad('does not fit its hash')
    }
    default:
      return bad(`is of a kind this app does not know: ${kind.slice(0, 40)}`)
  }
}

function canonicalOr(value: unknown): string | undefined {
  try {
    return canonical(value)
  } catch {
    return undefined
  }
}

/** Before anything is built from it: how deep it nests and how long its texts are. */
function checkSize(text: string): void {
  let depth = 0
  let length = -1 // of the text we are in, in UTF-16 code units; −1 outside
  for (let i = 0; i < text.length; i++) {
    const c = text[i]
    if (length >= 0) {
      if (c === '"') length = -1
      else {
        if (c === '\\') i += text[i + 1] === 'u' ? 5 : 1
        length += 1
        if (length > LIMITS.text) throw new Refused(`a text is longer than ${LIMITS.text / 1024} KB`)
      }
    } else if (c === '"') length = 0
    else if (c === '{' || c === '[') {
      depth += 1
      if (depth > LIMITS.depth) throw new Refused(`a record nests deeper than ${LIMITS.depth}`)
    } else if (c === '}' || c === ']') depth -= 1
  }
}
