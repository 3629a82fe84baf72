/** Every job of the book with its builds, one after the other, newest first: what an archive is written from. */
import type { ArrowBuilt, AsBuilt } from '../domain/bench/built'
import { readable } from '../domain/records/read-fact'
import type { Hash } from '../domain/records/scalars'
import type { AppRepository } from './app-repository'
import type { OpenJob } from './open-job'
import { openJob } from './open-job'

export interface ArchivedBuild {
  readonly hash: Hash
  readonly body: AsBuilt
  readonly arrows: readonly ArrowBuilt[]
}
export interface ArchivedJob {
  readonly open: OpenJob
  readonly builds: readonly ArchivedBuild[]
}

const EVERY = 1_000_000 // more jobs than a book may hold

export async function* archiveJobs(repository: AppRepository): AsyncGenerator<ArchivedJob> {
  for (const { id } of await repository.jobViews(EVERY)) {
    const open = await openJob(repository, id)
    if (open === null) continue
    const builds: ArchivedBuild[] = []
    for (const { asBuilt } of open.job.signedOff) {
      const body = open.asBuilts.get(asBuilt)
      if (body === undefined) continue
      const facts = readable((await repository.facts(body.arrows)).flatMap((each) => each ?? []))
      const arrows = facts.flatMap((fact) => (fact.kind === 'arrowBuilt' ? [fact.body] : []))
      builds.push({ hash: asBuilt, body, arrows })
    }
    yield { open, builds }
  }
}
