/** The shelf at the size of a shop that buys by catalogue, and a lot weighed through a tray. */
import type { Page } from '@playwright/test'
import { draftSheet } from '@/domain/sheet/draft-sheet'
import { loadShelf } from '@/state/load-shelf'
import { openJob } from '@/state/open-job'
import { wrongFigures } from './support/check-figures'
import { digitsOutsideMarks } from './support/digits-outside-marks'
import { sheetPageFigures } from './support/expected-figures'
import { describe, expect, it } from './support/fixtures'
import { addFromShelf, jobOf, setField } from './support/plan-arrow'
import { restoredBook } from './support/restored-book'

const ROWS = 5000
const WEIGHED = 50
/** An arrow of the demo shop with feathers, whose lot is weighed. */
const LINES = [
  ['Shaft', 'Heron 200'],
  ['Nock', 'Clip 11'],
  ['Insert', 'Long post 158'],
  ['Head', 'Two-blade 250'],
  ['Feathers', 'Feather 4'],
] as const
const PATIENT = { timeout: 120_000 } // a busy machine

/** A table as a spreadsheet of another country saves it, with what people do to tables. */
function messyTable(): { readonly text: string; readonly wrong: number } {
  const lines = ['Kind;Part;Weight (g);Tolerance;Length, mm;Height;Price;Qty;Lot']
  let wrong = 0
  for (let i = 0; i < ROWS; i++) {
    const [isUnknown, isWordy, isTwice] = [i % 401 === 3, i % 503 === 7, i % 997 === 5]
    if (isUnknown || isWordy || isTwice) wrong += 1
    const own = i % 11 === 0 ? `"Vane, long ""${i}"""` : `Vane ${i}`
    const name = isTwice ? 'Vane 1' : own
    const weight = isWordy ? 'heavy' : (0.4 + (i % 50) / 500).toFixed(3).replace('.', ',')
    const height = i % 7 === 0 ? '14 mm' : '0.55'
    lines.push([isUnknown ? 'winglet' : 'vane', name, weight, '0,2', 66, height, '0,90', 100, `V-${i}`].join(';'))
  }
  return { text: `\uFEFF${lines.join('\r\n')}\r\n`, wrong }
}

async function openEmptyShop(page: Page) {
  await page.goto('./')
  await page.getByRole('button', { name: 'Open my shop' }).click()
  await page.getByRole('link', { name: 'Parts' }).click()
  await expect(page.getByText('The shelf is empty')).toBeVisible()
}

async function bringIn(page: Page, text: string) {
  await page.getByRole('button', { name: 'Tables in and out' }).click()
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'parts.csv', mimeType: 'text/csv', buffer: Buffer.from(text) })
  await page.getByRole('button', { name: 'Read the lines' }).click()
}

describe('parts', () => {
  it('come in as a messy table of five thousand lines, all at once, and are found at a word', async ({ page }) => {
    const { text, wrong } = messyTable()
    await openEmptyShop(page)
    await bringIn(page, text)
    await expect(page.getByText(`${ROWS - wrong} parts to add; ${wrong} lines with a problem.`)).toBeVisible(PATIENT)
    await expect(page.getByRole('list', { name: 'Lines with a problem' }).getByRole('listitem')).toHaveCount(wrong)
    await expect(page.getByText('Line 5, Vane 3: Kind: “winglet” is none of')).toBeVisible()
    expect(await digitsOutsideMarks(page)).toEqual([])
    await page.getByRole('button', { name: `Add ${ROWS - wrong}, leave the rest out` }).click()
    await expect(page.locator('progress')).toBeVisible()
    // What is under way is not started twice: its place is taken by how far it is.
    await expect(page.getByRole('button', { name: /^Add \d/ })).toHaveCount(0)
    await expect(page.getByText(/^Writing: part \d+ of/)).toBeVisible(PATIENT)
    await expect(page.getByText(`${ROWS - wrong} parts are on the shelf.`)).toBeVisible(PATIENT)
    await page.getByRole('button', { name: 'Close', exact: true }).click()
    await page.getByLabel('Find a part').fill('vane 4991')
    await expect(page.getByRole('link', { name: 'Vane 4991' })).toBeVisible(PATIENT)
    await expect(page.getByRole('row')).toHaveCount(2)
  })

  it('are weighed through a tray of fifty, one action each; the forecast narrows at once, to the core’s own figure; on hold they are offered no more', async ({
    page,
  }) => {
    await page.goto('./')
    await page.getByRole('button', { name: 'Look around the demo shop' }).click()
    await page.getByRole('button', { name: 'New call' }).first().click()
    await page.waitForURL(/#\/job\/[^/]+/)
    const job = jobOf(page)
    await page.goto(`./#/job/${job}/sheet`)
    for (const [kind, name] of LINES) await addFromShelf(page, kind, name)
    await setField(page, 'C2C', '28')
    await setField(page, 'Finished weight', '760')
    const band = page.locator('[data-figure="sheet.forecast.band"]').first()
    const half = async () => Number(await band.getAttribute('data-value'))
    const before = await half()

    await page.getByRole('link', { name: 'Parts' }).click()
    await page.getByRole('link', { name: 'Feather 4', exact: true }).click()
    await page.getByText('Weigh some of it').click()
    const weight = page.getByLabel('Weight of one')
    for (let i = 0; i < WEIGHED; i++) {
      await weight.fill((2.8 + (i % 3) / 10).toFixed(1))
      await weight.press('Enter')
    }
    await expect(page.getByText(`${WEIGHED} taken in this sitting`)).toBeVisible(PATIENT)
    await weight.fill('4.9')
    await weight.press('Enter')
    await expect(page.getByText('further off than the others are')).toBeVisible()
    expect(await digitsOutsideMarks(page)).toEqual([])

    await page.goto(`./#/job/${job}/sheet`)
    await expect(band).toBeVisible()
    expect(await half()).toBeLessThan(before)
    const repository = await restoredBook(page)
    const [open, shelf] = [await openJob(repository, job), await loadShelf(repository)]
    const sheet = draftSheet(open!.job, shelf, null)
    await expect(band).toBeVisible()
    expect(await wrongFigures(page, sheetPageFigures(sheet))).toEqual([])

    await page.getByRole('link', { name: 'Parts' }).click()
    await page.getByRole('link', { name: 'Feather 4', exact: true }).click()
    await page.getByText('Put it on hold').click()
    await page.getByRole('button', { name: 'Put on hold' }).click()
    await expect(page.getByText('A hold needs its reason')).toBeVisible()
    await page.getByLabel('Reason to hold it').fill('quills split')
    await page.getByRole('button', { name: 'Put on hold' }).click()
    await expect(page.getByText('On hold: quills split.')).toBeVisible()
    await page.goto(`./#/job/${job}/sheet`)
    await page.getByRole('button', { name: 'Add a part' }).click()
    const dialog = page.getByRole('dialog')
    await dialog.getByRole('button', { name: 'Feathers', exact: true }).click()
    await expect(dialog.getByRole('button', { name: 'Feather 4, lot unknown' })).toBeVisible()
    await expect(dialog.getByRole('button', { name: /^Feather 4, lot [^u]/ })).toHaveCount(0)
  })
})
