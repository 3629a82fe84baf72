/** Builds the harness's page like the app is built, into a folder of its own, and serves it. */
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { build } from 'vite'
import { serve } from '@tests/browser/support/serve'
import type { Served } from '@tests/browser/support/serve'

export type Durability = 'strict' | 'relaxed'

export async function servePage(durability: Durability = 'strict'): Promise<Served> {
  const folder = await mkdtemp(join(tmpdir(), 'grainwright-page-'))
  await build({
    configFile: false,
    root: resolve('tests/durability/page'),
    logLevel: 'error',
    resolve: { alias: { '@': resolve('src') } },
    define: { GRAINWRIGHT_DURABILITY: JSON.stringify(durability) },
    build: { outDir: folder, emptyOutDir: true, target: 'es2023' },
  })
  const served = await serve(folder)
  return {
    ...served,
    stop: async () => {
      await served.stop()
      await rm(folder, { recursive: true, force: true })
    },
  }
}
