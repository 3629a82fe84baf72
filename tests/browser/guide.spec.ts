/**
 * The pictures of docs/guide.md, taken from the app as it is. Every run takes them and sees that the guide shows each of
 * them and no other; with GUIDE=1 they replace those in docs/pictures.
 */
import { mkdir, readFile, readdir } from 'node:fs/promises'
import { join } from 'node:path'
import type { Page } from '@playwright/test'
import { describe, expect, it } from './support/fixtures'

const KEPT = 'docs/pictures'
const FOLDER = process.env['GUIDE'] === undefined ? 'test-results/guide' : KEPT
const PATIENT = { timeout: 120_000 } // a busy machine fills the demo shop more slowly
const SIZE = { width: 900, height: 640 }
const MADE = '2026-11-25T10:00:00Z'

async function picture(page: Page, name: string, shown: string | RegExp): Promise<void> {
  await expect(page.getByText(shown).locator('visible=true').first()).toBeVisible(PATIENT)
  await page.evaluate(() => scrollTo(0, 0)) // the bench goes to its entry by itself
  await page.screenshot({ path: join(FOLDER, `${name}.png`), animations: 'disabled', caret: 'hide' })
}

describe('the guide', () => {
  it('shows the three uses in pictures of the app as it is', async ({ page }) => {
    await mkdir(FOLDER, { recursive: true })
    await page.setViewportSize(SIZE)
    await page.clock.setSystemTime(new Date(MADE))
    await page.goto('./')
    await page.getByRole('button', { name: 'Look around the demo shop' }).click()
    await picture(page, 'jobs', 'Sunniva Marchetti')
    const jobOf = async (client: string) => (await page.getByRole('link', { name: client }).getAttribute('href'))!
    const [calling, building, sent] = [
      await jobOf('Sunniva Marchetti'),
      await jobOf('Rosalind Achterberg'),
      await jobOf('Maren Tolliver'),
    ]

    await page.goto(`./${calling}/call/bow`)
    await picture(page, 'call', 'Draw length')
    await page.goto(`./${building}/sheet`)
    await picture(page, 'sheet', 'Two-blade 300')
    await page.goto(`./${building}/bench`)
    await picture(page, 'bench', 'Trim the post')
    await page.goto(`./${sent}/send`)
    await picture(page, 'send', 'Weight less head')
    await page.goto(`./${await page.getByRole('link', { name: 'Open it in the book' }).getAttribute('href')}/again`)
    await picture(page, 'again', 'What survives')
    await page.goto(`./#/print/client-sheet/${sent.split('/').at(-1)}`)
    await picture(page, 'client-sheet', 'Your arrows')

    const taken = (await readdir(FOLDER)).filter((file) => file.endsWith('.png')).toSorted()
    const guide = await readFile('docs/guide.md', 'utf8')
    const named = [...guide.matchAll(/\]\(pictures\/([^)]+)\)/g)].map(([, file]) => file!)
    expect(named.toSorted()).toEqual(taken)
    expect((await readdir(KEPT)).toSorted()).toEqual(taken)
  })
})
