import { readdirSync, readFileSync, statSync } from 'node:fs'
import { posix } from 'node:path'

/** The project's own text as the rules read it: path from the top → text. */
export type Files = Readonly<Record<string, string>>

const TOP_LEVEL = readdirSync('.').filter((name) => /\.(md|json|ts)$/.test(name) && name !== 'package-lock.json')
const TEXT = /\.(tsx?|mjs|css|html|md|json|svg|webmanifest)$|^\.ci\/|^\.(gitignore|npmrc)$/

const under = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => posix.join(folder, name))

const read = (paths: readonly string[]): Files =>
  Object.fromEntries(
    paths
      .filter((path) => TEXT.test(path) && statSync(path).isFile())
      .map((path) => [path, readFileSync(path, 'utf8')]),
  )

// Read from the disk, since a bundler's raw import still runs a style sheet through its own plugin.
export const SRC: Files = read(under('src'))

/** Everything of ours that is text: also tests, docs and configuration. */
export const ALL: Files = read([
  ...['src', 'tests', 'docs', 'public', '.ci', '.config'].flatMap(under),
  ...TOP_LEVEL,
  '.gitignore',
  '.npmrc',
])

export const code = (files: Files): Files =>
  Object.fromEntries(Object.entries(files).filter(([path]) => /\.tsx?$/.test(path)))

/** The comments of a file, one text each. */
export const commentsOf = (text: string): readonly string[] =>
  [...text.matchAll(/\/\*[\s\S]*?\*\/|(?<=^|[^:'"`\\])\/\/[^\n]*/g)].map(([comment]) => comment)

export const withoutComments = (text: string): string =>
  commentsOf(text).reduce((rest, comment) => rest.replace(comment, ''), text)
