/** A build as the Book shows it: the as-built record, its arrows, the sheet it was built on, and the versions around it. */
import type { ArrowBuilt, AsBuilt } from '../domain/bench/built'
import { survivors } from '../domain/book/survivors'
import type { Survivors } from '../domain/book/survivors'
import type { Answers } from '../domain/call/answers'
import type { FactOf } from '../domain/records/read-fact'
import { readable } from '../domain/records/read-fact'
import type { Hash } from '../domain/records/scalars'
import type { Sheet } from '../domain/sheet/sheet'
import type { AppRepository } from './app-repository'
import { openJob } from './open-job'

export interface OpenBuild {
  readonly hash: Hash
  readonly fact: FactOf<'asBuilt'>
  readonly asBuilt: AsBuilt
  readonly arrows: readonly ArrowBuilt[]
  readonly sheet: Sheet
  readonly sheets: readonly FactOf<'sheet'>[]
  readonly versions: readonly FactOf<'asBuilt'>[]
  readonly clientName: string
  readonly client: string | null
  readonly answers: Answers
  /** What is left of the set; undefined where the job cannot be read. */
  readonly survivors: Survivors | undefined
}

/** @returns null when the book has no such build, or what it stands on cannot be read */
export async function openBuild(repository: AppRepository, hash: Hash): Promise<OpenBuild | null> {
  const read = await repository.fact(hash)
  if (read?.kind !== 'ok' || read.fact.kind !== 'asBuilt') return null
  const { fact } = read
  const asBuilt = fact.body
  const found = readable((await repository.facts([...asBuilt.arrows, asBuilt.sheet])).flatMap((each) => each ?? []))
  const sheet = found.find((each) => each.kind === 'sheet')
  if (sheet?.kind !== 'sheet') return null
  const [sheets, versions, job] = await Promise.all([
    repository.versionsOf('sheet', asBuilt.job),
    repository.versionsOf('asBuilt', asBuilt.job),
    openJob(repository, asBuilt.job),
  ])
  return {
    hash,
    fact,
    asBuilt,
    arrows: found.flatMap((each) => (each.kind === 'arrowBuilt' ? [each.body] : [])).toSorted((a, b) => a.no - b.no),
    sheet: sheet.body,
    sheets: readable(sheets),
    versions: readable(versions),
    clientName: job?.client?.['name'] ?? '',
    client: job?.job.client ?? null,
    answers: job?.job.answers ?? {},
    survivors: job === null ? undefined : survivors(job.job),
  }
}
