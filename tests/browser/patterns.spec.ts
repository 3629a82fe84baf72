/** Every control and figure in every state, on a page of its own: readable by all, on any width, in any colours. */
import { build } from 'vite'
import { expectAccessible } from './support/accessible'
import { digitsOutsideMarks } from './support/digits-outside-marks'
import { describe, expect, it } from './support/fixtures'
import { serve, type Served } from './support/serve'

let served: Served

it.beforeAll(async () => {
  await build({ configFile: 'tests/browser/patterns/vite.config.ts', logLevel: 'warn' })
  served = await serve('node_modules/.cache/patterns')
})
it.afterAll(() => served.stop())

// One build, so one worker.
describe.configure({ mode: 'default' })

const EVERY = {
  light: { colorScheme: 'light' },
  dark: { colorScheme: 'dark' },
  'forced colours': { forcedColors: 'active' },
} as const
const COLOURS = { controls: EVERY, figures: EVERY, bench: { dark: EVERY.dark }, print: { light: EVERY.light } }

for (const name of ['controls', 'figures', 'bench', 'print'] as const) {
  describe(`the ${name}`, () => {
    it.beforeEach(async ({ page }) => {
      await page.goto(`${served.address}?page=${name}`)
    })

    for (const [colours, media] of Object.entries(COLOURS[name])) {
      it(`are accessible in ${colours}`, async ({ page }) => {
        await page.emulateMedia(media)
        await expectAccessible(page, `${name}, ${colours}`)
      })
    }

    it('mark every digit', async ({ page }) => {
      for (const details of await page.locator('summary').all()) await details.click()
      expect(await digitsOutsideMarks(page)).toEqual([])
    })

    if (name !== 'print') {
      it('fit 320 px without scrolling sideways, with targets of a finger', async ({ page }) => {
        await page.setViewportSize({ width: 320, height: 640 })
        await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320)
        const small = await page
          .locator('button, a, input:not([type=radio]), label:has(input), summary')
          .evaluateAll((all) =>
            all
              .filter((element) => element.checkVisibility())
              .map((element) => {
                const after = getComputedStyle(element, '::after')
                const reach = after.content === 'none' ? 0 : -2 * (Number.parseFloat(after.insetBlockStart) || 0)
                const { width, height } = element.getBoundingClientRect()
                return {
                  what: element.textContent || element.getAttribute('name'),
                  width,
                  height: height + Math.max(0, reach),
                }
              })
              .filter(({ width, height }) => width < 24 || height < 24),
          )
        expect(small).toEqual([]) // WCAG 2.2, 2.5.8
      })
    }
  })
}

it('opens the working of a figure over the page and gives the focus back', async ({ page }) => {
  await page.goto(`${served.address}?page=figures`)
  const speed = page.getByRole('button', { name: 'Speed', exact: true })
  await speed.click()
  const dialog = page.getByRole('dialog', { name: 'Speed' })
  await expect(dialog).toBeVisible()
  await dialog.getByText('stored energy').and(dialog.locator('summary')).click()
  await expectAccessible(page, 'show working')
  expect(await digitsOutsideMarks(page)).toEqual([])
  await page.screenshot({ path: 'test-results/shots/patterns-working.png' })
  await page.keyboard.press('Escape')
  await expect(dialog).toBeHidden()
  await expect(speed).toBeFocused()
})
