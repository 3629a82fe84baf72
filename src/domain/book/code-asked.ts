/** What was typed or scanned into the Book's search, when it is the code of a record, a job or an arrow. */
import { readCode } from '../records/code'

export interface CodeAsked {
  /** What a search finds it by; of an arrow, that of its job. */
  readonly word: string
  /** The number after the stroke, on the tag of an arrow. */
  readonly arrow?: number
}

/** @returns undefined when it is no code that checks */
export function codeAsked(typed: string): CodeAsked | undefined {
  const [code, no, ...more] = typed.trim().split('/')
  const word = readCode(code ?? '')?.toLowerCase()
  if (word === undefined || more.length > 0) return undefined
  if (no === undefined) return { word }
  return /^\d{1,3}$/.test(no) ? { word, arrow: Number(no) } : undefined
}
