/** Builds the pattern page, which shows every control and figure with sample values; it is no part of the app. */
import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url))

export default defineConfig({
  root: at('.'),
  base: './',
  cacheDir: at('../../../node_modules/.cache/vite-patterns'),
  plugins: [react()],
  resolve: { alias: { '@': at('../../../src'), '@tests': at('../../../tests') } },
  build: {
    outDir: at('../../../node_modules/.cache/patterns'),
    emptyOutDir: true,
    target: 'es2023',
    assetsInlineLimit: 0,
  },
})
