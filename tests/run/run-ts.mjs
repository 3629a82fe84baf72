// Runs a TypeScript file of this project in Node 20, which does not strip types by itself: node tests/run/run-ts.mjs FILE
import { fileURLToPath } from 'node:url'
import { runnerImport } from 'vite'

const top = (path) => fileURLToPath(new URL(`../../${path}`, import.meta.url))

await runnerImport(top(process.argv[2]), {
  root: top('.'),
  resolve: { alias: { '@': top('src'), '@tests': top('tests') } },
  logLevel: 'error',
})
