/** From a row as it is stored to the record as it was hashed: without the fields that are there for an index only. */
export function recordOf<R extends { readonly lots: unknown }>(row: R): Omit<R, 'lots'> {
  const { lots: _, ...record } = row
  return record
}
