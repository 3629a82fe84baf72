/** The versions that no other follows. One is the present state; several are shown side by side until a person joins them. */
import type { Hash } from './scalars'

interface Version {
  readonly hash: Hash
  readonly parents: readonly Hash[]
}

/** Heads among the versions of one subject, in the order of their hashes. */
export function heads<V extends Version>(versions: readonly V[]): readonly V[] {
  const followed = new Set(versions.flatMap((version) => version.parents))
  return versions.filter((version) => !followed.has(version.hash)).toSorted((a, b) => (a.hash < b.hash ? -1 : 1))
}
