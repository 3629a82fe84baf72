/** What changed between two versions of a record, field by field, for a page that says it in words. */
import diff from 'microdiff'

export interface FieldChange {
  /** From the outside in: `['plan', 'lines', 0, 'lengthIn']`. */
  readonly path: readonly (string | number)[]
  readonly before?: unknown
  readonly after?: unknown
}

/** @param before, after bodies of two facts of one kind */
export const differenceOf = (before: object, after: object): readonly FieldChange[] =>
  diff(before, after).map((change) => ({
    path: change.path,
    ...('oldValue' in change ? { before: change.oldValue } : {}),
    ...('value' in change ? { after: change.value } : {}),
  }))
