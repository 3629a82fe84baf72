/** The list of jobs, last changed first. A save tells how its jobs now stand, so that the list is not read again for it. */
import type { JobView } from '../domain/job/job-view'

export const LISTED = 200 // rows; what is older is found in the Book

export function listWith(before: readonly JobView[], now: readonly JobView[]): readonly JobView[] {
  const isOld = new Set(now.map(({ id }) => id))
  return [...now, ...before.filter(({ id }) => !isOld.has(id))]
    .toSorted((a, b) => (a.updated === b.updated ? (a.id > b.id ? -1 : 1) : a.updated > b.updated ? -1 : 1))
    .slice(0, LISTED)
}
