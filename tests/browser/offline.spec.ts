import { describe, expect, it } from './support/fixtures'
import { serve } from './support/serve'

const COLD_STARTS = process.env['TEST_SIZE'] === 'release' ? 50 : 3

describe('after one visit', () => {
  it(`opens with the server gone and the browser started anew, ${COLD_STARTS} times`, async ({ profile }) => {
    it.setTimeout(COLD_STARTS * 20_000)
    const served = await serve()
    const visit = await (await profile.open()).newPage()
    await visit.goto(served.address)
    await expect(visit.getByRole('heading', { level: 1 })).toBeVisible()
    await visit.evaluate(async () => void (await navigator.serviceWorker.ready))
    await profile.close()
    await served.stop()

    for (let start = 1; start <= COLD_STARTS; start += 1) {
      const context = await profile.open({ offline: true })
      const page = await context.newPage()
      const problems: string[] = []
      page.on('pageerror', (error) => problems.push(error.message))
      page.on('requestfailed', (request) => problems.push(`${request.url()} failed`))
      await page.goto(served.address)
      await expect(page.getByRole('heading', { level: 1 }), `start ${start}`).toBeVisible()
      expect(problems, `start ${start}`).toEqual([])
    }
  })

  it('has every file of the build at hand', async ({ page, address }) => {
    await page.goto(address)
    await page.evaluate(async () => void (await navigator.serviceWorker.ready))
    const kept = await page.evaluate(async () => {
      const [name] = await caches.keys()
      return (await (await caches.open(name!)).keys()).map((request) => new URL(request.url).pathname.slice(1))
    })
    const manifest = (await import('../../dist/.vite/manifest.json', { with: { type: 'json' } })).default
    for (const chunk of Object.values(manifest) as { file: string; css?: string[] }[]) {
      for (const file of [chunk.file, ...(chunk.css ?? [])]) expect(kept).toContain(file)
    }
    expect(kept).toEqual(expect.arrayContaining(['index.html', 'manifest.webmanifest', 'icon-192.png']))
  })
})

describe('without a visit', () => {
  it('is seen not to open with the server gone', async ({ profile }) => {
    const served = await serve()
    await served.stop()
    const page = await (await profile.open({ offline: true })).newPage()
    await expect(page.goto(served.address)).rejects.toThrow('ERR_INTERNET_DISCONNECTED')
  })
})
