/** Slips of the first call, by somebody who never saw the page: what was typed counts, and each topic begins at its top. */
import type { Page } from '@playwright/test'
import { describe, expect, it } from './support/fixtures'
import { goTo, isSaved, newCall, openShop } from './support/take-call'

it.beforeEach(async ({ page }) => {
  await page.clock.install({ time: new Date('2026-11-23T10:00:00Z') })
})

const scrolled = (page: Page) => page.evaluate(() => document.documentElement.scrollTop)

describe('the next topic', () => {
  for (const [where, viewport] of [
    ['a phone', { width: 360, height: 740 }],
    ['a desk', { width: 1280, height: 800 }],
  ] as const)
    it(`begins at its top on ${where}`, async ({ page }) => {
      await page.setViewportSize(viewport)
      await openShop(page)
      const job = await newCall(page)
      await goTo(page, job, 'bow')
      await page.getByRole('link', { name: 'Next: Shooting now' }).scrollIntoViewIfNeeded()
      expect(await scrolled(page)).toBeGreaterThan(500)
      await page.getByRole('link', { name: 'Next: Shooting now' }).click()
      await expect(page.getByRole('heading', { name: 'Shooting now' })).toBeInViewport()
      await expect.poll(() => scrolled(page)).toBe(0)
    })
})

describe('who is calling', () => {
  it('is kept when the name was typed and the builder went on without Enter', async ({ page }) => {
    await openShop(page)
    await newCall(page)
    await page.locator('input[name=clientSearch]').fill('Tom Reeder')
    await page.locator('input[name=quarry]').fill('elk')
    await page.getByRole('link', { name: 'Next: Bow' }).click()
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Tom Reeder · elk')
    await isSaved(page)
    await page.reload()
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Tom Reeder · elk')
    await page.getByRole('link', { name: 'Jobs', exact: true }).click()
    await newCall(page)
    await page.locator('input[name=clientSearch]').fill('Ann Field')
    await page.getByRole('link', { name: 'Jobs', exact: true }).click()
    await expect(page.getByRole('link', { name: 'Ann Field' })).toBeVisible()
  })

  it('is not guessed where the beginning of a name fits somebody known', async ({ page }) => {
    await openShop(page)
    await newCall(page)
    await page.locator('input[name=clientSearch]').fill('Tom Reeder')
    await page.getByRole('button', { name: 'New client: Tom Reeder' }).click()
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Tom Reeder')
    await page.getByRole('link', { name: 'Jobs', exact: true }).click()
    await newCall(page)
    await page.locator('input[name=clientSearch]').fill('Tom')
    await page.getByRole('link', { name: 'Next: Bow' }).click()
    await expect(page.getByRole('heading', { name: 'Bow', exact: true })).toBeVisible()
    await expect(page.getByRole('heading', { level: 1 })).toContainText('new call')
  })
})

describe('a quarry the shop has no weights for', () => {
  it('is answered as such, and never as missing', async ({ page }) => {
    await openShop(page)
    await newCall(page)
    await page.locator('input[name=quarry]').fill('kudu')
    await expect(page.getByText(/^the shop has no weights for “kudu”: add them in Shop/)).toBeVisible()
    await expect(page.getByText(/needs quarry/)).toHaveCount(0)
    await page.locator('input[name=quarry]').fill('cape buffalo')
    await expect(page.locator('[data-figure="call.weight.low"]')).toHaveText('850')
  })
})

describe('an entry that was refused', () => {
  it('stands in its field again after another topic, and the read-back says that it is not kept', async ({ page }) => {
    await openShop(page)
    await newCall(page)
    const travel = page.locator('input[name=travelOn]')
    await travel.fill('end of March')
    await travel.press('Tab')
    await page.getByRole('link', { name: 'Next: Bow' }).click()
    const peak = page.locator('input[name=peakDrawWeightLb]')
    await peak.fill('700')
    await peak.press('Tab')
    await page.getByRole('link', { name: 'Read back', exact: true }).click()
    await expect(page.getByText('Travels on: “end of March” was not understood and is not kept.')).toBeVisible()
    await expect(page.getByText('Peak draw weight: “700” was not understood and is not kept.')).toBeVisible()
    await page.getByRole('link', { name: 'Put it right' }).first().click()
    await expect(travel).toHaveValue('end of March')
    await expect(page.getByText(/“end of March” is not a day/)).toBeVisible()
    await travel.fill('28 March')
    await travel.press('Enter')
    await page.getByRole('link', { name: /^Bow/ }).click()
    await expect(peak).toHaveValue('700')
    await peak.fill('')
    await peak.press('Tab')
    await page.getByRole('link', { name: 'Read back', exact: true }).click()
    await expect(page.getByText('You travel on Sunday 28 March 2027.', { exact: true })).toBeVisible()
    await expect(page.getByText(/was not understood/)).toHaveCount(0)
  })
})

describe('a press on Next', () => {
  it('counts though it leaves a field whose error moves the page, and the entry stands there still', async ({
    page,
  }) => {
    await openShop(page)
    await newCall(page)
    const travel = page.locator('input[name=travelOn]')
    await travel.fill('end of March')
    const next = page.getByRole('link', { name: 'Next: Bow' })
    await next.scrollIntoViewIfNeeded()
    const before = (await next.boundingBox())!
    await page.mouse.move(before.x + before.width / 2, before.y + 4)
    await page.mouse.down()
    await page.waitForTimeout(150) // as long as a finger takes, and a line of error to appear
    await page.mouse.up()
    await expect(page.getByRole('heading', { name: 'Bow', exact: true })).toBeVisible()
    await page.getByRole('link', { name: 'Read back', exact: true }).click()
    await expect(page.getByText('Travels on: “end of March” was not understood and is not kept.')).toBeVisible()
  })
})

describe('a number half typed', () => {
  it('is kept at once when the page is put away, without waiting for the pause after it', async ({ page }) => {
    await openShop(page)
    const job = await newCall(page)
    await goTo(page, job, 'bow')
    await page.clock.pauseAt(new Date('2026-11-23T11:00:00Z'))
    const peak = page.locator('input[name=peakDrawWeightLb]')
    await peak.fill('71')
    await page.evaluate(() => {
      Object.defineProperty(document, 'hidden', { value: true, configurable: true })
      document.dispatchEvent(new Event('visibilitychange'))
    })
    await expect(page.getByText('Saved on this device 11:00')).toBeVisible()
    await page.clock.resume()
    await page.reload()
    await expect(peak).toHaveValue('71')
  })
})

describe('a paper on a phone', () => {
  it('has its buttons in sight, though the sheet is wider, and does not say of a new call that all is measured', async ({
    page,
  }) => {
    await page.setViewportSize({ width: 360, height: 740 })
    await openShop(page)
    const job = await newCall(page)
    await page.goto(`./#/print/measuring/${job}`)
    await expect(page.getByText(/^Nothing was left to be measured/)).toBeVisible()
    const { x, width } = (await page.getByRole('button', { name: 'Back' }).boundingBox())!
    expect(x + width).toBeLessThan(360)
    await expect(page.getByRole('link', { name: 'Name the shop' })).toBeInViewport()
  })
})
