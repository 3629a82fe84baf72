/** What every browser test stands on: the production build, served; a page whose every error fails the test. */
import { expect, test as base } from '@playwright/test'
import { problemsOf } from './problems'
import { newProfile, type Profile } from './profile'
import { serve } from './serve'

interface PerTest {
  readonly profile: Profile
}
interface PerWorker {
  readonly address: string
}

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
