/** What a file imports, read from its text: the compiler's package exposes no reader for it. */
import { posix } from 'node:path'
import { type Files, withoutComments } from './source-files'

export interface Import {
  readonly specifier: string
  /** Gone at run time. */
  readonly typeOnly: boolean
}

const STATEMENT = /(?:^|[\n;])\s*(?:import|export)\s+(type\s)?(?:[\w*{}\s,$]+?\sfrom\s+)?['"]([^'"]+)['"]/g
const CALL = /\bimport\(\s*['"]([^'"]+)['"]\s*\)|\bnew URL\(\s*['"](\.[^'"]+)['"]\s*,\s*import\.meta\.url/g

export function importsOf(text: string): readonly Import[] {
  const plain = withoutComments(text)
  const statements = [...plain.matchAll(STATEMENT)].map((match) => ({
    specifier: match[2]!,
    typeOnly: match[1] !== undefined,
  }))
  const calls = [...plain.matchAll(CALL)].map((match) => ({ specifier: (match[1] ?? match[2])!, typeOnly: false }))
  return [...statements, ...calls].map((found) => ({ ...found, specifier: found.specifier.split('?')[0]! }))
}

/** The file a relative import means, or undefined when there is none. */
export function resolved(from: string, specifier: string, files: Files): string | undefined {
  const path = posix.join(posix.dirname(from), specifier)
  return [path, `${path}.ts`, `${path}.tsx`, `${path}.d.ts`].find((candidate) => candidate in files)
}

/** The package of a bare import: `zod/mini` is of zod, `node:fs` of node. */
export const packageOf = (specifier: string): string =>
  specifier.startsWith('node:') ? 'node' : specifier.split('/', specifier.startsWith('@') ? 2 : 1).join('/')
