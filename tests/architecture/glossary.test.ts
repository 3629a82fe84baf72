import { describe, expect, it } from 'vitest'
import { ALL, code, SRC } from './source-files'
import { avoidedWords, glossaryTerms } from './text-rules'

const TERMS = glossaryTerms(ALL['docs/glossary.md'] ?? '')
const UI = Object.fromEntries(Object.entries(code(SRC)).filter(([path]) => path.startsWith('src/ui/')))

describe('the glossary', () => {
  it('names each term once', () => {
    const terms = TERMS.map(({ term }) => term)
    expect(terms.length).toBeGreaterThan(40)
    expect(new Set(terms).size).toBe(terms.length)
  })

  it('avoids no word that it uses for a term', () => {
    const terms = new Set(TERMS.map(({ term }) => term.toLowerCase()))
    expect(TERMS.flatMap(({ avoid }) => avoid).filter((word) => terms.has(word.toLowerCase()))).toEqual([])
  })
})

describe('what the screens say', () => {
  it('keeps to the glossary', () => {
    expect(avoidedWords(UI, TERMS)).toEqual([])
  })

  it.each([
    ['a quoted sentence', "const said = 'the total weight is'"],
    ['a text between tags', '<p>The mass on the scale</p>'],
    ['a template', 'const said = `${n} predicted weight`'],
  ])('is seen not to, in %s', (_where, text) => {
    expect(avoidedWords({ 'src/ui/x.tsx': text }, TERMS)).not.toEqual([])
  })
})
