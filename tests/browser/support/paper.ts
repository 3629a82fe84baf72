/** What is on a printed sheet: its size, where each word stands on it, and what a scanner reads off it. */
import { execFile } from 'node:child_process'
import { mkdir, readFile, readdir, rm } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { expect, type Page } from '@playwright/test'
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader'

const run = promisify(execFile)
const POINT = 25.4 / 72 // mm

export interface PaperSheet {
  readonly widthMm: number
  readonly heightMm: number
  readonly text: string
  /** Words that reach over the edge of the paper. */
  readonly over: readonly string[]
  readonly picture: Raster
}

/** A sheet as dots, row by row; 0 is black, 255 the bare paper. */
export interface Raster {
  readonly wide: number
  readonly high: number
  readonly dots: Uint8Array
}

/** Prints the page as the browser's dialogue would, at the size that its own rules name. */
export async function paper(page: Page, name: string, dpi = 80): Promise<readonly PaperSheet[]> {
  const folder = join('test-results/prints', name)
  await rm(folder, { recursive: true, force: true })
  await mkdir(folder, { recursive: true })
  const pdf = join(folder, `${name}.pdf`)
  await page.pdf({ path: pdf, preferCSSPageSize: true, printBackground: false })
  await run('pdftoppm', ['-r', `${dpi}`, '-gray', pdf, join(folder, 'sheet')])
  const names = (await readdir(folder)).filter((file) => file.endsWith('.pgm')).sort()
  const pictures = await Promise.all(names.map(async (file) => rasterOf(await readFile(join(folder, file)))))
  const { stdout } = await run('pdftotext', ['-bbox', pdf, '-'], { maxBuffer: 2 ** 26 })
  return stdout
    .split('<page ')
    .slice(1)
    .map((page, at) => {
      const [, width, height] = /width="([\d.]+)" height="([\d.]+)"/.exec(page)!
      const [w, h] = [Number(width), Number(height)]
      const words = [
        ...page.matchAll(/<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)<\/word>/g),
      ]
      return {
        widthMm: w * POINT,
        heightMm: h * POINT,
        text: words.map(([, , , , , word]) => word).join(' '),
        over: words
          .filter(([, l, t, r, b]) => Number(l) < 0 || Number(t) < 0 || Number(r) > w || Number(b) > h)
          .map(([, , , , , word]) => word!),
        picture: pictures[at]!,
      }
    })
}

/** Portable graymap: `P5`, width, height, the lightest value, then a byte a dot. */
function rasterOf(file: Buffer): Raster {
  const [head, wide, high] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(file.toString('latin1', 0, 60))!
  return { wide: Number(wide), high: Number(high), dots: new Uint8Array(file.subarray(head.length)) }
}

/** Ink within `mm` of an edge of the paper, where a printer may not reach. */
function inkAtEdge({ wide, high, dots }: Raster, widthMm: number, mm: number): number {
  const rim = Math.floor((mm * wide) / widthMm)
  let ink = 0
  for (let y = 0; y < high; y += 1)
    for (let x = 0; x < wide; x += 1) {
      const isRim = x < rim || y < rim || x >= wide - rim || y >= high - rim
      if (isRim && dots[y * wide + x]! < 160) ink += 1
    }
  return ink
}

/** What is cut off in print: texts and pictures that reach out of the sheet, or of the label, that they stand on. */
export async function clipped(page: Page): Promise<readonly string[]> {
  await page.emulateMedia({ media: 'print' })
  const found = await page.evaluate(() => {
    const HAIR = 0.5 // px
    const boxes = [...document.querySelectorAll('main section, main section [data-part=label]')]
    return boxes.flatMap((box) => {
      // On a sheet, what stands above the title block keeps the margins, empty cells as well.
      const content = box.querySelector(':scope > footer')?.previousElementSibling ?? box
      const inside = [...box.querySelectorAll('*')].filter(
        (each) =>
          each.matches('img,svg,td,th') || [...each.childNodes].some((n) => n.nodeType === 3 && n.textContent?.trim()),
      )
      return inside.flatMap((each) => {
        const range = document.createRange()
        range.selectNodeContents(each)
        const seen = each.matches('img,svg,td,th') ? each.getBoundingClientRect() : range.getBoundingClientRect()
        const edge = (content.contains(each) ? content : box).getBoundingClientRect()
        const out =
          seen.left < edge.left - HAIR ||
          seen.top < box.getBoundingClientRect().top - HAIR || // a big letter's line begins above its text
          seen.right > edge.right + HAIR ||
          seen.bottom > edge.bottom + HAIR
        return out && seen.width > 1 && !each.matches('.unseen')
          ? [`“${(each.textContent ?? '').slice(0, 60)}” in ${box.getAttribute('aria-label') ?? 'a label'}`]
          : []
      })
    })
  })
  await page.emulateMedia({ media: null })
  return found
}

/** Places to write in that are lower than a hand needs, in mm of height. */
export const tooLow = (page: Page, needMm = 8): Promise<readonly string[]> =>
  page.evaluate((need) => {
    const MM = 96 / 25.4 // px
    return [...document.querySelectorAll('main section td:empty, main section i:empty')].flatMap((each) => {
      const high = each.getBoundingClientRect().height / MM
      return high > need - 0.1 ? [] : [`${(each.closest('tr') ?? each.parentElement)?.textContent ?? ''}: ${high} mm`]
    })
  }, needMm)

let ready = false
/** Every code that a scanner reads off a sheet. */
export async function codesOn({ wide, high, dots }: Raster): Promise<readonly string[]> {
  if (!ready) {
    const wasm = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm')
    const binary = await readFile(wasm)
    prepareZXingModule({
      overrides: { wasmBinary: binary.buffer.slice(binary.byteOffset, binary.byteOffset + binary.byteLength) },
    })
    ready = true
  }
  const data = new Uint8ClampedArray(wide * high * 4)
  dots.forEach((dot, at) => data.fill(dot, at * 4, at * 4 + 3).fill(255, at * 4 + 3, at * 4 + 4))
  const picture = { data, width: wide, height: high, colorSpace: 'srgb' } as ImageData
  const read = await readBarcodes(picture, { formats: ['QRCode'], maxNumberOfSymbols: 60 })
  return read.map(({ text }) => text)
}

const RIM_MM = 3 // what an office printer leaves white; labels have their own

/** A print is so many sheets of one size, with ink on each, nothing over its edge and nothing cut off. */
export async function expectWhole(
  page: Page,
  name: string,
  size: readonly [widthMm: number, heightMm: number],
  { dpi, rimMm = RIM_MM }: { dpi?: number; rimMm?: number } = {},
): Promise<readonly PaperSheet[]> {
  expect(await clipped(page), `${name}: cut off`).toEqual([])
  const sheets = await paper(page, name, dpi)
  const wanted = await page.locator(':is(main, main > div) > section[aria-label]').count()
  expect(sheets, `${name}: sheets`).toHaveLength(wanted)
  for (const sheet of sheets) {
    expect([Math.round(sheet.widthMm), Math.round(sheet.heightMm)], name).toEqual(size.map(Math.round))
    expect(sheet.over, `${name}: over the edge`).toEqual([])
    expect(
      sheet.picture.dots.some((dot) => dot < 64),
      `${name}: ink`,
    ).toBe(true)
    if (rimMm > 0) expect(inkAtEdge(sheet.picture, sheet.widthMm, rimMm), `${name}: ink at the edge`).toBe(0)
  }
  return sheets
}
