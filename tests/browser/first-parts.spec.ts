/** The first parts of a new shop: typed in without losing them, found again and mended, and the way about the Shop. */
import type { Page } from '@playwright/test'
import { describe, expect, it } from './support/fixtures'
import { jobOf, typeIn } from './support/plan-arrow'
import { newCall, openShop } from './support/take-call'

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true })

describe('a part typed in on the sheet', () => {
  it('has its button in sight, outlives a tap beside it, shows what is missing, and is mended from its line', async ({
    page,
  }) => {
    await page.setViewportSize({ width: 834, height: 800 })
    await openShop(page)
    await newCall(page)
    await page.goto(`./#/job/${jobOf(page)}/sheet`)
    await button(page, 'Flight').click()
    await expect(page.getByText('Needs a shaft on the sheet first.')).toBeVisible()
    await button(page, 'Add a part').click()
    const dialog = page.getByRole('dialog')
    await dialog.getByRole('button', { name: 'Insert', exact: true }).click()
    await dialog.getByRole('button', { name: 'Type one in' }).click()
    await dialog.getByLabel('Name').fill('Own post')
    await expect(dialog.getByRole('button', { name: 'Keep and add' })).toBeInViewport()
    await page.mouse.click(5, 795)
    await expect(dialog.getByLabel('Name')).toHaveValue('Own post')
    await dialog.getByRole('button', { name: 'Keep and add' }).click()
    await expect(dialog.getByText(/Catalogue weight, each: nothing entered yet/)).toBeInViewport()
    await dialog.getByRole('button', { name: 'Cancel' }).click()
    await expect(dialog).toBeHidden()

    await typeIn(page, 'Nock', 'Own nock', { 'Catalogue weight, each': '11', 'Throat to shaft end': '0.55' })
    await button(page, 'Change Own nock').click()
    await dialog.getByRole('link', { name: 'Its catalogue figures and lots' }).click()
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Own nock')
    await page.getByLabel('Catalogue weight, each').fill('12')
    await button(page, 'Keep as a new version').click()
    await expect(page.getByText(/^A change needs its reason/)).toBeVisible()
    await page.getByLabel('Why they change').fill('typed wrong')
    await button(page, 'Keep as a new version').click()
    await expect(page.getByText('Kept. Sheets already frozen keep the old figures.')).toBeVisible()
    await expect(page.getByLabel('Catalogue weight, each')).toHaveValue('12')
  })
})

describe('the Shop', () => {
  it('has each of its subjects one tap away', async ({ page }) => {
    await openShop(page)
    await page.goto('./#/shop')
    await expect(page.getByRole('heading', { name: 'Forget a client' })).toBeAttached()
    const jumps = page.getByRole('navigation', { name: 'On this page' }).getByRole('button')
    const titles = await page.locator('main h2').allTextContents()
    expect(await jumps.allTextContents()).toEqual(titles)
    await jumps.filter({ hasText: /^Scales$/ }).click()
    await expect(page.getByRole('heading', { name: 'Scales' })).toBeFocused()
    await expect(page.getByRole('heading', { name: 'Scales' })).toBeInViewport()
    await button(page, 'Close my shop').click()
    await expect(button(page, 'Open my shop')).toBeVisible()
  })
})
