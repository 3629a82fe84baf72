/** A client as a list tells one from another: phone, and what was ordered last. */
import type { JobView } from '../../../domain/job/job-view'
import type { FoundClient } from '../../../state/find-clients'
import { showDayAndYear } from '../dates'
import { counted } from '../format'

/** `555 0101 · bison, six arrows, 3 Mar 2026 · 2 builds`. */
export function foundClientWords({ phone, jobs }: FoundClient): string {
  const [last] = jobs
  const builds = jobs.reduce((total, job) => total + job.builds.length, 0)
  return [
    phone === '' ? 'no phone kept' : phone,
    last === undefined ? 'no order yet' : lastOrderWords(last),
    ...(builds === 0 ? [] : [counted(builds, 'build')]),
  ].join(' · ')
}

const lastOrderWords = ({ quarry, quantity, updated }: JobView) =>
  [quarry, counted(quantity, 'arrow'), showDayAndYear(updated.slice(0, 10))].filter((each) => each !== '').join(', ')

export const NAMELESS = 'name not kept'

export const newClientWords = (name: string): string => `New client: ${name}`
