/**
 * What the repository tells of changes while a command is given. The one who gives it brings the open job up to date
 * before it says *Saved*, so nobody else has to.
 */
import type { Change } from '../domain/ports'
import type { Id } from '../domain/records/scalars'

export interface GivenChanges {
  readonly begin: () => void
  /** @returns whether a command is being given, which then answers for the change */
  readonly hear: (change: Change) => boolean
  /** The jobs that changed. `isAlone`: by this one command only, not by an earlier one that arrived late. */
  readonly end: () => { readonly jobs: ReadonlySet<Id>; readonly isAlone: boolean }
}

export function givenChanges(): GivenChanges {
  let heard: Change[] | null = null
  return {
    begin: () => (heard = []),
    hear(change) {
      heard?.push(change)
      return heard !== null
    },
    end() {
      const changes = heard ?? []
      heard = null
      return { jobs: new Set(changes.flatMap(({ jobs }) => jobs)), isAlone: changes.length <= 1 }
    },
  }
}
