/**
 * Ballast: a file of this origin that holds nothing. On a full disk the browser cannot even open the database again without
 * losing it, so before a rescue the file is dropped and there is room to work in. It is laid down anew afterwards.
 */
export interface Ballast {
  lay(): Promise<void>
  /** Some seconds on, when the first page is drawn and the browser has written out what it was given. */
  layLater(): void
  /** For good, also where it is being laid, or was to be laid later. */
  drop(): Promise<void>
  /** Whether so many bytes can be written now; where that cannot be tried, it says no. */
  hasRoom(bytes: number): Promise<boolean>
}

const LATER = 3000 // ms
const SIZE = 16 * 1024 * 1024 // bytes: opening and refilling a database of some ten megabytes took less
const BLOCK = 2 * 1024 * 1024 // bytes written at once
const DICE = 65_536 // bytes; the most random ones a browser gives at once

/** Where the browser keeps no files for a page, there is none, and a rescue asks for freed space first. */
export function ballast(book: string, folderOf = () => navigator.storage.getDirectory()): Ballast {
  const name = `${book}.ballast`
  let waiting: ReturnType<typeof setTimeout> | undefined
  let laying = Promise.resolve()

  async function layNow() {
    try {
      const folder = await folderOf()
      const handle = await folder.getFileHandle(name, { create: true })
      if ((await handle.getFile()).size >= SIZE) return
      await fill(handle, SIZE)
    } catch {
      // withheld, or no room even for this
    }
  }
  async function remove(file: string) {
    try {
      await (await folderOf()).removeEntry(file)
    } catch {
      // there was none
    }
  }
  const lay = () => (laying = laying.then(layNow))

  return {
    lay,
    layLater() {
      clearTimeout(waiting)
      waiting = setTimeout(() => void lay(), LATER)
    },
    async drop() {
      clearTimeout(waiting)
      await laying
      await remove(name)
    },
    async hasRoom(bytes) {
      const trial = `${book}.${crypto.randomUUID()}.room` // of this try alone: another tab may be trying as well
      try {
        const folder = await folderOf()
        await fill(await folder.getFileHandle(trial, { create: true }), bytes)
        return true
      } catch {
        return false
      } finally {
        await remove(trial)
      }
    },
  }
}

async function fill(handle: FileSystemFileHandle, size: number): Promise<void> {
  const file = await handle.createWritable()
  const block = new Uint8Array(BLOCK) // random: nothing that a file system could fold away
  for (let at = 0; at < BLOCK; at += DICE) crypto.getRandomValues(block.subarray(at, at + DICE))
  for (let written = 0; written < size; written += BLOCK) await file.write(block)
  await file.close()
}
