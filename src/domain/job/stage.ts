/** How far a job has come: the stage its front page leads to, and what is the matter with it in a word. */
import type { Job } from './job'

export const STAGES = ['call', 'sheet', 'bench', 'send'] as const
export type Stage = (typeof STAGES)[number]
export type JobState = 'calling' | 'planning' | 'ready to build' | 'building' | 'built' | 'signed off' | 'sent'

export function stateOf(job: Job): JobState {
  if (job.sent.length > 0) return 'sent'
  if (job.signedOff.length > 0) return 'signed off'
  if (job.bench !== null) return job.bench.confirmed.some((each) => each.step === 'pack') ? 'built' : 'building'
  if (job.frozen.length > 0) return 'ready to build'
  return job.accepted === null && job.plan.lines.length === 0 ? 'calling' : 'planning'
}

export const STAGE_OF: Readonly<Record<JobState, Stage>> = {
  calling: 'call',
  planning: 'sheet',
  'ready to build': 'bench',
  building: 'bench',
  built: 'send',
  'signed off': 'send',
  sent: 'send',
}
