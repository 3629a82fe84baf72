/**
 * Short codes for people: said on the phone, written on a box, typed with a gloved finger. The letters leave out I, L, O
 * and U, so that none is taken for another; one more character at the end checks the rest, [ISO7064] hybrid system, which
 * finds every single wrong character and nearly every swapped pair.
 */
import { hybridCheck } from './hybrid-check'
import type { Hash, Id } from './scalars'

const LETTERS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ'
const BITS = 5 // a letter
const HASH_LETTERS = 7 // 35 bits: among 100,000 records a chance of about one in seven that any two share a code
const PREFIX_LETTERS = 4 // 20 bits of a log's id

const checked = (letters: string) =>
  letters +
  LETTERS[
    hybridCheck(
      Array.from(letters, (c) => LETTERS.indexOf(c)),
      32,
    )
  ]

/** Letters from the last bits of a text of hexadecimal digits. */
function lettersOf(hex: string, count: number): string {
  let bits = BigInt(`0x${hex.replaceAll('-', '')}`)
  let letters = ''
  for (let i = 0; i < count; i++, bits >>= BigInt(BITS)) letters = LETTERS[Number(bits & 31n)] + letters
  return letters
}

/** The code of a record, from its hash: seven letters and the check, as on a label: `4J7K-Q2MB`. */
export function codeOf(hash: Hash): string {
  const code = checked(lettersOf(hash, HASH_LETTERS))
  return `${code.slice(0, 4)}-${code.slice(4)}`
}

/**
 * The number of a job: the prefix of the log that opened it, the place of its first event in that log, the check. Two
 * devices write two logs, so their numbers do not meet when the books are merged: `K7QD-1043-9`.
 */
export function jobNumber(log: Id, seq: number): string {
  const prefix = lettersOf(log, PREFIX_LETTERS)
  return `${prefix}-${seq}-${checked(prefix + seq).slice(-1)}`
}

/**
 * A code as it was typed, in its plain form without dashes and spaces, or nothing when the check does not fit. O is read
 * as 0, I and L as 1.
 */
export function readCode(typed: string): string | undefined {
  const plain = typed.toUpperCase().replaceAll(/[\s-]/g, '').replaceAll('O', '0').replaceAll(/[IL]/g, '1')
  const letters = plain.slice(0, -1)
  const known = letters.length > 0 && Array.from(plain).every((c) => LETTERS.includes(c))
  return known && checked(letters) === plain ? plain : undefined
}

/** A code without its dashes, as `readCode` gives it. */
export const plainCode = (code: string) => code.replaceAll('-', '')
