import type { Page } from '@playwright/test'
import { digitsOutsideMarks } from './support/digits-outside-marks'
import { describe, expect, it } from './support/fixtures'
import { jobOf, setField, typeIn } from './support/plan-arrow'

async function newJob(page: Page): Promise<void> {
  await page.getByRole('button', { name: /call/i }).first().click()
  await page.waitForURL(/#\/job\/.+/)
}

describe('a plan from the empty shop', () => {
  it('is made of parts typed in, refuses what is impossible in words, and is frozen at 1,100 gr', async ({ page }) => {
    await page.goto('./')
    await page.getByRole('button', { name: 'Open my shop' }).click()
    await newJob(page)
    const job = jobOf(page)
    await page.goto(`./#/job/${job}/call/bow`)
    await setField(page, 'Peak draw weight', '80')
    await page.goto(`./#/job/${job}/sheet`)
    await typeIn(page, 'Shaft', 'Own 175', {
      'Weight per inch': '17',
      'Static spine': '130',
      'Outer diameter': '7.2 mm',
      'Inner diameter': '5,28',
      'Raw length': '32',
    })
    await typeIn(page, 'Nock', 'Own nock', { 'Catalogue weight, each': '11', 'Throat to shaft end': '0.55' })
    await typeIn(page, 'Insert', 'Own post', {
      'Catalogue weight, each': '210',
      'Post diameter': '5.2',
      'Post length': '2.95',
      'Shoulder diameter': '7.2',
    })
    await typeIn(page, 'Head', 'Own head', { 'Catalogue weight, each': '420', Length: '2.6', 'Cutting width': '1.25' })
    await setField(page, 'C2C', '28')
    await setField(page, 'Finished weight', '1100')
    await expect(page.locator('[data-figure="sheet.finished"]')).toHaveAttribute('data-unit', 'gr')

    // Below the sum of what can be reached: said, and not frozen.
    await setField(page, 'Finished weight', '1300')
    await page.getByRole('button', { name: 'Freeze version 1' }).click()
    await expect(page.getByRole('status').filter({ hasText: 'Not frozen' })).toContainText('grains come off, not on')
    // More to trim than the post can give.
    await setField(page, 'Finished weight', '700')
    await expect(page.getByText(/the post can give/).first()).toBeVisible()
    // Under five grains per pound.
    await setField(page, 'Finished weight', '390')
    await expect(page.getByText(/can be hurt/).first()).toBeVisible()
    expect(await digitsOutsideMarks(page)).toEqual([])
    await setField(page, 'Finished weight', '1100')
    await page.getByRole('button', { name: 'Freeze version 1' }).click()
    await expect(page.getByText('Frozen as version 1.')).toBeVisible()
  })
})
