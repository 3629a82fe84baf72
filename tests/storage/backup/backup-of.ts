/** A book's backup as bytes, and bytes as a file that streams in. */
import type { Repository, Source } from '@/domain/ports'

export async function backupOf(repository: Pick<Repository, 'archive'>): Promise<Uint8Array<ArrayBuffer>> {
  const pieces: Uint8Array<ArrayBuffer>[] = []
  await repository.archive.backUp('2031-05-04T12:00:00.000Z', (bytes) => void pieces.push(bytes.slice()))
  return joined(pieces)
}

export const textOf = async (repository: Pick<Repository, 'archive'>): Promise<string> =>
  new TextDecoder().decode(await backupOf(repository))

export const bytesOf = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text)

/** @param piece how many bytes arrive at once */
export function fileOf(bytes: Uint8Array<ArrayBuffer> | string, piece = 65_536): Source {
  const whole = typeof bytes === 'string' ? bytesOf(bytes) : bytes
  let at = 0
  return new ReadableStream({
    pull(controller) {
      if (at >= whole.length) return controller.close()
      controller.enqueue(whole.slice(at, at + piece))
      at += piece
    },
  })
}

export function joined(pieces: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0))
  let at = 0
  for (const piece of pieces) {
    whole.set(piece, at)
    at += piece.length
  }
  return whole
}
