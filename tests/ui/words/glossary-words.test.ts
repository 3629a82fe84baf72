import { expect, it } from 'vitest'
import { GLOSSARY } from '@/ui/words/glossary-words'
import { ALL } from '@tests/architecture/source-files'

/** As the app says it: no mark of whose word it is, and nothing about the code. */
const asSaid = (meaning: string) =>
  meaning
    .replace('*Own.* ', '')
    .split(/(?<=\.) /)
    .filter((sentence) => !sentence.includes('`'))
    .join(' ')
    .replaceAll("'", '’')

it('says of each word what the glossary of the project says', () => {
  const rows = [...ALL['docs/glossary.md']!.matchAll(/^\| ([^|]+) \| ([^|]+) \| [^|]* \|$/gm)]
    .filter(([, term]) => term !== 'term' && !term!.startsWith('---'))
    .map(([, term, meaning]) => [term!, asSaid(meaning!)])
  expect(rows.length).toBeGreaterThan(40)
  expect(GLOSSARY.flatMap(({ terms }) => terms)).toEqual(rows)
})
