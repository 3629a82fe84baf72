/** Keeps a recovery's file in memory, where a browser offers no file of the user's choice; it is offered as a download. */
import type { Keep } from '../../domain/ports'

export interface MemoryKeep extends Keep {
  /** What was kept, for the download. */
  readonly blob: () => Blob
}

export function memoryKeep(): MemoryKeep {
  const pieces: Uint8Array<ArrayBuffer>[] = []
  const blob = () => new Blob(pieces, { type: 'application/jsonl' })
  return {
    write: async (bytes) => void pieces.push(bytes.slice()),
    close: async () => {},
    read: async () => blob().stream(),
    blob,
  }
}
