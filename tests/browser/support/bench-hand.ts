import type { Page } from '@playwright/test'
import { expect } from './fixtures'

/** Readings of an invented arrow by the label of the entry; weights scatter from arrow to arrow. */
export interface BenchHand {
  readonly read: (label: string, no: number) => string
  /** Post taken off by one pass, gr. */
  readonly pass: (wanted: number) => number
}

const settled = async (page: Page) => {
  await expect(page.getByText(/^Saved on this device/)).toBeVisible()
}

/** Does the next thing at the bench as a builder would; returns the step it did, or null when every step is done. */
export async function doNext(page: Page, hand: BenchHand): Promise<string | null> {
  const heading = page.locator('h1').first()
  const title = (await heading.textContent()) ?? ''
  if (title === 'Every step is done') return null
  const input = page.locator('input[name=reading]')
  if (title === 'Trim the post') {
    const off = Number(await page.locator('[data-figure$=".takeOff"]').getAttribute('data-value'))
    const scale = Number(await page.locator('[data-read$=".scale"]').getAttribute('data-value'))
    const light = await page.getByText('light by', { exact: false }).first().isVisible()
    if (!light && off > 0.5) {
      await take(page, (scale - hand.pass(off)).toFixed(1))
      return title
    }
    await done(page, 'Done, next')
    return title
  }
  // This hand wipes by eye: it weighs neither with the edge broken nor wet.
  if ((await input.count()) > 0 && !['Break the edge', 'Bond'].includes(title)) {
    const label = ((await page.locator('form label').first().textContent()) ?? '').trim()
    const [, no, point] = /^No\. (\d+), (.*?)(gr|in|mm|°C|°)?$/.exec(label) ?? []
    await take(page, hand.read((point ?? '').trim(), Number(no)))
    return title
  }
  await done(page, /^Done/)
  return title
}

/** What the page says of where the work is: the step, what is asked, what was said last and how many are left. */
const place = (page: Page) =>
  page.evaluate(() => {
    const texts = [...document.querySelectorAll('main h1, main form label, main output, main p, main [aria-current]')]
    return texts.map((each) => each.textContent).join('\n')
  })

/** *Saved* of the step before may still stand after the press; that the bench has answered, the page shows. */
async function done(page: Page, name: string | RegExp): Promise<void> {
  const before = await place(page)
  await page.getByRole('button', { name }).click()
  await expect.poll(() => place(page), { intervals: [20, 40, 80, 160] }).not.toBe(before)
  await settled(page)
}

async function take(page: Page, text: string): Promise<void> {
  const input = page.locator('input[name=reading]')
  await input.fill(text)
  await input.press('Enter')
  const sure = page.getByRole('button', { name: /^Yes, take/ })
  await expect(async () => {
    if (await sure.isVisible()) await sure.click()
    // The entry may be gone the moment it was counted: the bench has gone on.
    const left = (await input.count()) === 0 ? '' : await input.inputValue({ timeout: 300 }).catch(() => '')
    expect(left === text).toBe(false)
  }).toPass({ intervals: [20, 40, 80, 160] })
  await settled(page)
}
