import { describe, expect, it } from 'vitest'
import { outsideModel } from '@/core/finding'
import { bounds } from '@/core/outcome'
import { grains, grainsPerInch, kilogramsPerNewton, poundsForce } from '@/core/quantity'
import { findingLevel } from '@/ui/words/finding-level'
import { findingWords } from '@/ui/words/finding-words'

const WEIGHTS = bounds(grains(100), grains(2000))

describe('the words of a finding', () => {
  it('name the input, what it is, what it may be, in the unit people use', () => {
    expect(findingWords(outsideModel('arrow mass', grains(5), WEIGHTS, 'gr'))).toBe(
      'The arrow mass is 5; this can be worked out for 100 to 2000 grains. Change the arrow mass.',
    )
    expect(
      findingWords(
        outsideModel('weight per inch', grainsPerInch(40), bounds(grainsPerInch(1), grainsPerInch(30)), 'gr/in'),
      ),
    ).toMatch(/is 40; .* 1 to 30 grains per inch/)
  })

  it('say that an input is no number', () => {
    expect(findingWords(outsideModel('arrow mass', grains(Number.NaN), WEIGHTS, 'gr'))).toMatch(
      /^The arrow mass is no number;/,
    )
    expect(findingWords(outsideModel('arrow mass', grains(Number.POSITIVE_INFINITY), WEIGHTS, 'gr'))).toMatch(
      /is no finite number;/,
    )
  })

  it('stop only at what can hurt someone', () => {
    const light = (severity: 'below-floor' | 'below-advised') =>
      findingLevel({
        code: 'arrow-light-for-bow',
        severity,
        at: kilogramsPerNewton(0.0006),
        limit: kilogramsPerNewton(0.0007),
        peakDrawWeight: poundsForce(70),
        source: 'CP',
      })
    expect([light('below-floor'), light('below-advised')]).toEqual(['stop', 'look'])
    expect(findingLevel(outsideModel('arrow mass', grains(5), WEIGHTS, 'gr'))).toBe('look')
  })
})
