/** What became of the lines of a sheet since it was last frozen. */
import type { Id } from '../records/scalars'
import type { Sheet } from './sheet'

/** A line as a person names it. */
export interface NamedLine {
  readonly name: string
  readonly count: number
  readonly lotCode: string | undefined
}

export interface LinesSince {
  /** By line: what it was, or null where it is new. A line that is as it was is left out. */
  readonly changed: ReadonlyMap<Id, NamedLine | null>
  readonly removed: readonly NamedLine[]
}

export function linesSince(frozen: Sheet, now: Sheet): LinesSince {
  const before = new Map(frozen.plan.lines.map((line) => [line.id, line]))
  const ids = new Set(now.plan.lines.map(({ id }) => id))
  const changed = now.plan.lines.flatMap((line): readonly (readonly [Id, NamedLine | null])[] => {
    const was = before.get(line.id)
    if (was === undefined) return [[line.id, null]]
    const isSame = was.part === line.part && was.lot === line.lot && was.count === line.count && was.no === line.no
    return isSame ? [] : [[line.id, named(frozen, was)]]
  })
  const removed = frozen.plan.lines.filter(({ id }) => !ids.has(id))
  return { changed: new Map(changed), removed: removed.map((line) => named(frozen, line)) }
}

const named = (sheet: Sheet, line: Sheet['plan']['lines'][number]): NamedLine => ({
  name: sheet.parts.find(({ id }) => id === line.part)?.part.name ?? 'a part that is not in this book',
  count: line.count,
  lotCode: sheet.lots.find(({ id }) => id === line.lot)?.lot.code,
})
