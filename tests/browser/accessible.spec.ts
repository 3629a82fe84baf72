/** Every page read by axe in light; again in dark and forced colours, at 320 px and at 400 % for what these can change. */
import type { Page } from '@playwright/test'
import { expectAccessible, RULES_OF } from './support/accessible'
import { describe, expect } from './support/fixtures'
import { hiddenFocus } from './support/hidden-focus'
import { it } from './support/sent-book'

const WIDE = { width: 1440, height: 900 }
const ZOOMED = { width: 320, height: 256 } // 1280 × 1024 at 400 %: WCAG 2.2, 1.4.10
const NARROW = { width: 320, height: 720 }

/** Nothing is to be scrolled sideways, except what is laid out in two dimensions: tables and papers scroll by themselves. */
const sideways = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

async function readEveryWay(page: Page, what: string): Promise<void> {
  // Colours change at once, as nothing moves.
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await expectAccessible(page, what)
  await page.emulateMedia({ colorScheme: 'dark' })
  await expectAccessible(page, `${what}, dark`, RULES_OF.colours)
  await page.emulateMedia({ colorScheme: null, forcedColors: 'active' })
  await expectAccessible(page, `${what}, forced colours`, RULES_OF.colours)
  await page.emulateMedia({ forcedColors: null })
  for (const size of [NARROW, ZOOMED]) {
    await page.setViewportSize(size)
    const how = `${what}, ${size.width} × ${size.height}`
    if (size === NARROW) await expectAccessible(page, how, RULES_OF.room)
    expect(await sideways(page), `${how}: px to scroll sideways`).toBe(0)
    if (size === ZOOMED) expect(await hiddenFocus(page), `${how}: out of sight with the focus on it`).toEqual([])
  }
  await page.setViewportSize(WIDE)
}

describe('every page, in every light and at every size', () => {
  it('is read by axe without a violation, and needs no scrolling sideways', async ({ page, book }) => {
    const { job, asBuilt, partCalled } = book.order
    const at = `job/${job.id}`
    const PAGES = [
      'jobs',
      at,
      `${at}/call`,
      `${at}/call/bow`,
      `${at}/sheet`,
      `${at}/bench`,
      `${at}/bench/inspect/1`,
      `${at}/send`,
      `${at}/kit`,
      'book',
      `book/${asBuilt}`,
      `book/${asBuilt}/again`,
      'parts',
      `parts/shaft/${partCalled('Heron 200').id}`,
      'shop',
      'help/bench',
      `print/certificate/${job.id}`,
      `print/labels/${job.id}`,
      'nowhere',
    ]
    for (const each of PAGES) {
      await page.goto(`./#/${each}`)
      await expect(page.locator('h1:visible, main section[aria-label]:visible').first(), each).toBeVisible()
      await readEveryWay(page, each)
    }
  })

  it('and a dialog at 400 % is read from its top, all of it in reach', async ({ page, book }) => {
    await page.setViewportSize(ZOOMED)
    await page.goto(`./#/job/${book.order.job.id}/send`)
    await page.getByRole('button', { name: 'Repair no. 2' }).click()
    const dialog = page.getByRole('dialog')
    await expect(dialog.getByRole('heading')).toBeInViewport({ ratio: 1 })
    expect(await hiddenFocus(page), 'out of sight with the focus on it').toEqual([])
    expect(await dialog.evaluate((box) => box.scrollWidth - box.clientWidth), 'px to scroll sideways').toBe(0)
    await page.setViewportSize(WIDE)
  })

  it('is so before any book is open', async ({ browser, address }) => {
    const page = await browser.newPage({ baseURL: address, viewport: WIDE })
    await page.goto('./')
    await expect(page.getByRole('button', { name: 'Open my shop' })).toBeVisible()
    await readEveryWay(page, 'the start')
    await page.close()
  })
})
