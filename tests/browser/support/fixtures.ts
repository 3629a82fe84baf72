/** What every browser test stands on: the production build, served; a page whose every error fails the test. */
import { expect, test as base, type Page } from '@playwright/test'
import { problemsOf } from './problems'
import { newProfile, type Profile } from './profile'
import { serve } from './serve'

interface PerTest {
  readonly profile: Profile
}
interface PerWorker {
  readonly address: string
}

/** Until something is to be seen: a browser may drop a press that comes before its first paint, as no person's can. */
const painted = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<void>((seen) => {
        const watch = new PerformanceObserver(() => {
          watch.disconnect()
          seen()
        })
        watch.observe({ type: 'paint', buffered: true })
      }),
  )

export const it = base.extend<PerTest, PerWorker>({
  address: [
    async ({}, give) => {
      const served = await serve()
      await give(served.address)
      await served.stop()
    },
    { scope: 'worker' },
  ],
  baseURL: async ({ address }, give) => give(address),
  page: async ({ page }, give) => {
    const { problems } = problemsOf(page)
    const go = page.goto.bind(page)
    page.goto = async (...to) => {
      const response = await go(...to)
      if (page.url().startsWith('http')) await painted(page)
      return response
    }
    await give(page)
    expect(problems, 'errors and warnings on the page').toEqual([])
  },
  profile: async ({}, give) => {
    const profile = await newProfile()
    await give(profile)
    await profile.remove()
  },
})

export { expect } from '@playwright/test'
export const describe = base.describe
