/** What may not stand in the text of a file. Each rule answers with what breaks it. */
import { layerOf } from './layer-rules'
import { sentencesOf } from './sentences-of'
import { commentsOf, type Files, withoutComments } from './source-files'

const found = (files: Files, pattern: RegExp, of: (path: string) => boolean): readonly string[] =>
  Object.entries(files)
    .filter(([path]) => of(path))
    .flatMap(([path, text]) => [...withoutComments(text).matchAll(pattern)].map(([hit]) => `${path}: ${hit.trim()}`))

/** A clock or dice in the pure layers: the same input must always give the same answer. */
export const impurities = (files: Files): readonly string[] =>
  found(
    files,
    /\b(Date\.now|performance\.now|Math\.random|randomUUID|getRandomValues)\b|\bnew Date(\(\s*\)|(?!\s*\())|(?<!new )\bDate\(/g,
    (path) => ['core', 'domain'].includes(layerOf(path)),
  )

/** A brand put on by hand anywhere but in the file that knows units. */
export function handmadeQuantities(files: Files): readonly string[] {
  const home = 'src/core/quantity.ts'
  const names = [...(files[home] ?? '').matchAll(/^export type (\w+) = Quantity</gm)].map((match) => match[1]!)
  if (names.length === 0) return [`${home} declares no quantity`]
  return found(files, new RegExp(`\\bas (${names.join('|')}|Quantity\\s*<)`, 'g'), (path) => path !== home)
}

/** `[KEY]` in a comment that the table of sources does not have. */
export const unknownSources = (files: Files, keys: ReadonlySet<string>): readonly string[] =>
  Object.entries(files).flatMap(([path, text]) =>
    commentsOf(text)
      .flatMap((comment) => [...comment.matchAll(/(?<![\w`])\[([A-Z][A-Z0-9_-]+)\](?!`)/g)].map((match) => match[1]!))
      .filter((key) => !keys.has(key))
      .map((key) => `${path}: [${key}]`),
  )

const LONGEST = 250
const TOP = 12
/** Long files that do not say at their top why they are one thing: `long because …`. */
export const unexplainedLength = (files: Files): readonly string[] =>
  Object.entries(files)
    .filter(([, text]) => text.trimEnd().split('\n').length > LONGEST)
    .filter(([, text]) => !/long because \w/i.test(text.split('\n').slice(0, TOP).join('\n')))
    .map(([path, text]) => `${path}: ${text.trimEnd().split('\n').length} lines`)

/** Words that say nothing of what is in a folder or file. */
export const drawers = (files: Files): readonly string[] =>
  Object.keys(files).filter((path) => /(^|\/)(utils?|helpers?|types|common|misc|lib)(\/|\.\w+$)/.test(path))

// In pieces, so that this file does not break its own rule.
const MACHINE = ['/wo' + 'rk/', '/fa' + 'rm/', '/tm' + 'p/', '/ho' + 'me/', '/ro' + 'ot/', 'C:\\\\Us' + 'ers']
const HOSTS = ['npm' + 'js\\.(org|com)', 'deb\\.deb' + 'ian\\.org', 'registry\\.[a-z]+\\.[a-z]+', 'pypi\\.' + 'org']
const UNFINISHED = ['TO' + 'DO', 'FIX' + 'ME', '@ts-' + 'ignore', '@ts-' + 'nocheck']
const ESCAPES = ['\\.on' + 'ly\\(', '\\bas ' + 'any(?=[;,)\\]}.>\\n])']
/** Paths of somebody's machine, hosts of package registries, unfinished work and escapes from the compiler. */
export const strayText = (files: Files): readonly string[] => [
  ...hits(files, [...MACHINE, ...HOSTS, ...UNFINISHED], (text) => text),
  ...hits(files, ESCAPES, withoutComments),
]

const hits = (files: Files, patterns: readonly string[], part: (text: string) => string): readonly string[] =>
  Object.entries(files).flatMap(([path, text]) =>
    [...part(text).matchAll(new RegExp(patterns.join('|'), 'g'))].map(([hit]) => `${path}: ${hit}`),
  )

export interface Term {
  readonly term: string
  readonly avoid: readonly string[]
}
/** The rows of the glossary's tables: term | meaning | words to avoid. */
export const glossaryTerms = (page: string): readonly Term[] =>
  [...page.matchAll(/^\| ([^|]+) \| [^|]+ \| ([^|]*) \|$/gm)]
    .filter(([, term]) => term !== 'term' && !term!.startsWith('---'))
    .map(([, term, avoid]) => ({
      term: term!,
      avoid: avoid!
        .split(',')
        .map((word) => word.trim())
        .filter((word) => word !== '' && word !== '–'),
    }))

/** Words that the glossary avoids, in a text that a person may read. */
export function avoidedWords(files: Files, terms: readonly Term[]): readonly string[] {
  const avoided = terms.flatMap(({ avoid }) => avoid)
  if (avoided.length === 0) return ['the glossary avoids no word']
  const pattern = new RegExp(`(?<!virtual )\\b(${avoided.join('|')})\\b`, 'gi')
  return Object.entries(files).flatMap(([path, text]) =>
    sentencesOf(text).flatMap((said) =>
      [...said.matchAll(pattern)].map(([word]) => `${path}: “${word}” in ${said.trim()}`),
    ),
  )
}
