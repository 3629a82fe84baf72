import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import { defineConfig } from 'vitest/config'
import { contentSecurityPolicy } from './.config/content-security-policy.ts'
import { precache } from './.config/precache.ts'

const top = (path: string) => fileURLToPath(new URL(path, import.meta.url))

/** With a certificate here the preview serves https, which other devices in a shop need. See README. */
const key = top('shop.key.local')
const cert = top('shop.crt.local')
const https = existsSync(key) && existsSync(cert) ? { key: readFileSync(key), cert: readFileSync(cert) } : undefined

export default defineConfig(({ isSsrBuild = false }) => ({
  root: top('src'),
  base: './',
  publicDir: top('public'),
  cacheDir: top('node_modules/.cache/vite'),
  plugins: [react(), contentSecurityPolicy(), precache()],
  resolve: { alias: { '@': top('src'), '@tests': top('tests') } },
  // Whatever the environment says: only the durability harness, with a page of its own, ever commits less strictly.
  define: { GRAINWRIGHT_DURABILITY: '"strict"' },
  worker: { format: 'es' },
  build: isSsrBuild
    ? { outDir: top('dist-node'), emptyOutDir: true, target: 'node20', copyPublicDir: false }
    : {
        outDir: top('dist'),
        emptyOutDir: true,
        target: 'es2023',
        manifest: true,
        assetsInlineLimit: 0,
        modulePreload: { polyfill: false },
        // The first load lists every file of the later pages by name, and a hash is what does not compress; seven characters
        // tell 4·10¹² contents apart.
        rolldownOptions: {
          output: {
            chunkFileNames: 'assets/[name]-[hash:7].js',
            assetFileNames: 'assets/[name]-[hash:7][extname]',
            // All of the first load in one file: what it shares with later pages would else be forty, each compressed alone.
            codeSplitting: {
              groups: [{ name: 'first', tags: ['$initial'], test: (id) => !/src\/(main\.tsx|index\.html)$/.test(id) }],
            },
          },
        },
      },
  preview: { port: 4180, strictPort: true, ...(https === undefined ? {} : { https }) },
  test: {
    root: top('.'),
    maxWorkers: 2,
    testTimeout: 180_000, // for what hangs; no test is timed
    setupFiles: [top('tests/support/seed.ts')],
    projects: [
      {
        extends: true,
        test: {
          name: 'pure',
          environment: 'node',
          isolate: false, // modules are read once a worker; no test leaves anything in one
          include: ['tests/{core,domain,storage,state,workers,demo,headless,architecture,run}/**/*.test.ts'],
        },
      },
      {
        extends: true,
        // One jsdom for all: making it costs more than most of the tests.
        test: { name: 'ui', environment: 'jsdom', isolate: false, include: ['tests/ui/**/*.test.{ts,tsx}'] },
      },
    ],
  },
}))
