/** What changed between any two versions of one job: two sheets, two as-builts, or a sheet and what a build stood on. */
import { builtChanges, sheetChanges } from '../domain/book/compared-versions'
import type { VersionChange } from '../domain/book/compared-versions'
import { readable } from '../domain/records/read-fact'
import type { FactOf } from '../domain/records/read-fact'
import type { Sheet } from '../domain/sheet/sheet'
import type { AppRepository } from './app-repository'

type Version = FactOf<'sheet'> | FactOf<'asBuilt'>

/** @param sheets every frozen sheet of the job */
export async function versionChanges(
  repository: Pick<AppRepository, 'facts'>,
  sheets: readonly FactOf<'sheet'>[],
  from: Version,
  to: Version,
): Promise<readonly VersionChange[]> {
  const sheetOf = (version: Version): Sheet | undefined =>
    version.kind === 'sheet' ? version.body : sheets.find(({ hash }) => hash === version.body.sheet)?.body
  const [before, after] = [sheetOf(from), sheetOf(to)]
  if (before === undefined || after === undefined) return []
  const ofSheets = sheetChanges(before, after)
  if (from.kind === 'sheet' || to.kind === 'sheet') return ofSheets
  const [old, now] = await Promise.all([arrowsOf(repository, from), arrowsOf(repository, to)])
  const ofBuilds = builtChanges(
    { asBuilt: from.body, arrows: old, sheet: before },
    { asBuilt: to.body, arrows: now, sheet: after },
  )
  return [...ofBuilds, ...ofSheets]
}

async function arrowsOf(repository: Pick<AppRepository, 'facts'>, { body }: FactOf<'asBuilt'>) {
  const facts = readable((await repository.facts(body.arrows)).flatMap((each) => each ?? []))
  return facts.flatMap((fact) => (fact.kind === 'arrowBuilt' ? [fact.body] : []))
}
