import type { Page } from '@playwright/test'
import { startedSet } from '@tests/support/started-set'
import { goneOn, look, openBench, trueHand } from './support/at-the-bench'
import { describe, expect, it } from './support/fixtures'

const said = (page: Page) => page.locator('main output').first()
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name })

/** A picture far larger than the book keeps. */
const largePicture = (page: Page) =>
  page.evaluate(async () => {
    const canvas = document.createElement('canvas')
    canvas.width = 2000
    canvas.height = 1500
    const pen = canvas.getContext('2d')!
    for (let i = 0; i < 3000; i++) {
      pen.fillStyle = `hsl(${(i * 47) % 360} 60% 50%)`
      pen.fillRect((i * 97) % 2000, (i * 53) % 1500, 60, 40)
    }
    const blob = await new Promise<Blob>((made) => canvas.toBlob((each) => made(each!), 'image/png'))
    return [...new Uint8Array(await blob.arrayBuffer())]
  })

describe('a day at the bench', () => {
  it('takes readings off paper, notes with a picture, timers, and what was done too soon back', async ({ page }) => {
    await page.clock.install({ time: new Date('2026-03-03T12:00:00Z') })
    const set = await startedSet(2)
    await openBench(page, set)
    const hand = trueHand(set, 8)

    // Off paper: asked for its time, which may not be to come, and kept with each reading.
    await button(page, 'Enter readings from paper').click()
    const paper = page.getByRole('form', { name: 'From paper' })
    await paper.locator('[name=paperClock]').fill('13:30')
    await button(page, 'Enter from paper').click()
    await expect(paper).toContainText('still to come')
    await paper.locator('[name=paperClock]').fill('9.15')
    await button(page, 'Enter from paper').click()
    await expect(page.getByRole('group', { name: 'From paper' })).toContainText('3 Mar 2026, 09:15')
    const first = await look(page)
    await page.locator('[name=reading]').fill(hand.read(1, 'rawWeight'))
    await page.keyboard.press('Enter')
    await goneOn(page, first)
    await button(page, 'Back to the bench').click()
    await page.goto(`./#/job/${set.job.id}/bench/receive/1`)
    await page.getByText(/^Everything read of no\. 1/).click()
    await expect(page.getByRole('row').filter({ hasText: 'Raw weight' })).toContainText('3 Mar 2026, 09:15, paper')

    // A note, with a picture that was made small enough; both there after a reload.
    await button(page, 'Note').click()
    await button(page, 'Keep the note').click()
    await expect(page.getByRole('dialog')).toContainText('nothing to keep yet')
    await page.locator('[name=note]').fill('A scratch near the nock end')
    const buffer = Buffer.from(await largePicture(page))
    expect(buffer.length).toBeGreaterThan(60 * 1024)
    await page.locator('[name=photo]').setInputFiles({ name: 'end.png', mimeType: 'image/png', buffer })
    await expect(page.getByRole('img', { name: 'The picture to be kept' })).toBeVisible()
    await button(page, 'Keep the note').click()
    await expect(page.getByRole('dialog')).toHaveCount(0)
    await page.reload()
    await page.getByText(/^Notes \(1\)/).click()
    await expect(page.getByText('A scratch near the nock end')).toBeVisible()
    const kept = page.getByRole('img', { name: /^Picture: no\. 1, receive/ })
    await expect.poll(() => kept.evaluate((each: HTMLImageElement) => each.naturalWidth)).toBeGreaterThan(300)

    // A timer for anything, by the clock on the wall, due while nobody touches the page.
    await page.getByText('Timers', { exact: true }).click()
    await page.locator('[name=timerWhat]').fill('degreased')
    await page.locator('[name=timerLong]').fill('a while')
    await button(page, 'Start the timer').click()
    await expect(page.getByText(/“a while” is no length of time/)).toBeVisible()
    await page.locator('[name=timerLong]').fill('20 min')
    await button(page, 'Start the timer').click()
    const timers = page.getByRole('list', { name: 'Timers' })
    await expect(timers).toContainText(/degreased: ready 12:2\d/)
    // The same joint colder takes longer: its end moves, its beginning stays.
    await button(page, 'Time the vane glue by this room').click()
    await expect(timers).toContainText('at 20 °C, which nobody read')
    await page.locator('[name=timerRoom]').fill('15')
    await button(page, 'Time the vane glue by this room').click()
    await expect(timers).toContainText('at 15 °C')
    await expect(timers.getByText('vane glue')).toHaveCount(1)
    await page.clock.fastForward('21:00')
    await expect(timers).toContainText(/degreased: ready since 12:2\d/)
    await button(page, /^Put it away/).click()
    await expect(timers).not.toContainText('degreased')

    // Past a hold point only as a deviation; a step of this set alone; and a confirmation taken back.
    await page.goto(`./#/job/${set.job.id}/bench/prepare-bond`)
    await button(page, 'Done, the whole set').click()
    await expect(said(page)).toContainText('Hold point: “Budget and pairing” comes first')
    await button(page, 'Go past the hold, as a deviation').click()
    await expect(page.getByText(/required Budget and pairing, the whole set, found not done/)).toBeVisible()
    await page.goto(`./#/job/${set.job.id}/bench/prepare-bond`)
    await button(page, 'Undo').click()
    await expect(said(page)).toContainText('Taken back: the set, prepare the bond')
    await page.getByText('Change the route of this set').click()
    await button(page, 'Prepare the bond: off').click()
    await expect(page.getByText('step 1 of 17')).toBeVisible()
    await button(page, 'Bond the front before fletching').click()
    await page.getByText('All steps of the route').click()
    const route = page.locator('main details li a')
    await expect(route.nth(6)).toHaveText('Budget and pairing')
    await expect(route.nth(7)).toHaveText('Dry fit and weigh')
  })
})
