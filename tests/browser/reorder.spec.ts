import type { Page } from '@playwright/test'
import { expectAccessible } from './support/accessible'
import { digitsOutsideMarks } from './support/digits-outside-marks'
import { describe, expect, it } from './support/fixtures'
import { problemsOf } from './support/problems'

const MOST_ACTIONS = 12 // from opening the app to the frozen rebuild
const PATIENT = { timeout: 120_000 } // a busy machine fills the demo shop, and searches its shelf, more slowly
const NOW = '2029-03-02T09:00:00Z'

/** The demo shop: one of its orders left three years ago. */
async function demoShop(page: Page): Promise<void> {
  await page.clock.setSystemTime(new Date(NOW))
  await page.goto('./')
  await page.getByRole('button', { name: 'Look around the demo shop' }).click()
  await expect(page.getByRole('heading', { name: 'Jobs' })).toBeVisible(PATIENT)
}

/** Does what a person does, and counts it: a click, or a text typed into a field. */
function counting(page: Page) {
  let actions = 0
  return {
    actions: () => actions,
    open: async () => {
      actions += 1
      await page.goto('./')
    },
    click: async (role: 'link' | 'button' | 'radio', name: string | RegExp) => {
      actions += 1
      await page.getByRole(role, { name }).first().click()
    },
    type: async (label: string | RegExp, text: string) => {
      actions += 1
      await page.getByLabel(label).fill(text)
    },
  }
}

describe.configure({ mode: 'default' })

describe('the reorder, three years later', () => {
  let shop: Page
  let seen: ReturnType<typeof problemsOf>
  it.beforeAll(async ({ browser, address }) => {
    shop = await browser.newPage({ baseURL: address, locale: 'en-US', timezoneId: 'UTC' })
    seen = problemsOf(shop)
    await demoShop(shop)
  })
  it.afterAll(async () => {
    await shop.close()
    expect(seen.problems, 'errors and warnings on the page').toEqual([])
  })

  it('comes to a frozen rebuild within twelve actions, a part gone and the head changed', async () => {
    const page = shop
    await page.getByRole('link', { name: 'Parts' }).click()
    await page.getByRole('link', { name: 'Clip 11' }).click()
    await page.getByRole('button', { name: 'No longer made' }).click()
    await expect(page.getByText('It is no longer made.')).toBeVisible()
    await page.getByText('Count it').click()
    await page.getByLabel('Pieces counted').fill('0')
    await page.getByRole('button', { name: 'Keep the count' }).click()
    await expect(page.getByText(/^0 pieces; the book had .* is on record/)).toBeVisible()

    const hand = counting(page)
    await hand.open()
    await hand.click('link', 'Book')
    await hand.type(/^Find by/, 'toll')
    await expect(page.getByRole('row')).toHaveCount(2)
    await hand.click('link', /^Build this again/)
    await expect(page.getByText(/^Clip 11 gives way to /)).toBeVisible(PATIENT)
    await hand.click('button', 'Open the rebuild sheet')
    await expect(page.getByRole('heading', { name: 'Then and now' })).toBeVisible(PATIENT)
    // He shoots a left bevel now, which asks for a left fletch.
    await hand.click('button', 'Remove Two-blade 250')
    await hand.click('button', 'Add a part')
    await hand.click('button', /^Head$/)
    await hand.click('button', /^Left-bevel 250/)
    await expect(page.getByText('A left bevel on a right fletch')).toBeVisible()
    await hand.click('radio', 'left')
    await hand.click('button', 'Freeze version 1')
    await expect(page.getByText('Frozen as version 1.')).toBeVisible()
    expect(hand.actions()).toBeLessThanOrEqual(MOST_ACTIONS)
    await expect(page.getByText('Left-bevel 250', { exact: true }).first()).toBeVisible()
    await expect(page.getByText('Clip 11')).toHaveCount(0)
    await page.getByRole('link', { name: 'Print the build sheet' }).click()
    await expect(page.locator('main section[aria-label^=Page]')).toHaveCount(1)
    await expect(page.getByText(/Left-bevel 250/).first()).toBeVisible()
  })

  it('is found by the code on the box and by the tag on an arrow, as a scanner types them; a test kit is proposed', async () => {
    const page = shop
    await page.goto('./#/book')
    await page.getByLabel(/^Find by/).fill('toll')
    await expect(page.getByRole('row')).toHaveCount(3) // and the rebuild under way
    const links = page.getByRole('row').last().getByRole('link')
    const job = (await links.first().getAttribute('href'))!
    await links.nth(1).click()
    const title = await page.getByRole('heading', { name: /^Build / }).textContent()
    const box = title!.replace('Build ', '')
    const tag = (await page.getByRole('heading', { name: /^No\. 2/ }).textContent())!.split(', ')[1]!
    for (const code of [box, box.toLowerCase().replaceAll('-', ''), tag, tag.toLowerCase()]) {
      await page.goto('./#/book')
      await page.getByLabel(/^Find by/).pressSequentially(code)
      await page.keyboard.press('Enter')
      await expect(page.getByRole('heading', { name: title! }), code).toBeVisible()
    }
    // A code with a slip in it names nothing.
    await page.goto('./#/book')
    await page.getByLabel(/^Find by/).fill(box.slice(0, -1) + (box.endsWith('2') ? '3' : '2'))
    await page.keyboard.press('Enter')
    await expect(page.getByText('Nothing found')).toBeVisible()
    expect(await digitsOutsideMarks(page)).toEqual([])
    await expectAccessible(page)

    // The kit that the shelf has for this bow, in two taps.
    await page.goto(`./${job}/kit`)
    await page.getByRole('button', { name: 'Propose a kit' }).click()
    const proposed = page.getByRole('listitem').filter({ hasText: 'column reserve' })
    await expect(proposed.nth(1)).toBeVisible()
    const samples = (await proposed.allTextContents()).map((text) => text.split(', column reserve')[0]!)
    expect(samples.length).toBeGreaterThanOrEqual(2)
    await page.getByRole('button', { name: 'Take these into the kit' }).click()
    // One at the length of the set is named without it.
    const taken = page.getByRole('checkbox', { checked: true })
    await expect(taken).toHaveCount(samples.length)
    for (const sample of samples) {
      const [name] = sample.split(', cut to')
      const named = page.getByText(name!, { exact: true }).or(page.getByText(sample, { exact: true }))
      await expect(page.locator('label').filter({ has: taken }).and(named)).toHaveCount(1)
    }
    expect(await digitsOutsideMarks(page)).toEqual([])
    await page.getByRole('button', { name: 'Send the kit today' }).click()
    await expect(page.getByRole('link', { name: 'Print the return form' })).toBeVisible()
  })
})
