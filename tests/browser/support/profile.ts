/** A browser with a profile on the disk, which can be closed, or killed, and opened again: what it kept is still there. */
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type BrowserContext, chromium, type LaunchOptions } from '@playwright/test'
import { CHROMIUM } from '../../run/ensure-browser'
import { CHROMIUM_FLAGS } from './chromium-flags'

type ContextOptions = NonNullable<Parameters<typeof chromium.launchPersistentContext>[1]>

export interface Profile {
  readonly folder: string
  /** Opens the browser on the profile; closes the one that is open. */
  readonly open: (options?: ContextOptions) => Promise<BrowserContext>
  readonly close: () => Promise<void>
  readonly remove: () => Promise<void>
}

export async function newProfile(): Promise<Profile> {
  const folder = await mkdtemp(join(tmpdir(), 'grainwright-profile-'))
  let context: BrowserContext | undefined
  const close = async () => {
    await context?.close()
    context = undefined
  }
  const launch: LaunchOptions = { executablePath: CHROMIUM, args: [...CHROMIUM_FLAGS] }
  return {
    folder,
    close,
    open: async (options = {}) => {
      await close()
      context = await chromium.launchPersistentContext(folder, {
        ...launch,
        locale: 'en-US',
        timezoneId: 'UTC',
        viewport: { width: 1440, height: 900 },
        ...options,
      })
      return context
    },
    remove: async () => {
      await close()
      await rm(folder, { recursive: true, force: true, maxRetries: 3 })
    },
  }
}
