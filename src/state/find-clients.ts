/** Clients as a call looks for them: by the beginning of a name, a phone number, or a code on a label. */
import type { Job } from '../domain/job/job'
import { jobOf } from '../domain/job/job'
import type { JobView } from '../domain/job/job-view'
import { plainCode } from '../domain/records/code'
import type { Id } from '../domain/records/scalars'
import { wordsIn } from '../domain/records/words-in'
import type { AppRepository } from './app-repository'
import type { AppStore } from './app-store'
import { clientNow } from './call-actions'

export interface FoundClient {
  readonly id: Id
  readonly name: string
  readonly phone: string
  /** Last opened first; two clients of one name differ by these. */
  readonly jobs: readonly JobView[]
}

const MOST = 8

export async function findClients(store: AppStore, text: string): Promise<readonly FoundClient[]> {
  const { repository } = store.getState()
  const words = wordsIn(text)
  if (repository === null || words.length === 0) return []
  const code = plainCode(text.trim()).toLowerCase()
  const [named, ofName, ofCode] = await Promise.all([
    repository.findSubjects('client', words, MOST),
    repository.findJobs(words, MOST),
    repository.findJobs([code], MOST),
  ])
  const ofJobs = [...ofName.jobs, ...ofCode.jobs].flatMap((view) => view.client ?? [])
  const ids = [...new Set([...named, ...ofJobs])].slice(0, MOST)
  return Promise.all(ids.map((id) => foundClient(store, repository, id)))
}

async function foundClient(store: AppStore, repository: AppRepository, id: Id): Promise<FoundClient> {
  const { fields } = await clientNow(store, id)
  return {
    id,
    name: fields.name ?? '',
    phone: fields.phone ?? '',
    jobs: await jobsOfClient(repository, id, fields.name),
  }
}

/** Last opened first; a client whose name is forgotten or empty has no list. */
async function jobsOfClient(repository: AppRepository, id: Id, name = ''): Promise<readonly JobView[]> {
  if (wordsIn(name).length === 0) return []
  return (await repository.jobViewsOf(id)).toSorted((a, b) => (a.id > b.id ? -1 : 1))
}

/** A client's other jobs in full, newest first: what was said then is offered now. */
export async function otherJobs(store: AppStore, client: Id, except: Id): Promise<readonly Job[]> {
  const { repository } = store.getState()
  if (repository === null) return []
  const { jobs } = await foundClient(store, repository, client)
  const stories = await Promise.all(
    jobs.filter(({ id }) => id !== except).map(async ({ id }) => jobOf((await repository.eventsOfJob(id)).events)),
  )
  return stories.filter((job) => job !== null)
}
