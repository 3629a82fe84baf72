/** Forgetting a client: what would go, and the redaction that lets it go. */
import { namesClient } from '../domain/call/names-client'
import type { NamesClient } from '../domain/call/names-client'
import { readable } from '../domain/records/read-fact'
import type { Id } from '../domain/records/scalars'
import { newFact } from '../domain/records/write'
import type { AppRepository } from './app-repository'
import type { AppState } from './app-store'

export interface ClientToForget extends NamesClient {
  readonly client: Id
  /** How many jobs stay, without a name. */
  readonly jobs: number
}

export async function clientToForget(repository: AppRepository, client: Id): Promise<ClientToForget> {
  const [versions, jobs] = await Promise.all([repository.versionsOf('client', client), repository.jobViewsOf(client)])
  const stories = await Promise.all(jobs.map(async ({ id }) => (await repository.eventsOfJob(id)).events))
  return { client, jobs: jobs.length, ...namesClient(readable(versions), stories) }
}

/** One command: true once it is on the disk. It cannot be undone. @param reason names nobody */
export const forgetClient = ({ write }: Pick<AppState, 'write'>, all: ClientToForget, reason: string) =>
  write((said) => ({
    facts: [
      newFact(said, 'redaction', all.client, { forget: [...all.versions, ...all.notes, ...all.photos] }, { reason }),
    ],
  }))
