import type { Page } from '@playwright/test'
import { startedSet } from '@tests/support/started-set'
import { goneOn, look, openBench, trueHand } from './support/at-the-bench'
import { describe, expect, it } from './support/fixtures'

const MM = 25.4 // of an inch

/** Height of the digits of an element's text, mm, on a screen of so many CSS pixels an inch. */
const digitsMm = (page: Page, selector: string, perInch: number) =>
  page.evaluate(
    ([at, mm]) => {
      const style = getComputedStyle(document.querySelector(at)!)
      const pen = document.createElement('canvas').getContext('2d')!
      pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`
      return pen.measureText('0').actualBoundingBoxAscent * mm
    },
    [selector, MM / perInch] as const,
  )

const take = async (page: Page, text: string) => {
  await page.locator('[name=reading]').fill(text)
  await page.keyboard.press('Enter')
  const sure = page.getByRole('button', { name: /^Yes, take/ })
  await expect(
    page
      .locator('main output')
      .filter({ hasText: `${text} gr taken` })
      .or(sure),
  ).toBeVisible()
  if (await sure.isVisible()) await sure.click()
  await expect(page.locator('main output').filter({ hasText: `${text} gr taken` })).toBeVisible()
}

/** Tablets of about ten inches, held either way up: CSS pixels, and how many of them make an inch. */
const TABLETS = [
  { size: { width: 1080, height: 810 }, perInch: 132 },
  { size: { width: 810, height: 1080 }, perInch: 132 },
  { size: { width: 1280, height: 800 }, perInch: 149 },
]

describe('the bench on a tablet of ten inches', () => {
  it('shows reading, target and difference in digits of ten millimetres, and its action in a gloved finger’s size', async ({
    page,
  }) => {
    const set = await startedSet(1)
    await openBench(page, set)
    for (const [step, figures] of [
      ['trim', ['.takeOff"]', '.downTo"]', '.scale"]']],
      ['bond', ['.glueChange"]', '.glueWeighs"]', '.scale"]']],
    ] as const) {
      await page.goto(`./#/job/${set.job.id}/bench/${step}/1`)
      await take(page, step === 'trim' ? '782.4' : '786.1')
      for (const { size, perInch } of TABLETS) {
        await page.setViewportSize(size)
        for (const figure of figures) {
          const selector = figure === '.scale"]' ? `[data-read$="${figure}` : `[data-figure$="${figure}`
          await expect(page.locator(selector).first()).toBeVisible()
          expect(await digitsMm(page, selector, perInch), `${step} ${figure}`).toBeGreaterThanOrEqual(10)
        }
        expect(await digitsMm(page, '[name=reading]', perInch)).toBeGreaterThanOrEqual(10)
        const boxes = await page.locator('main form button, main form input, header button').evaluateAll((all) =>
          all.map((each) => {
            const { width, height, bottom } = each.getBoundingClientRect()
            return { is: each.textContent, type: each.getAttribute('type'), width, height, bottom }
          }),
        )
        for (const { is, width, height } of boxes) expect([is, Math.min(width, height) >= 44]).toEqual([is, true])
        // 96 CSS px is the default of 20 mm; a screen that is not calibrated is taken at that.
        const primary = boxes.find(({ type }) => type === 'submit')!
        expect(primary.height).toBeGreaterThanOrEqual(96)
        expect(primary.bottom).toBeLessThanOrEqual(size.height)
      }
    }
  })

  it('changes hands with one tap, and each reading is by who was there', async ({ page }) => {
    const set = await startedSet(2)
    await openBench(page, set)
    const hand = trueHand(set, 3)
    for (const [no, name] of [
      [1, 'Ilse'],
      [2, 'Tomas'],
    ] as const) {
      await page.getByRole('button', { name, exact: true }).click()
      await expect(page.getByRole('button', { name, exact: true })).toHaveAttribute('aria-pressed', 'true')
      await expect(page.locator('main output').filter({ hasText: `${name} is at the bench` })).toBeVisible()
      const seen = await look(page)
      await page.locator('[name=reading]').fill(hand.read(no, 'rawWeight'))
      await page.keyboard.press('Enter')
      await goneOn(page, seen)
    }
    await page.reload()
    await expect(page.getByRole('button', { name: 'Tomas', exact: true })).toHaveAttribute('aria-pressed', 'true')
    for (const [no, name] of [
      [1, 'Ilse'],
      [2, 'Tomas'],
    ] as const) {
      await page.goto(`./#/job/${set.job.id}/bench/receive/${no}`)
      const history = page.locator('details').filter({ hasText: `Everything read of no. ${no}` })
      await history.evaluate((each: HTMLDetailsElement) => (each.open = true))
      await expect(page.getByRole('row').filter({ hasText: 'Raw weight' })).toContainText(`${name}, `)
    }
  })
})
