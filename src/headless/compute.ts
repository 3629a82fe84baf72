/** `npm run compute -- FILE [--working]`: figures of a sheet or of the open inputs as JSON; faults on stderr, exit code 2. */
import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import * as z from 'zod/mini'
import { computeFigures } from './compute-figures'

z.config(z.locales.en())

const FAULT = 2

function fail(...faults: readonly string[]): never {
  for (const fault of faults) process.stderr.write(`${fault}\n`)
  process.exit(FAULT)
}

const words = process.argv.slice(2)
const files = words.filter((word) => !word.startsWith('--'))
const unknown = words.find((word) => word.startsWith('--') && word !== '--working')
if (unknown !== undefined) fail(`${unknown}: not known; the only option is --working`)
const [file] = files
if (file === undefined || files.length > 1) fail('usage: npm run compute -- FILE [--working]')

/** npm changes the folder; the file was named from where the command was given. */
const path = resolve(process.env['INIT_CWD'] ?? process.cwd(), file)
let told: unknown
try {
  told = JSON.parse(readFileSync(path, 'utf8'))
} catch (error) {
  fail(`${file}: ${error instanceof SyntaxError ? `not JSON: ${error.message}` : 'cannot be read'}`)
}
const computed = computeFigures(told, words.includes('--working'))
if (!computed.ok) fail(...computed.faults)
process.stdout.write(`${JSON.stringify(computed.output, null, 2)}\n`)
