import { describe, expect, it } from 'vitest'
import { inches } from '@/core/quantity'
import type { RunOutFinding } from '@/core/runout/findings'
import { runOutWords } from '@/ui/words/findings/runout-findings'

const SAID: {
  [C in RunOutFinding['code']]: readonly [Omit<Extract<RunOutFinding, { code: C }>, 'code'>, ...string[]]
} = {
  'places-not-whole': [{ places: 2.5 }, '2.5', 'how many marks'],
  'no-stations': [{}, 'one station at least'],
  'supports-too-close': [{ rear: inches(29), front: inches(31), least: inches(5) }, '29.00 in', '31.00 in', '5.0 in'],
  'stations-coincide': [{ at: inches(16), least: inches(0.25) }, '16.00 in', '0.25 in', 'Check where'],
  'window-longer-than-shaft': [
    { window: inches(33), raw: inches(32) },
    '33.00 in',
    '32.00 in',
    'shorter carbon to carbon',
  ],
  'run-out-extrapolated': [{ by: inches(0.5) }, '0.50 in', 'rollers further out'],
}

describe('what the models of run-out say', () => {
  it.each(Object.entries(SAID))('says %s with its numbers and what to change', (code, [finding, ...parts]) => {
    const said = runOutWords({ code, ...finding } as RunOutFinding)
    for (const part of parts) expect(said).toContain(part)
    expect(said).toMatch(/^[A-Z].*\.$/)
  })
})
