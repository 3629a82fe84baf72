/** Prints a page as the browser's print dialogue would, and turns each sheet into a picture. */
import { execFile } from 'node:child_process'
import { mkdir, readdir, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { promisify } from 'node:util'
import type { Page } from '@playwright/test'

const run = promisify(execFile)

export interface Printed {
  /** Text of each sheet, as a reader would copy it. */
  readonly texts: readonly string[]
  /** PNG of each sheet, at test-results/prints. */
  readonly pictures: readonly string[]
}

/** @param paper the paper to fall back on where the page's own @page rule names none */
export async function printPdf(page: Page, name: string, paper: 'A4' | 'Letter' = 'A4'): Promise<Printed> {
  const folder = join('test-results/prints', name)
  await rm(folder, { recursive: true, force: true })
  await mkdir(folder, { recursive: true })
  const pdf = join(folder, `${name}.pdf`)
  await page.pdf({ path: pdf, format: paper, preferCSSPageSize: true, printBackground: false })
  await run('pdftoppm', ['-r', '80', '-png', pdf, join(folder, 'sheet')])
  const { stdout } = await run('pdftotext', ['-layout', pdf, '-'])
  const pictures = (await readdir(folder)).filter((file) => file.endsWith('.png')).sort()
  return {
    texts: stdout.split('\f').slice(0, pictures.length),
    pictures: pictures.map((file) => join(folder, file)),
  }
}
