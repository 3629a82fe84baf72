import { describe, expect, it } from 'vitest'
import { SOURCES } from '@/core/sources'
import { barrels, forbiddenImports, importCycles, unknownLayers } from './layer-rules'
import { ALL, code, type Files, SRC } from './source-files'
import { drawers, handmadeQuantities, impurities, strayText, unexplainedLength, unknownSources } from './text-rules'

const CODE = code(SRC)
const UNKNOWN = `[${'HEARSAY'}]`
const KEYS = new Set<string>(Object.keys(SOURCES))

/** Each rule holds for the project, and is seen to break on a file planted for it. */
const RULES: readonly {
  readonly name: string
  readonly rule: (files: Files) => readonly string[]
  readonly files: Files
  readonly planted: readonly (readonly [path: string, text: string])[]
}[] = [
  {
    name: 'knows every folder under src',
    rule: unknownLayers,
    files: SRC,
    planted: [['src/services/x.ts', 'export const x = 1']],
  },
  {
    name: 'imports only what its layer may',
    rule: forbiddenImports,
    files: { ...CODE, ...SRC },
    planted: [
      ['src/core/x.ts', "import { reading } from '../domain/bench/reading'"],
      ['src/core/x.ts', "import * as z from 'zod/mini'"],
      ['src/domain/x.ts', "import type { Dexie } from 'dexie'"],
      ['src/state/x.ts', "import { openBook } from '../storage/book'"],
      ['src/ui/x.tsx', "const page = lazy(() => import('../storage/book'))"],
      ['src/ui/x.tsx', "export { commit } from '../storage/gateway'"],
      ['src/ui/x.tsx', "import {\n  readFileSync,\n} from 'node:fs'"],
      ['src/ui/x.tsx', "import './gone'"],
    ],
  },
  {
    name: 'has no ring of imports',
    rule: importCycles,
    files: CODE,
    planted: [
      ['src/core/x.ts', "import { x } from './x'"],
      ['src/core/quantity.ts', "import { known } from './outcome'"],
    ],
  },
  {
    name: 'has no file that only hands on others',
    rule: barrels,
    files: CODE,
    planted: [
      ['src/core/index.ts', 'export const x = 1'],
      ['src/core/all.ts', "export * from './outcome'\nexport { known } from './outcome'"],
    ],
  },
  {
    name: 'keeps clock and dice out of core and domain',
    rule: impurities,
    files: CODE,
    planted: [
      ['src/core/x.ts', 'const t = Date.now()'],
      ['src/domain/x.ts', 'const t = new Date()'],
      ['src/domain/x.ts', 'const t = new Date'],
      ['src/domain/x.ts', 'const t = Date()'],
      ['src/domain/x.ts', 'const x = Math.random()'],
      ['src/domain/x.ts', 'const id = crypto.randomUUID()'],
    ],
  },
  {
    name: 'makes quantities only in core/quantity.ts',
    rule: handmadeQuantities,
    files: CODE,
    planted: [
      ['src/core/x.ts', 'const m = 1 as Mass'],
      ['src/domain/x.ts', "const m = 1 as Quantity<'mass'>"],
      ['src/core/quantity.ts', 'export const nothing = 0'],
    ],
  },
  {
    name: 'cites only sources that are in the table',
    rule: (files) => unknownSources(files, KEYS),
    files: code(ALL),
    planted: [
      ['src/core/x.ts', `const K = 1 // exact ${UNKNOWN}`],
      ['src/core/x.ts', `/**\n * Source: ${UNKNOWN} eq. 3.\n */`],
    ],
  },
  {
    name: 'says why a file is long',
    rule: unexplainedLength,
    files: Object.fromEntries(Object.entries(ALL).filter(([path]) => /\.(tsx?|mjs|css)$/.test(path))),
    planted: [
      ['src/core/x.ts', 'x()\n'.repeat(251)],
      ['tests/x.test.ts', 'x()\n'.repeat(251)],
      ['src/ui/x.module.css', 'a {}\n'.repeat(251)],
      ['src/core/x.ts', `// long because\n${'x()\n'.repeat(251)}`],
    ],
  },
  {
    name: 'has no drawer for anything',
    rule: drawers,
    files: ALL,
    planted: [
      ['src/core/utils/x.ts', ''],
      ['src/ui/helpers.ts', ''],
    ],
  },
  {
    name: 'speaks of no machine, registry or unfinished work',
    rule: strayText,
    files: ALL,
    planted: [
      ['docs/x.md', `see ${'/wo'}rk/notes`],
      ['src/core/x.ts', `// ${'TO'}DO`],
      ['src/core/x.ts', `const x = (y as ${'any'}).z`],
      ['README.md', `https://registry.${'npm'}js.org/x`],
    ],
  },
]

describe.each(RULES)('the project $name', ({ rule, files, planted }) => {
  it('throughout', () => {
    expect(Object.keys(files).length).toBeGreaterThan(20)
    expect(rule(files)).toEqual([])
  })

  it.each(planted)('and is seen not to, with a planted %s', (path, text) => {
    expect(rule({ ...files, [path]: text })).not.toEqual([])
  })
})

describe('a rule', () => {
  it('lets types point both ways, and a long file say why', () => {
    const both = {
      'src/core/a.ts': "import type { B } from './b'",
      'src/core/b.ts': "import { a } from './a'",
    }
    expect(importCycles(both)).toEqual([])
    expect(unexplainedLength({ 'src/core/x.ts': `// long because it is one table\n${'x()\n'.repeat(251)}` })).toEqual(
      [],
    )
  })
})
