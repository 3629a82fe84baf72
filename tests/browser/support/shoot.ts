/** Pictures of a page at three widths, light and dark, into test-results/shots for a person to look at. */
import type { Page } from '@playwright/test'

const SIZES = [
  { width: 360, height: 780 },
  { width: 834, height: 1112 },
  { width: 1440, height: 900 },
] as const

/** Leaves the page at the size and colours it had. */
export async function shoot(page: Page, name: string): Promise<void> {
  const before = page.viewportSize()
  for (const size of SIZES) {
    await page.setViewportSize(size)
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme })
      await page.screenshot({
        path: `test-results/shots/${name}-${size.width}-${colorScheme}.png`,
        fullPage: true,
        animations: 'disabled',
      })
    }
  }
  await page.emulateMedia({ colorScheme: null })
  if (before !== null) await page.setViewportSize(before)
}
