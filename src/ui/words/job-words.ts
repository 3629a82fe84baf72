/** A job as headings, lists and tabs name it, and how it stands. */
import type { Answers } from '../../domain/call/answers'
import { valueOf } from '../../domain/call/answers'
import { openQuestions } from '../../domain/call/open-questions'
import type { Job } from '../../domain/job/job'
import type { JobState, Stage } from '../../domain/job/stage'
import { counted } from './format'

/** `Job K7QD-1043-9 · Oduya · bison`. */
export function jobTitle(job: Job, client: string | undefined): string {
  const quarry = valueOf(job.answers, 'quarry')
  const kit = job.kind === 'test kit' ? 'test kit' : ''
  const parts = [client ?? '', typeof quarry === 'string' ? quarry.trim() : '', kit].filter((part) => part !== '')
  return [`Job ${job.code}`, ...(parts.length === 0 ? ['new call'] : parts)].join(' · ')
}
export const jobTab = (job: Job, client: string | undefined): string => jobTitle(job, client).replace(/^Job /, '')

export function openCountWords(answers: Answers): string {
  const open = openQuestions(answers).length
  return open === 0 ? '' : counted(open, 'open question')
}

export const STATE_WORDS: Readonly<Record<JobState, string>> = {
  calling: 'on the call',
  planning: 'being planned',
  'ready to build': 'ready to build',
  building: 'on the bench',
  built: 'built, not signed off',
  'signed off': 'signed off',
  sent: 'sent',
}

export const STAGE_WORDS: Readonly<Record<Stage, string>> = {
  call: 'Call',
  sheet: 'Sheet',
  bench: 'Bench',
  send: 'Send',
}
