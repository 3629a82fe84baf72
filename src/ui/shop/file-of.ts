/** A file that grows piece by piece. What is full goes to the browser's own store, so that script memory holds little of it. */

const FULL = 4_000_000 // bytes or letters

export function fileOf(type: string) {
  let blob = new Blob([], { type })
  let pieces: BlobPart[] = []
  let held = 0
  const flush = () => {
    blob = new Blob([blob, ...pieces], { type })
    pieces = []
    held = 0
  }
  return {
    write: (piece: Uint8Array<ArrayBuffer> | string): void => {
      pieces.push(piece)
      held += piece.length
      if (held > FULL) flush()
    },
    blob(): Blob {
      flush()
      return blob
    },
  }
}
