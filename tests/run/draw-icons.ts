/** Draws the app's PNG icons from public/icon.svg: npm run icons. A maskable one keeps the drawing in the inner 80 %. */
import { readFileSync } from 'node:fs'
import { chromium } from '@playwright/test'
import { CHROMIUM_FLAGS } from '../browser/support/chromium-flags'
import { CHROMIUM } from './ensure-browser'

const SHEET = '#fdfcf9'
const drawing = `data:image/svg+xml;base64,${readFileSync('public/icon.svg').toString('base64')}`

const browser = await chromium.launch({ executablePath: CHROMIUM, args: [...CHROMIUM_FLAGS] })
const page = await browser.newPage()
for (const size of [192, 512]) {
  await page.setViewportSize({ width: size, height: size })
  await draw(`icon-${size}.png`, 'transparent', '100%')
  await draw(`icon-maskable-${size}.png`, SHEET, '72%')
}
await browser.close()

async function draw(name: string, ground: string, share: string) {
  await page.setContent(
    `<body style="margin:0;background:${ground};display:grid;place-items:center;height:100vh"><img src="${drawing}" style="width:${share};height:${share}">`,
  )
  await page.locator('img').evaluate((image: HTMLImageElement) => image.decode())
  await page.screenshot({ path: `public/${name}`, omitBackground: true })
}
