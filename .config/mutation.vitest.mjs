// One area of src/core at a time, named in AREA, against its own tests and its section of docs/calculations.md.
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const top = (path) => fileURLToPath(new URL(`../${path}`, import.meta.url))
const area = process.env.AREA

export default defineConfig({
  root: top('.'),
  resolve: { alias: { '@': top('src'), '@tests': top('tests') } },
  test: {
    testTimeout: 60_000,
    // Stiffness: comparisons of seconds each, so that the run ends within the hour. What they alone would find counts as survived.
    ...(area === 'stiffness' ? { testNamePattern: /^(?!.*(dense|shooting|whatever)).*$/ } : {}),
    include: [`tests/core/${area}/**/*.test.ts`, ...(area === 'numeric' ? [] : ['tests/mutation/*.test.ts'])],
    // Seconds a run, and it says nothing that the others do not.
    exclude: ['**/forecast-coverage.test.ts'],
  },
})
