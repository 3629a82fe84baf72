import { defineConfig } from '@playwright/test'
import { CHROMIUM } from '../run/ensure-browser'
import { CHROMIUM_FLAGS } from './support/chromium-flags'

const LONGEST = /(whole-job|walk|bench)\.spec\.ts/

export default defineConfig({
  testDir: '.',
  outputDir: '../../test-results/browser',
  forbidOnly: true,
  fullyParallel: true,
  workers: 6, // a page waits, for the disk and for what it draws, more than half of its time
  // The longest first, so that none of them runs alone at the end.
  projects: [
    { name: 'whole jobs', testMatch: LONGEST },
    { name: 'pages', testIgnore: LONGEST },
  ],
  timeout: 600_000, // the longest is a whole job, a minute on a quiet machine; what hangs is found by the two below
  expect: { timeout: 60_000, toPass: { timeout: 60_000 } },
  reporter: [['list'], ['../run/playwright-counts.ts']],
  use: {
    launchOptions: { executablePath: CHROMIUM, args: [...CHROMIUM_FLAGS] },
    locale: 'en-US',
    timezoneId: 'UTC',
    viewport: { width: 1440, height: 900 },
    screenshot: 'only-on-failure',
    actionTimeout: 60_000, // says which action it was, not only that time ran out
  },
})
