import { startedSet } from '@tests/support/started-set'
import { openBench } from './support/at-the-bench'
import { describe, expect, it } from './support/fixtures'

describe('one bench in two tabs', () => {
  it('is worked at in one; the other shows it, takes nothing, and can take over', async ({ page, context }) => {
    const set = await startedSet(2)
    await openBench(page, set)
    const notice = 'Another tab works at this bench.'
    await expect(page.getByText(notice)).toBeHidden()
    const other = await context.newPage()
    await other.goto(page.url())
    await expect(other.getByText(notice)).toBeVisible()
    await expect(other.locator('h1').first()).toHaveText('Receive')
    await expect(other.locator('[inert] form')).toHaveCount(1)
    await other.locator('form input').first().focus()
    await expect(other.locator('form input').first()).not.toBeFocused() // inert: shown, and out of reach

    await other.getByRole('button', { name: 'Work here instead' }).click()
    await expect(other.getByText(notice)).toBeHidden()
    await expect(other.locator('[inert]')).toHaveCount(0)
    await expect(page.getByText(notice)).toBeVisible()
    await expect(page.locator('[inert] form')).toHaveCount(1)

    await other.close()
    await page.getByRole('button', { name: 'Work here instead' }).click()
    await expect(page.locator('[inert]')).toHaveCount(0)
  })
})
