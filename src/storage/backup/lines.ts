/** Lines of a file as they stream in, inflated where the file is gzip, within the limits of size. */
import type { Source } from '../../domain/ports'
import { LIMITS } from './format'

/** The file asks for more than is reasonable, or cannot be unpacked: nothing of it is used. */
export class Refused extends Error {
  override readonly name = 'Refused'
}

/** Each line with its own bytes, the line break not included; and whether a line break ended it. */
export interface Line {
  readonly text: string
  readonly bytes: Uint8Array
  readonly ended: boolean
}

const NEWLINE = 10

export async function* linesOf(source: Source): AsyncGenerator<Line> {
  let rest = new Uint8Array(0)
  let total = 0
  for await (const bytes of chunksOf(await inflated(source))) {
    total += bytes.length
    if (total > LIMITS.bytes) throw new Refused(`the file holds more than ${LIMITS.bytes / 1e6} MB`)
    let start = 0
    for (let end = bytes.indexOf(NEWLINE); end !== -1; end = bytes.indexOf(NEWLINE, start)) {
      yield lineOf(rest, bytes.subarray(start, end), true)
      rest = new Uint8Array(0)
      start = end + 1
    }
    rest = joined(rest, bytes.subarray(start))
    if (rest.length > LIMITS.line) throw new Refused(`a line is longer than ${LIMITS.line / 1e6} MB`)
  }
  if (rest.length > 0) yield lineOf(rest, new Uint8Array(0), false)
}

function lineOf(before: Uint8Array, after: Uint8Array, ended: boolean): Line {
  const bytes = joined(before, after)
  if (bytes.length > LIMITS.line) throw new Refused(`a line is longer than ${LIMITS.line / 1e6} MB`)
  return { text: new TextDecoder().decode(bytes), bytes, ended }
}

function joined(a: Uint8Array, b: Uint8Array): Uint8Array<ArrayBuffer> {
  const both = new Uint8Array(a.length + b.length)
  both.set(a)
  both.set(b, a.length)
  return both
}

async function* chunksOf(source: Source): AsyncGenerator<Uint8Array> {
  const reader = source.getReader()
  try {
    for (let next = await read(reader); !next.done; next = await read(reader)) yield next.value
  } finally {
    await reader.cancel().catch(() => {}) // the source may have failed already; that was told by the read
  }
}

async function read(reader: ReadableStreamDefaultReader<Uint8Array<ArrayBuffer>>) {
  try {
    return await reader.read()
  } catch (error) {
    throw new Refused(`the file cannot be read to its end: ${String(error)}`)
  }
}

/** A file that begins like gzip is unpacked while it is read, so that a small file cannot grow past the limit unseen. */
async function inflated(source: Source): Promise<Source> {
  const [probe, whole] = source.tee()
  const reader = probe.getReader()
  const first = (await read(reader)).value
  void reader.cancel()
  const isGzip = first !== undefined && first[0] === 0x1f && first[1] === 0x8b
  return isGzip ? whole.pipeThrough(new DecompressionStream('gzip')) : whole
}
