import type { Page } from '@playwright/test'
import { expect, it } from './support/fixtures'
import { answer, goTo, newCall } from './support/take-call'

/** From the keystroke until figures and layout are new; milliseconds, one for each keystroke. */
async function repaints(page: Page, field: string, texts: readonly string[]): Promise<number[]> {
  await page.evaluate(() => {
    const took: number[] = []
    let begun: number | undefined
    document.addEventListener('beforeinput', () => (begun = performance.now()), true)
    new MutationObserver(() => {
      if (begun === undefined) return
      document.body.getBoundingClientRect()
      took.push(performance.now() - begun)
      begun = undefined
    }).observe(document.body, { subtree: true, attributes: true, childList: true, characterData: true })
    Object.assign(window, { took })
  })
  const input = page.locator(`input[name=${field}]`)
  for (const text of texts) {
    await input.press('ControlOrMeta+a')
    await input.pressSequentially(text)
  }
  return page.evaluate(() => (window as unknown as { took: number[] }).took)
}

const median = (all: readonly number[]) => all.toSorted((a, b) => a - b)[Math.floor(all.length / 2)]!
const LENGTHS = ['28.5', '27.5', '29.5']
const WEIGHTS = ['72.5', '68.5', '74.5', '70.5', '66.5', '73.5']

for (const { rate, limit } of [
  { rate: 1, limit: 16 },
  { rate: 4, limit: 50 },
]) {
  it(`repaints what follows at every keystroke, processor ${rate} times slower, and says in how long`, async ({
    page,
  }) => {
    await page.goto('./')
    await page.getByRole('button', { name: 'Look around the demo shop' }).click()
    const job = await newCall(page)
    await answer(page, 'quarry', 'bison')
    await goTo(page, job, 'wishes')
    await answer(page, 'wishWeightGr', '825')
    await goTo(page, job, 'bow')
    await answer(page, 'drawLengthIn', '28.5')
    await expect(page.locator('[data-figure="call.shortest"]')).toBeVisible()
    // The first keystrokes warm the engine up, as the ones before them would have on a real call.
    await repaints(page, 'peakDrawWeightLb', WEIGHTS)
    const session = await page.context().newCDPSession(page)
    await session.send('Emulation.setCPUThrottlingRate', { rate })
    const before = await page.locator('[data-figure="call.spine.low"]').getAttribute('data-value')
    // For the record only: other work on the machine makes it slower, so no test hangs on it, and the best of three counts.
    const rounds: number[] = []
    for (let round = 0; round < 3 && !rounds.some((each) => each <= limit); round++) {
      const took = await repaints(page, 'peakDrawWeightLb', [...WEIGHTS, '60.5'])
      expect(took.length).toBeGreaterThanOrEqual(4 * WEIGHTS.length)
      rounds.push(median(took))
    }
    await expect(page.locator('[data-figure="call.spine.low"]')).not.toHaveAttribute('data-value', before!)
    console.log(
      `call repaint, ${rate} times slower: median ${Math.min(...rounds).toFixed(1)} ms a keystroke, ${limit} wished for`,
    )
  })
}

/** Four times slower it takes a minute: before a release. */
const SHEET_RATES = [
  { rate: 1, limit: 16 },
  ...(process.env['TEST_SIZE'] === 'release' ? [{ rate: 4, limit: 50 }] : []),
]
for (const { rate, limit } of SHEET_RATES) {
  it(`repaints the sheet at every keystroke in C2C, processor ${rate} times slower, and says in how long`, async ({
    page,
  }) => {
    await page.goto('./')
    await page.getByRole('button', { name: 'Look around the demo shop' }).click()
    await page.getByRole('link', { name: /Achterberg/ }).click({ timeout: 120_000 }) // filling the shop, on a busy machine
    await page.goto(page.url().replace(/\/?$/, '/sheet'))
    const foc = page.locator('[data-figure="sheet.foc"]')
    await expect(foc).toBeVisible()
    await expect(page.locator('[data-figure="sheet.longestC2c"]')).toBeVisible()
    const before = await foc.getAttribute('data-value')
    await repaints(page, 'c2cIn', LENGTHS)
    const session = await page.context().newCDPSession(page)
    await session.send('Emulation.setCPUThrottlingRate', { rate })
    const rounds: number[] = []
    for (let round = 0; round < 2 && !rounds.some((each) => each <= limit); round++) {
      const took = await repaints(page, 'c2cIn', [...LENGTHS, '29.25'])
      expect(took.length).toBeGreaterThanOrEqual(3 * LENGTHS.length)
      rounds.push(median(took))
    }
    await expect(foc).not.toHaveAttribute('data-value', before!)
    console.log(
      `sheet repaint, ${rate} times slower: median ${Math.min(...rounds).toFixed(1)} ms a keystroke, ${limit} wished for`,
    )
  })
}
