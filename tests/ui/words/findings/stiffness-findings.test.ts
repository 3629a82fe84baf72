import { describe, expect, it } from 'vitest'
import { bounds } from '@/core/outcome'
import { inches, millimetres, ratio } from '@/core/quantity'
import type { StiffnessFinding } from '@/core/stiffness/findings'
import { stiffnessWords } from '@/ui/words/findings/stiffness-findings'

const band = bounds(ratio(0.75), ratio(1.3))
const spine = { spine: inches(0.25), reserve: ratio(0.61), wanted: ratio(0.75) }
const length = { length: inches(27.5), reserve: ratio(0.61), wanted: ratio(0.75) }

/** One of each code, what it must say of what was entered, and which input it must send the builder to. */
const SAID: {
  [C in StiffnessFinding['code']]: readonly [Omit<Extract<StiffnessFinding, { code: C }>, 'code'>, ...string[]]
} = {
  'part-runs-backwards': [
    { part: 'collar', from: inches(28), to: inches(27.25) },
    'collar',
    '28.00 in',
    '27.25 in',
    'swap',
  ],
  'shaft-has-no-length': [{ rear: inches(30), front: inches(28) }, '30.00 in', '28.00 in', 'arrow length'],
  'bore-wider-than-tube': [
    { part: 'post', bore: millimetres(6), outer: millimetres(5.2) },
    'post',
    '6.00 mm',
    '5.20 mm',
  ],
  'band-reversed': [{ low: ratio(1.3), high: ratio(0.75) }, '1.30', '0.75', 'shop’s rules'],
  'range-reversed': [{ shortest: inches(30), longest: inches(28) }, '30.00 in', '28.00 in', 'raw length'],
  'reserve-below-band': [{ reserve: ratio(0.7), band }, '0.70', '0.75', 'stiffer shaft', 'injure'],
  'reserve-above-band': [{ reserve: ratio(1.4), band }, '1.40', '1.30', 'softer shaft'],
  'no-spine-stiff-enough': [spine, '0.250 in', '0.61', '0.75', 'shorter'],
  'no-spine-soft-enough': [spine, '0.250 in', '0.61', 'draw weight'],
  'spine-range-cut-off': [{ spine: inches(3), end: 'softest' }, 'softest', '3.000 in'],
  'no-length-short-enough': [length, '27.50 in', '0.61', 'stiffer shaft'],
  'no-length-long-enough': [length, '27.50 in', '0.61', 'softer shaft'],
}

describe('what the stiffness models say', () => {
  it.each(Object.entries(SAID))('says %s with its numbers and what to change', (code, [finding, ...parts]) => {
    const said = stiffnessWords({ code, ...finding } as StiffnessFinding)
    for (const part of parts) expect(said).toContain(part)
    expect(said).toMatch(/^[A-Z].*\.$/)
  })
})
