/** What the Send page does: each one command, true once it is on the disk. */
import { signOff } from '../domain/bench/sign-off'
import type { Job } from '../domain/job/job'
import { newEvent } from '../domain/records/write'
import type { Sheet } from '../domain/sheet/sheet'
import type { AppState } from './app-store'

type Write = Pick<AppState, 'write'>

export const signOffSet = ({ write }: Write, job: Job, sheet: Sheet, reason?: string) =>
  write((said) => signOff(job, sheet, said, reason))

export const tickPacked = ({ write }: Write, job: Job, item: string, ticked: boolean) =>
  write(() => ({ events: [newEvent('packed', { job: job.id }, { item, ticked })] }))

export const markSent = ({ write }: Write, job: Job, on: string, count: number) =>
  write(() => ({ events: [newEvent('sent', { job: job.id }, { on, count })] }))
