/**
 * Ballast: a file of this origin that holds nothing. On a full disk the browser cannot even open the database again without
 * losing it, so before a rescue the file is dropped and there is room to work in. It is laid down anew afterwards.
 */
export interface Ballast {
  lay(): Promise<void>
  drop(): Promise<void>
}

/** Milliseconds after a start or a rescue, when the first page is drawn and the browser has written out what it was given. */
export const LAY_BALLAST_AFTER = 3000

const SIZE = 16 * 1024 * 1024 // bytes: opening and refilling a database of some ten megabytes took less
const BLOCK = 2 * 1024 * 1024 // bytes written at once
const DICE = 65_536 // bytes; the most random ones a browser gives at once

/** Where the browser keeps no files for a page, there is none, and a rescue asks for freed space first. */
export const ballast = (book: string): Ballast => ({
  async lay() {
    try {
      const folder = await navigator.storage.getDirectory()
      const handle = await folder.getFileHandle(`${book}.ballast`, { create: true })
      if ((await handle.getFile()).size >= SIZE) return
      const file = await handle.createWritable()
      const block = new Uint8Array(BLOCK) // random: nothing that a file system could fold away
      for (let at = 0; at < BLOCK; at += DICE) crypto.getRandomValues(block.subarray(at, at + DICE))
      for (let written = 0; written < SIZE; written += BLOCK) await file.write(block)
      await file.close()
    } catch {
      // withheld, or no room even for this
    }
  },
  async drop() {
    try {
      const folder = await navigator.storage.getDirectory()
      await folder.removeEntry(`${book}.ballast`)
    } catch {
      // there was none
    }
  },
})
