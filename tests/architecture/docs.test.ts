import { existsSync, readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { SOURCES } from '@/core/sources'
import { checksPage } from '@tests/core/outside-checks/page'
import { calculationsPage } from '@tests/core/worked-examples/page'
import { computePage, inputsSchemaText } from '@tests/headless/compute-page'
import { backupLineSchema } from './record-schemas'
import { ALL } from './source-files'

const STATUS = {
  P: 'published, read',
  C: 'computed twice, from published equations',
  M: 'from memory',
  CP: 'common practice, no source',
} as const

const sourcesPage = [
  '# Sources',
  '',
  'Everything a formula, constant, limit or caution is cited from. The page is made from `src/core/sources.ts` by',
  '`npm run docs`; a test fails when it is not current.',
  '',
  '| key | source | status |',
  '| --- | --- | --- |',
  ...Object.entries(SOURCES)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, { title, status }]) => `| ${key} | ${title} | ${STATUS[status]} |`),
  '',
].join('\n')

describe('the docs', () => {
  it('list every source', async () => {
    await expect(sourcesPage).toMatchFileSnapshot('../../docs/sources.md')
  })

  it('work every model through', async () => {
    await expect(calculationsPage()).toMatchFileSnapshot('../../docs/calculations.md')
  })

  it('describe every record as a JSON Schema', async () => {
    await expect(backupLineSchema).toMatchFileSnapshot('../../docs/schemas/backup-line.json')
  })

  it('list every check against the outside', async () => {
    await expect(checksPage()).toMatchFileSnapshot('../../docs/checks.md')
  })

  it('describe the compute command and its open format', async () => {
    await expect(computePage()).toMatchFileSnapshot('../../docs/compute.md')
    await expect(inputsSchemaText()).toMatchFileSnapshot('../../docs/inputs.schema.json')
  })

  it('number the decisions, each number once', () => {
    const names = readdirSync('docs/decisions')
    expect(names.length).toBeGreaterThan(3)
    expect(names.filter((name) => !/^\d{4}-[a-z0-9-]+\.md$/.test(name))).toEqual([])
    expect(new Set(names.map((name) => name.slice(0, 4))).size).toBe(names.length)
  })

  it('link only to what is there', () => {
    const pages = Object.entries(ALL).filter(([path]) => path.endsWith('.md'))
    const broken = pages.flatMap(([path, text]) =>
      [...text.matchAll(/\]\((?!https?:|#)([^)#\s]+)[^)]*\)/g)]
        .map(([, target]) => new URL(target!, `file:///${path}`).pathname.slice(1))
        .filter((target) => !existsSync(target))
        .map((target) => `${path} → ${target}`),
    )
    expect(broken).toEqual([])
  })

  it('name only commands that package.json has', () => {
    const scripts = Object.keys((JSON.parse(ALL['package.json']!) as { scripts: Record<string, string> }).scripts)
    const named = ['README.md', 'DEVELOPERS.md'].flatMap((path) =>
      [...ALL[path]!.matchAll(/npm run (?:-s )?([\w:]+)/g)].map((match) => match[1]!),
    )
    expect(named.filter((name) => !scripts.includes(name))).toEqual([])
  })
})
