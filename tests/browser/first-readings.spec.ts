/** Slips of somebody who builds here for the first time: the wrong arrow, the wrong unit, and what the saw is set to. */
import type { Page } from '@playwright/test'
import { startedSet } from '@tests/support/started-set'
import { look, openBench, trueHand } from './support/at-the-bench'
import { describe, expect, it } from './support/fixtures'

const GRAINS_PER_GRAM = 15.4324 // [SP811]

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true })
const label = (page: Page) => page.locator('form label > span').first()
const read = async (page: Page, text: string) => {
  await page.locator('[name=reading]').fill(text)
  await page.keyboard.press('Enter')
}

describe('the first time at the bench', () => {
  it('takes the last reading back though the next arrow is up, and a weight off a scale in grams', async ({ page }) => {
    const set = await startedSet(2)
    await openBench(page, set)
    const weight = Number(trueHand(set, 8).read(1, 'rawWeight'))
    await button(page, 'Undo').click()
    await expect(page.getByText(/^Nothing to undo/)).toBeVisible()
    await read(page, String(weight))
    await expect(label(page)).toHaveText('No. 2, raw weight')
    await button(page, 'Undo').click()
    await expect(page.getByText(`Withdrawn: no. 1, raw weight ${weight}. It stays in the history.`)).toBeVisible()
    await expect(label(page)).toHaveText('No. 1, raw weight')

    const grams = (weight / GRAINS_PER_GRAM).toFixed(2)
    await read(page, grams)
    await expect(page.getByText(/looks like grams/)).toBeVisible()
    await page.getByRole('button', { name: /^No, in grams: take / }).click()
    await expect(label(page)).toHaveText('No. 2, raw weight')
    await page.goto(`./#/job/${set.job.id}/bench/receive/1`)
    await page.getByText(/^Everything read of no\. 1/).click()
    const taken = (Number(grams) * GRAINS_PER_GRAM).toFixed(1)
    await expect(page.getByRole('row').filter({ hasText: 'Raw weight' }).filter({ hasText: taken })).toHaveCount(1)
  })

  it('takes back across a step that is over, and says at the saw what it is set to', async ({ page }) => {
    const set = await startedSet(1)
    await openBench(page, set)
    await read(page, trueHand(set, 8).read(1, 'rawWeight'))
    await expect(page.locator('h1').first()).toHaveText('Spin and mark')
    await button(page, 'Undo').click()
    await expect(page.locator('h1').first()).toHaveText('Receive')
    await read(page, trueHand(set, 8).read(1, 'rawWeight'))
    await expect(page.locator('h1').first()).toHaveText('Spin and mark')
    await button(page, 'Done, next').click()
    await expect.poll(async () => (await look(page)).point).toBe('c2c')
    // The sheet of the set is cut to 28 in.
    await expect(page.locator('[data-figure="bench.1.cutTo"]')).toHaveText('28.00')
    await expect(page.getByText('inches, carbon to carbon')).toBeVisible()
    await expect(page.getByText('Not spun: take as much off either end.')).toBeVisible()
  })

  it('does not close a step over an entry that was typed and not taken', async ({ page }) => {
    const set = await startedSet(1)
    await openBench(page, set)
    await page.goto(`./#/job/${set.job.id}/bench/square/1`)
    await read(page, '0.001')
    await expect(page.locator('h1').first()).toHaveText('Receive') // taken, and on to what is open
    await page.goto(`./#/job/${set.job.id}/bench/square/1`)
    await expect(button(page, 'Done, next')).toBeVisible()
    await button(page, 'End squareness').click()
    await page.locator('[name=reading]').fill('0.002')
    await button(page, 'Done, next').click()
    await expect(page.getByText('“0.002” is typed and not taken yet: take it, or clear it first.')).toBeVisible()
    await expect(page.locator('[name=reading]')).toHaveValue('0.002')
    await expect(page.locator('[name=reading]')).toBeFocused()
  })

  it('does not close the spin over a run-out that no place on the clock was tapped for', async ({ page }) => {
    const set = await startedSet(1)
    await openBench(page, set)
    await read(page, trueHand(set, 8).read(1, 'rawWeight'))
    await expect(page.locator('h1').first()).toHaveText('Spin and mark')
    await page.locator('[name=runOut]').fill('0.002')
    await button(page, 'Done, next').click()
    await expect(page.getByText('“0.002” is typed and not taken yet: take it, or clear it first.')).toBeVisible()
    await expect(page.locator('h1').first()).toHaveText('Spin and mark')
    await button(page, '90°').click()
    await expect(page.locator('[name=runOut]')).toHaveValue('')
    await button(page, 'Done, next').click()
    await expect.poll(async () => (await look(page)).point).toBe('c2c')
  })

  it('names the unit that the huge figure is shown in', async ({ page }) => {
    const set = await startedSet(1)
    await openBench(page, set)
    const big = page.locator('[data-figure="bench.1.expected"]')
    const under = big.locator('xpath=ancestor::div[1]/p[last()]')
    await expect(big).toHaveAttribute('data-unit', 'gr')
    await expect(under).toHaveText('grains')
    await page.goto('./#/shop')
    await page.getByRole('radio', { name: 'metric' }).check()
    await page.goto(`./#/job/${set.job.id}/bench`)
    await expect(big).toHaveAttribute('data-unit', 'g')
    await expect(under).toHaveText('grams')
  })
})
