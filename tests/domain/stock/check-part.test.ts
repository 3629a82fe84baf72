import { describe, expect, it } from 'vitest'
import { DEMO_PARTS } from '@/demo/demo-parts'
import { contradictions } from '@/domain/stock/check-part'
import type { Part } from '@/domain/stock/part'
import { partProblemWords } from '@/ui/words/part-problem-words'

const demo = <T extends Part['kind']>(kind: T, name: string) =>
  DEMO_PARTS.find((part) => part.kind === kind && part.name === name)! as Extract<Part, { kind: T }>
const said = (part: Part) => contradictions(part).map(partProblemWords).join(' ')

describe('a part against itself', () => {
  it('finds nothing in a shelf that is right', () => {
    expect(DEMO_PARTS.filter((part) => contradictions(part).length > 0).map(({ name }) => name)).toEqual([])
  })

  it('asks about a weight that no body of its size and material has: grams for grains, a moved point, another metal', () => {
    const post = demo('insert', 'Long post 158')
    // Steel, 5.2 mm over 2.165 in and a shoulder of 7.2 mm: 2.62192 gr/mm [calculations 2.4] times 55 mm, and 7.6 gr.
    expect(said({ ...post, weightGr: 10.2 })).toMatch(/about 46 to 197 gr, not 10.2/)
    expect(said({ ...post, weightGr: 1580 })).toMatch(/Look at the weight, its unit/)
    expect(said({ ...post, material: 'aluminium 7075' })).toMatch(/about 16 to 69 gr/)
    expect(said({ ...post, material: 'carbon', weightGr: 1 })).toBe('')
    expect(said({ ...demo('collar', 'Ring 28'), weightGr: 1.8 })).toMatch(/Catalogue weight, each: of this size/)
    expect(said({ ...demo('outsert', 'Outsert 75'), weightGr: 750 })).toMatch(/of this size/)
    expect(said({ ...demo('rear weight', 'Rear weight 20'), lengthIn: 2.8 })).toMatch(/of this size/)
  })

  it('holds a shaft’s weight per inch against its wall', () => {
    const shaft = demo('shaft', 'Heron 200')
    expect(said({ ...shaft, weightPerInchGr: 1.18, weightGr: 1.18 * 32 })).toMatch(/Weight per inch: of this size/)
    expect(said({ ...shaft, innerDiameterMm: 7.1 })).toMatch(/Look at the weight/)
  })
})
