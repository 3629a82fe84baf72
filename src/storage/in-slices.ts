/** Many rows into one table within a transaction, some at a time: in between the page is drawn and the disk is heard of. */

export const SLICE = 250 // rows; a slice is handed over in less than a frame or two

export async function inSlices<T>(
  rows: readonly T[],
  put: (slice: readonly T[]) => PromiseLike<unknown>,
  wrote: (rows: number) => void,
): Promise<void> {
  for (let at = 0; at < rows.length; at += SLICE) {
    const slice = rows.slice(at, at + SLICE)
    await put(slice)
    wrote(slice.length)
  }
}
