/** What is told of an arrow after its set has left: retired, weighed again, how it flew. Each true once it is on the disk. */
import type { EventBody } from '../domain/job/events'
import type { Id } from '../domain/records/scalars'
import { newEvent } from '../domain/records/write'
import type { AppState } from './app-store'

type Store = Pick<AppState, 'write'>

export const retireArrow = ({ write }: Store, job: Id, arrow: Id, body: EventBody<'retired'>) =>
  write(() => ({ events: [newEvent('retired', { job, arrow }, body)] }))

export const report = ({ write }: Store, job: Id, arrow: Id, point: EventBody<'reported'>['point'], value: number) =>
  write(() => ({ events: [newEvent('reported', { job, arrow }, { point, value })] }))
