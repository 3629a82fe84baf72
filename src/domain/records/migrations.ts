/**
 * How the body of an older version is read today: `MIGRATIONS[kind][n]` turns a version-n body into version n + 1. It
 * happens on reading only; what is stored and its hash stay as they were. A released entry is never edited. Events have
 * one version for all their kinds, so an entry stands only where a body changed.
 */
export type Migration = (body: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>
export type Migrations = Readonly<Record<string, Readonly<Record<number, Migration>>>>

export const MIGRATIONS: Migrations = {}
export const EVENT_MIGRATIONS: Migrations = {}

/** The body after every step from one version to another. */
export const migrated = (
  steps: Readonly<Record<number, Migration>> | undefined,
  body: Readonly<Record<string, unknown>>,
  from: number,
  to: number,
) => {
  let now = body
  for (let version = from; version < to; version++) now = steps?.[version]?.(now) ?? now
  return now
}
