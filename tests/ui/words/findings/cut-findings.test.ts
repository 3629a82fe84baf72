import { describe, expect, it } from 'vitest'
import type { ClearanceName, CutFinding } from '@/core/cut/findings'
import { inches } from '@/core/quantity'
import { cutWords } from '@/ui/words/findings/cut-findings'

const SAID: { [C in CutFinding['code']]: readonly [Omit<Extract<CutFinding, { code: C }>, 'code'>, ...string[]] } = {
  'full-draw-not-known': [{ missing: ['rest', 'riser front'] }, 'the rest and the riser front', 'marked'],
  'full-draw-estimated': [{ what: 'riser front', at: inches(28.5) }, 'The riser front', '28.50 in', 'before cutting'],
  'mark-against-draw-length': [
    { what: 'rest', marked: inches(25), estimated: inches(27.25) },
    'the rest',
    '25.00 in',
    '27.25 in',
    'again',
  ],
  'clearance-short': [
    { what: 'blades ahead of the hand', has: inches(0.4), needs: inches(0.75) },
    'blades ahead of the hand',
    '0.40 in',
    '0.75 in',
    'Cut longer',
    'cut it',
  ],
  'clearance-against-stiffness': [{ clear: inches(28), longest: inches(27) }, '28.00 in', '27.00 in', 'stiffer shaft'],
  'clearance-against-raw-shaft': [
    { clear: inches(33), longest: inches(32) },
    '33.00 in',
    '32.00 in',
    'longer raw shaft',
  ],
  'stiffness-against-raw-shaft': [{ shortest: inches(33), longest: inches(32) }, '33.00 in', 'softer shaft'],
  'cut-wish-moved': [{ wish: inches(25), c2c: inches(26.875) }, '25.00 in', '26.875 in'],
  'raw-shaft-too-short': [{ raw: inches(30), c2c: inches(31) }, '30.00 in', '31.00 in', 'another shaft'],
  'too-little-to-cut': [{ spare: inches(0.1), least: inches(0.24) }, '0.10 in', '0.24 in', 'cut shorter'],
  'cut-from-one-end': [{ least: inches(0.24) }, '0.24 in', 'point end'],
  'cut-moved-along': [{ wished: inches(0.15), offNock: inches(0.24), least: inches(0.24) }, '0.15 in', '0.24 in'],
}

describe('what the models of the cut say', () => {
  it.each(Object.entries(SAID))('says %s with its numbers and what to change', (code, [finding, ...parts]) => {
    const said = cutWords({ code, ...finding } as CutFinding)
    for (const part of parts) expect(said).toContain(part)
    expect(said).toMatch(/^[A-Z].*\.$/)
  })

  it.each<ClearanceName>([
    'shaft front ahead of the rest',
    'blades ahead of the riser',
    'blades ahead of the hand',
    'blades off the riser',
    'vane off the cable',
    'vane tail ahead of the throat',
  ])('knows a cure for too little %s', (what) => {
    const said = cutWords({ code: 'clearance-short', what, has: inches(0.05), needs: inches(0.12) })
    expect(said).toMatch(/wanted\. (Cut|Choose|Set) /)
  })
})
