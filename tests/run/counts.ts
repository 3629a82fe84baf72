/** What a suite reports to the test command: a JSON file at the path in COUNTS_FILE. Every skip says why. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'

export interface Skip {
  readonly name: string
  readonly why: string
}
export interface Counts {
  readonly passed: number
  readonly failed: number
  readonly skipped: readonly Skip[]
}

export const NOTHING: Counts = { passed: 0, failed: 0, skipped: [] }

export const plus = (a: Counts, b: Counts): Counts => ({
  passed: a.passed + b.passed,
  failed: a.failed + b.failed,
  skipped: [...a.skipped, ...b.skipped],
})

/** Hands the counts to the test command; does nothing when a suite is run by itself. */
export function reportCounts(counts: Counts): void {
  const path = process.env['COUNTS_FILE']
  if (path === undefined) return
  mkdirSync(dirname(path), { recursive: true })
  writeFileSync(path, JSON.stringify(counts))
}

export const readCounts = (path: string): Counts | undefined =>
  existsSync(path) ? (JSON.parse(readFileSync(path, 'utf8')) as Counts) : undefined

/** The plain closing line. */
export const closingLine = ({ passed, failed, skipped }: Counts) =>
  `${passed} passed, ${failed} failed, ${skipped.length} skipped`
