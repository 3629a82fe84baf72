/**
 * What a visitor's browser must fetch before it can work, from the build's own manifest: the script of the first load at
 * most 120 kB gzip, of each page loaded later at most 60 (1 kB = 1000 bytes).
 */
import { readFileSync } from 'node:fs'
import { gzipSync } from 'node:zlib'
import type { Manifest } from 'vite'
import { tally } from './tally'

const FIRST_LOAD = 120
const LAZY_PAGE = 60

const manifest = JSON.parse(readFileSync('dist/.vite/manifest.json', 'utf8')) as Manifest
const entries = Object.keys(manifest).filter((key) => manifest[key]!.isEntry)
const firstLoad = new Set(entries.flatMap((key) => [...closure(key)]))
const { check, close } = tally()

await check(`first load is at most ${FIRST_LOAD} kB of script: ${kilobytes(firstLoad).toFixed(1)}`, () => {
  if (firstLoad.size === 0) throw new Error('the manifest names no entry')
  if (!(kilobytes(firstLoad) <= FIRST_LOAD)) throw new Error(breakdown(firstLoad))
})
for (const key of Object.keys(manifest).filter((key) => manifest[key]!.isDynamicEntry)) {
  const added = new Set([...closure(key)].filter((file) => !firstLoad.has(file)))
  await check(`${key} adds at most ${LAZY_PAGE} kB of script: ${kilobytes(added).toFixed(1)}`, () => {
    if (!(kilobytes(added) <= LAZY_PAGE)) throw new Error(breakdown(added))
  })
}
close()

/** The script files that loading a chunk brings with it. */
function closure(key: string, seen = new Set<string>()): Set<string> {
  const chunk = manifest[key]!
  if (!chunk.file.endsWith('.js') || seen.has(chunk.file)) return seen
  seen.add(chunk.file)
  for (const imported of chunk.imports ?? []) closure(imported, seen)
  return seen
}

function kilobytes(files: ReadonlySet<string>): number {
  return (
    [...files].reduce((total, file) => total + gzipSync(readFileSync(`dist/${file}`), { level: 9 }).length, 0) / 1000
  )
}

function breakdown(files: ReadonlySet<string>): string {
  return [...files].map((file) => `${file} ${kilobytes(new Set([file])).toFixed(1)} kB`).join('\n')
}
