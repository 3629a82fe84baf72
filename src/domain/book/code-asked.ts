/** What was typed or scanned into the Book's search, when it is the code of a record, a job or an arrow. */
import { readCode } from '../records/code'

/** @returns the word that a search finds it by, of an arrow that of its set; undefined when it is no code that checks */
export function codeAsked(typed: string): string | undefined {
  const [code, no, ...more] = typed.trim().split('/')
  const plain = readCode(code ?? '')?.toLowerCase()
  if (plain === undefined || more.length > 0) return undefined
  return no === undefined || /^\d{1,3}$/.test(no) ? plain : undefined
}
