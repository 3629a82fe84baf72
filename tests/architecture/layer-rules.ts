/** Which layer may import what. A rule takes files and answers with what breaks it, so that each can be seen to break. */
import { importsOf, packageOf, resolved } from './imports'
import type { Files } from './source-files'

/** layer → what it may import: our own layers, then packages. `main` is what stands in src itself. */
export const ALLOWED: Readonly<Record<string, readonly string[]>> = {
  core: ['core'],
  domain: ['core', 'domain', 'zod', '@noble/hashes', 'microdiff', 'uuid'],
  storage: ['core', 'domain', 'storage', 'dexie', 'zod', '@noble/hashes'], // zod and hashes for the backup file
  state: ['core', 'domain', 'state', 'zustand'],
  workers: ['core', 'domain', 'workers', 'comlink'],
  ui: ['core', 'domain', 'state', 'ui', 'react', 'react-dom', 'zustand', 'wouter', 'd3-scale', 'd3-shape', 'uqr'],
  demo: ['core', 'domain', 'demo'],
  headless: ['core', 'domain', 'headless', 'zod', 'node'], // zod for the file it is given
  main: [
    'core',
    'domain',
    'storage',
    'state',
    'workers',
    'ui',
    'demo',
    'main',
    'react',
    'react-dom',
    'zod',
    'comlink',
    '@fontsource/b612',
  ],
}

/** The layer of a file under src. */
export const layerOf = (path: string): string => {
  const [, folder, ...rest] = path.split('/')
  return rest.length === 0 ? 'main' : folder!
}

/** Folders under src that no row of the table knows: a new layer is a decision. */
export const unknownLayers = (files: Files): readonly string[] =>
  Object.keys(files).filter((path) => !(layerOf(path) in ALLOWED))

export function forbiddenImports(files: Files): readonly string[] {
  return Object.entries(files).flatMap(([path, text]) =>
    importsOf(text).flatMap(({ specifier }) => {
      const allowed = ALLOWED[layerOf(path)] ?? []
      if (!specifier.startsWith('.')) {
        const styled =
          specifier.endsWith('.css') && layerOf(path) === 'ui' && packageOf(specifier) === '@fontsource/b612'
        return styled || allowed.includes(packageOf(specifier)) ? [] : [`${path} imports ${specifier}`]
      }
      const target = resolved(path, specifier, files)
      if (target === undefined) return [`${path} imports ${specifier}, which is not there`]
      return allowed.includes(layerOf(target)) ? [] : [`${path} imports ${target}`]
    }),
  )
}

/** Rings of files that need each other at run time; types alone may point both ways. */
export function importCycles(files: Files): readonly string[] {
  const targets = new Map(
    Object.entries(files).map(([path, text]) => [
      path,
      importsOf(text)
        .filter(({ specifier, typeOnly }) => !typeOnly && specifier.startsWith('.'))
        .flatMap(({ specifier }) => resolved(path, specifier, files) ?? []),
    ]),
  )
  const done = new Set<string>()
  const cycles: string[] = []
  const visit = (path: string, trail: readonly string[]) => {
    if (trail.includes(path)) return void cycles.push([...trail.slice(trail.indexOf(path)), path].join(' → '))
    if (done.has(path)) return
    for (const target of targets.get(path) ?? []) visit(target, [...trail, path])
    done.add(path)
  }
  for (const path of targets.keys()) visit(path, [])
  return cycles
}

/** Files that only hand on what others export. */
export const barrels = (files: Files): readonly string[] =>
  Object.entries(files)
    .filter(([path, text]) => {
      const statements =
        text.match(/^(import|export|const|function|class|interface|type|declare|createRoot)\b.*$/gm) ?? []
      const handsOn = statements.filter((line) => /^export (type )?(\*|\{[^}]*\}) from/.test(line))
      return /\/index\.tsx?$/.test(path) || (handsOn.length > 0 && handsOn.length === statements.length)
    })
    .map(([path]) => path)
