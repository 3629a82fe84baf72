import type { Page } from '@playwright/test'
import { startedSet } from '@tests/support/started-set'
import { goneOn, look, openBench, passAsked, touchAsked, trueHand } from './support/at-the-bench'
import { describe, expect, it } from './support/fixtures'

/** Opens the app anew, as after a crash, and taps its way back. @returns the taps */
async function backToWork(page: Page): Promise<number> {
  await page.goto('about:blank')
  await page.goto('./')
  await page.getByRole('region', { name: 'Under way' }).getByRole('link').first().click()
  await page.getByRole('list').getByRole('link', { name: 'Bench', exact: true }).last().click()
  return 2
}

describe('the bench, killed at every step', () => {
  it('is two taps from where the work was, with every reading once', async ({ page }) => {
    await page.clock.install({ time: new Date('2026-03-03T08:00:00Z') })
    const set = await startedSet(1)
    await openBench(page, set)
    const hand = trueHand(set, 5)
    const met = new Set<string>()
    const taken: string[] = []
    for (let action = 0; action < 80; action++) {
      const seen = await look(page)
      if (seen.title === 'Every step is done') break
      if (!met.has(seen.title)) {
        met.add(seen.title)
        expect(await backToWork(page)).toBeLessThanOrEqual(2)
        await expect(page.locator('h1').first()).toHaveText(seen.title)
        const back = await look(page)
        expect([back.title, back.no, back.point]).toEqual([seen.title, seen.no, seen.point])
        continue
      }
      if (seen.title === 'Cure') await page.clock.fastForward('48:00:00')
      const pass = seen.title === 'Trim the post' ? passAsked(seen) : null
      const touch = seen.title === 'Bond' ? touchAsked(seen) : null
      if (pass !== null) hand.pass(seen.no, pass)
      if (touch !== null) hand.touch(seen.no, touch)
      const stays = ['Trim the post', 'Break the edge', 'Bond'].includes(seen.title)
      if (seen.point === '' || (stays && pass === null && touch === null)) {
        await page.keyboard.press('Enter')
      } else {
        // A true set knows weights and run-outs; where it balances is read off the plan.
        const text = seen.point === 'balancePoint' ? '21.60' : hand.read(seen.no, seen.point)
        taken.push(text)
        await page.keyboard.insertText(text)
        await page.keyboard.press('Enter')
        const sure = page.getByRole('button', { name: /^Yes, take/ })
        await expect(page.locator('main output').filter({ hasText: text }).or(sure)).toBeVisible()
        if (await sure.isVisible()) await sure.click()
      }
      await goneOn(page, seen)
    }
    expect(met.size).toBe(18)
    await page.goto(`./#/job/${set.job.id}/bench/inspect/1`)
    await page.getByText(/^Everything read of no\./).click()
    await expect(page.getByRole('button', { name: /^Scrap no/ })).toBeVisible()
    const kept = () =>
      page.locator('[data-read*=".history."]').evaluateAll((all) => all.map((each) => Number(each.textContent)))
    await expect.poll(kept).toEqual(taken.map(Number))
  })
})
