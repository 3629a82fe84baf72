/** A file the user chose once, to which backups are saved without asking again, where the browser can. */
import type { BackupFile } from '../domain/ports'
import { exportBook } from './backup/export-book'
import type { Book } from './book'
import { meta, setMeta, tallyOf } from './meta'

/** What the File System Access API adds; the standard library does not describe it yet. */
interface FileHandle {
  readonly name: string
  createWritable(): Promise<{
    write(bytes: Uint8Array<ArrayBuffer>): Promise<void>
    close(): Promise<void>
    abort(): Promise<void>
  }>
  queryPermission(options: { mode: 'readwrite' }): Promise<PermissionState>
  requestPermission(options: { mode: 'readwrite' }): Promise<PermissionState>
}
interface Picker {
  showSaveFilePicker?: (options: object) => Promise<FileHandle>
}

export const backupFile = (book: Book, picker: Picker = globalThis as Picker): BackupFile => ({
  supported: picker.showSaveFilePicker !== undefined,
  async name() {
    return (await chosen(book))?.name
  },
  async choose(suggestedName) {
    if (!picker.showSaveFilePicker) return 'not supported'
    try {
      const types = [{ description: 'Grainwright backup', accept: { 'application/jsonl': ['.jsonl'] } }]
      await setMeta(book, 'backupFile', await picker.showSaveFilePicker({ suggestedName, types }))
      return 'chosen'
    } catch {
      return 'cancelled'
    }
  },
  async save(at, mayAsk) {
    const file = await chosen(book)
    if (!file) return { kind: 'no file' }
    const asked = mayAsk
      ? await file.requestPermission({ mode: 'readwrite' })
      : await file.queryPermission({ mode: 'readwrite' })
    if (asked !== 'granted') return { kind: 'not allowed' }
    const { facts, events } = await tallyOf(book)
    const out = await file.createWritable() // writes beside the file and takes its place only when closed
    try {
      const exported = await exportBook(book, (bytes) => out.write(bytes))
      await out.close()
      await setMeta(book, 'backup', { at, rows: facts + events })
      return { kind: 'saved', exported }
    } catch (error) {
      await out.abort().catch(() => {})
      return { kind: 'failed', problem: String(error) }
    }
  },
})

const chosen = async (book: Book) => (await meta(book, 'backupFile')) as FileHandle | undefined
