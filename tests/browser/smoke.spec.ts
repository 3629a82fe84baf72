import { gzipSync } from 'node:zlib'
import { expect, it } from './support/fixtures'

const KB = 1000
const FIRST_LOAD = 120 * KB

it('opens under its own name, asking nobody else for anything', async ({ page, address }) => {
  const asked: string[] = []
  page.on('request', (request) => asked.push(request.url()))
  await page.goto('./')
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
  await expect(page).toHaveTitle(/Grainwright/)
  expect(asked.filter((url) => !url.startsWith(address))).toEqual([])
})

it('works after at most 120 kB of compressed script', async ({ page }) => {
  const scripts: Promise<Buffer>[] = []
  page.on('response', (response) => {
    const request = response.request()
    if (request.resourceType() === 'script' && request.serviceWorker() === null) scripts.push(response.body())
  })
  await page.goto('./', { waitUntil: 'networkidle' })
  const sizes = (await Promise.all(scripts)).map((body) => gzipSync(body, { level: 9 }).length)
  expect(sizes.length).toBeGreaterThan(0)
  expect(sizes.reduce((total, size) => total + size, 0)).toBeLessThanOrEqual(FIRST_LOAD)
})

it('runs no script but its own', async ({ browser, address }) => {
  // A page of its own, since the browser rightly complains on the console here.
  const page = await browser.newPage()
  await page.goto(address)
  const refused = await page.evaluate(async () => {
    const violations: string[] = []
    document.addEventListener('securitypolicyviolation', (event) => violations.push(event.effectiveDirective))
    const inline = document.createElement('script')
    inline.textContent = 'document.title = "inline script ran"'
    const foreign = document.createElement('script')
    foreign.src = 'https://elsewhere.invalid/x.js'
    document.head.append(inline, foreign)
    const image = new Image()
    image.src = 'https://elsewhere.invalid/x.png'
    await fetch('https://elsewhere.invalid/').catch(() => undefined)
    await new Promise((go) => setTimeout(go, 200))
    return violations
  })
  expect([...refused].sort()).toEqual(['connect-src', 'img-src', 'script-src-elem', 'script-src-elem'])
  await expect(page).toHaveTitle(/Grainwright/)
  await page.close()
})
