/** Writes a whole book as a backup, some hundred records at a time, and says what it wrote. */
import { sha256 } from '@noble/hashes/sha2'
import { bytesToHex } from '@noble/hashes/utils'
import type { Exported, RecordKind } from '../../domain/records/backup'
import { canonical } from '../../domain/records/canonical'
import { SCHEMA } from '../book'
import type { Book } from '../book'
import { eachChunk } from '../each-row'
import { recordOf } from '../rows'
import { FORMAT, NONE, photoToLine } from './format'

/**
 * @param write takes the next bytes of the file and may make the export wait
 * @param progress hears how many records were written so far
 */
export async function exportBook(
  book: Book,
  write: (bytes: Uint8Array<ArrayBuffer>) => unknown,
  progress: (records: number) => void = () => {},
): Promise<Exported> {
  const root = sha256.create()
  const counts: Record<RecordKind, number> = { ...NONE }
  const lost: string[] = []
  const encoder = new TextEncoder()
  const put = async (lines: readonly string[]) => {
    const bytes = encoder.encode(lines.map((line) => `${line}\n`).join(''))
    root.update(bytes)
    await write(bytes)
  }
  await put([canonical({ header: { app: 'Grainwright', format: FORMAT, schema: SCHEMA } })])
  for (const { kind, rows } of tables(book)) {
    for await (const chunk of rows) {
      await put(chunk.flatMap((each) => (each.ok ? [canonical({ [kind]: each.row })] : [])))
      for (const each of chunk) {
        if (each.ok) counts[kind] += 1
        else lost.push(`${kind} ${each.key}`)
      }
      progress(Object.values(counts).reduce((all, each) => all + each, 0))
    }
  }
  const end = { counts, root: bytesToHex(root.digest()) }
  await write(encoder.encode(`${canonical({ footer: end })}\n`))
  return { ...end, lost }
}

type Line = { readonly ok: true; readonly row: object } | { readonly ok: false; readonly key: string }

/**
 * Events come first: what an event names was written with it or before it, so a record written during the export can be
 * missing from the file only together with what names it.
 */
const tables = (book: Book): readonly { kind: RecordKind; rows: AsyncGenerator<readonly Line[]> }[] => [
  { kind: 'event', rows: mapped(eachChunk(book.events, '[log+seq]'), recordOf) },
  { kind: 'fact', rows: mapped(eachChunk(book.facts), recordOf) },
  { kind: 'personal', rows: mapped(eachChunk(book.personal), (row) => row) },
  { kind: 'photo', rows: mapped(eachChunk(book.photos), photoToLine) },
]

type Read<R> = { readonly ok: true; readonly row: R } | { readonly ok: false; readonly key: string }
async function* mapped<R>(
  chunks: AsyncGenerator<readonly Read<R>[]>,
  line: (row: R) => object,
): AsyncGenerator<readonly Line[]> {
  for await (const chunk of chunks) yield chunk.map((each) => (each.ok ? { ok: true, row: line(each.row) } : each))
}
