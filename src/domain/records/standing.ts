/**
 * Which of several readings of one point stand. A correction withdraws what it names and stands in its place. Where two
 * devices each hold one, both stand: the point is disputed until a person decides, and neither is dropped.
 */
import type { Hash } from './scalars'

export interface Claim {
  /** Of the event that made it. */
  readonly hash: Hash
  /** What it is about: arrow, data point, attempt. Only equal texts meet. */
  readonly about: string
  /** The event it takes back, if it is a correction. */
  readonly withdraws?: Hash
  /** A correction that only takes back says nothing itself. */
  readonly silent?: boolean
}

/** The claims that stand, by what they are about. More than one in a list: disputed. */
export function standing<C extends Claim>(claims: readonly C[]): ReadonlyMap<string, readonly C[]> {
  const withdrawn = new Set(claims.flatMap((claim) => claim.withdraws ?? []))
  const by = new Map<string, readonly C[]>()
  for (const claim of claims) {
    if (withdrawn.has(claim.hash) || claim.silent) continue
    by.set(claim.about, [...(by.get(claim.about) ?? []), claim])
  }
  return by
}

export const disputed = <C extends Claim>(claims: readonly C[]): readonly (readonly C[])[] =>
  [...standing(claims).values()].filter((each) => each.length > 1)
