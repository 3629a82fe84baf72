/** A lot that is used up, with another of its part in stock: what still names it, and what offers it no more. */
import { digitsOutsideMarks } from './support/digits-outside-marks'
import { describe, expect, it } from './support/fixtures'
import { addFromShelf, jobOf } from './support/plan-arrow'

describe('a lot counted to nothing', () => {
  it('stays on the sheet that names it, is offered to no other line, and is on its part’s page', async ({ page }) => {
    await page.goto('./')
    await page.getByRole('button', { name: 'Look around the demo shop' }).click()
    await page.getByRole('button', { name: 'New call' }).first().click()
    await page.waitForURL(/#\/job\/[^/]+/)
    const sheet = `./#/job/${jobOf(page)}/sheet`
    await page.goto(sheet)
    await addFromShelf(page, 'Feathers', 'Feather 4')
    const line = page.getByRole('button', { name: 'Change Feather 4' })
    await line.click()
    await expect(page.getByRole('dialog').getByRole('radio').first()).toBeChecked()
    const code = (await page.getByRole('dialog').locator('label').first().textContent()) ?? ''
    await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click()

    await page.getByRole('link', { name: 'Parts' }).click()
    await page.getByRole('link', { name: 'Feather 4', exact: true }).click()
    await page.getByLabel('Lot code').fill('SECOND')
    await page.getByLabel('Pieces', { exact: true }).fill('24')
    await page.getByRole('button', { name: 'Receive', exact: true }).click()
    await expect(page.getByRole('heading', { name: 'Lot SECOND' })).toBeVisible()
    const part = page.url()
    const old = page.locator('section').filter({ has: page.getByRole('heading', { name: `Lot ${code}` }) })
    await old.getByText('Count it').click()
    await old.getByLabel('Pieces counted').fill('0')
    await old.getByRole('button', { name: 'Keep the count' }).click()
    await expect(old.getByText('The difference of')).toBeVisible()

    await page.goto(sheet)
    await page.reload()
    await line.click()
    await expect(page.getByRole('dialog').getByText(`${code}, used up`)).toBeVisible()
    expect(await digitsOutsideMarks(page)).toEqual([])
    await page.getByRole('dialog').getByRole('radio', { name: 'SECOND' }).check()
    await expect(page.getByRole('dialog').getByText('used up')).toHaveCount(0)

    await page.goto(part)
    await page.reload()
    await expect(page.getByRole('heading', { name: `Lot ${code}` })).toBeVisible()
    await expect(page.getByRole('heading', { name: 'Lot SECOND' })).toBeVisible()
    expect(await digitsOutsideMarks(page)).toEqual([])
  })
})
