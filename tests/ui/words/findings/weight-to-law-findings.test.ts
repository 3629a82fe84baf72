import { describe, expect, it } from 'vitest'
import { lawCheck } from '@/core/law/law-check'
import { PLACE_RULES } from '@/core/law/place-rules'
import { celsius, grains, hours, inches, millimetres, percent, poundsForce } from '@/core/quantity'
import { spreadOver } from '@/core/statistics/findings'
import { balanceWords } from '@/ui/words/findings/balance-findings'
import { cureWords } from '@/ui/words/findings/cure-findings'
import { lawVerdictWords, lawWords } from '@/ui/words/findings/law-findings'
import { statisticsWords } from '@/ui/words/findings/statistics-findings'
import { trimWords } from '@/ui/words/findings/trim-findings'
import { weightWords } from '@/ui/words/findings/weight-findings'
import { answer } from '@tests/support/answer'

const g = grains

describe('weightWords', () => {
  it.each([
    [
      { code: 'lot-off-catalogue', mean: g(100.62), nominal: g(100), tolerance: g(0.5), pieces: 3 },
      'The 3 pieces of this lot weighed so far come to 100.62 gr each; the catalogue says 100.0 gr ± 0.5 gr.',
    ],
    [
      { code: 'surprising-reading', reading: g(102), expected: g(100), low: g(99), high: g(101) },
      '102.0 gr is a surprise: this lot has been giving 99.0 gr to 101.0 gr, about 100.0 gr.',
    ],
    [{ code: 'nothing-to-forecast' }, 'There is no part to weigh up yet.'],
    [
      { code: 'lighter-than-its-parts', whole: g(370), parts: g(371) },
      'The whole weighs 370.0 gr, less than its parts',
    ],
    [{ code: 'scale-off', by: g(0.3), checkWeight: g(1000) }, 'of 1000.0 gr too heavy by 0.30 gr'],
    [{ code: 'scale-off', by: g(-0.3), checkWeight: g(1000) }, 'of 1000.0 gr too light by 0.30 gr'],
  ] as const)('says %o', (finding, words) => expect(weightWords(finding)).toContain(words))
})

describe('balanceWords', () => {
  it.each([
    [
      { code: 'length-to-head-tip', length: inches(30.2), focAsRead: percent(12.914) },
      'The length of 30.20 in was read to the tip of the head, which would give 12.91 % FOC.',
    ],
    [
      { code: 'length-to-head-tip', length: inches(30.2), focAsRead: percent(12.914), foc: percent(15.517) },
      'with the head taken off, FOC is 15.52 %.',
    ],
    [
      { code: 'balance-disagrees', measured: inches(20.1), computed: inches(20), allowed: inches(0.05) },
      'The arrow balances at 20.10 in; its parts say 20.00 in, and the two may differ by 0.05 in at most.',
    ],
  ] as const)('says %o', (finding, words) => expect(balanceWords(finding)).toContain(words))
})

describe('trimWords', () => {
  it.each([
    [
      { code: 'trim-into-bond', wanted: g(50), available: g(39.3), leastBond: millimetres(25) },
      '50.0 gr must come off and the post can give 39.3 gr before less than 25.0 mm of bond is left.',
    ],
    [{ code: 'trim-into-bond', wanted: g(6), available: g(1) }, 'Stop at the bond that must stay'],
    [{ code: 'light-arrow', by: g(1.1) }, 'The arrow is light by 1.1 gr.'],
    [{ code: 'chamfer-takes-more', chamfer: g(0.28), wanted: g(0.1) }, 'Breaking the edge takes 0.28 gr'],
    [{ code: 'pass-too-coarse', above: g(0.4) }, 'still heavy by 0.4 gr'],
    [{ code: 'no-mend', short: g(5), fixed: ['shaft cut', 'fletched'] }, 'Now that the shaft is cut, the vanes are on'],
    [{ code: 'no-mend', short: g(5), fixed: [] }, 'Nothing on the list makes up 5.0 gr. Add'],
    [{ code: 'no-such-part', part: 'insert', change: 'next insert' }, '“next insert” would replace the insert'],
  ] as const)('says %o', (finding, words) => expect(trimWords(finding)).toContain(words))
})

describe('statisticsWords', () => {
  it.each([
    [
      { code: 'too-few-values', figure: 'control limits', got: 1, needed: 2 },
      '1 value for the control limits; it needs 2',
    ],
    [{ code: 'too-few-values', figure: 'mean head', got: 0, needed: 1 }, 'no value yet for the mean head; it needs 1'],
    [{ code: 'no-spread', figure: 'capability' }, 'no capability can be worked out'],
    [{ code: 'beyond-control-limits', places: [31] }, 'Reading 31 beyond the control limits.'],
    [{ code: 'beyond-control-limits', places: [31, 62] }, 'Readings 31, 62 beyond'],
    [spreadOver(g(1.2), g(1), 'gr'), 'Lightest and heaviest lie 1.20 gr apart; the shop allows 1.00 gr.'],
  ] as const)('says %o', (finding, words) => expect(statisticsWords(finding)).toContain(words))
})

describe('cureWords', () => {
  it.each([
    [
      { code: 'too-cold-to-cure', at: celsius(10), least: celsius(13) },
      'At 10 °C this glue does not cure; it needs 13 °C',
    ],
    [{ code: 'too-hot-to-cure', at: celsius(50), most: celsius(45) }, '50 °C is too hot'],
    [{ code: 'cure-times-reversed', handle: hours(30), shoot: hours(24), full: hours(168) }, '30.0 h, 24.0 h, 168.0 h'],
  ] as const)('says %o', (finding, words) => expect(cureWords(finding)).toContain(words))
})

describe('lawWords', () => {
  const figures = { drawWeight: poundsForce(38), game: 'moose', arrowWeight: g(825), arrowLength: inches(28) }
  const [alaska] = PLACE_RULES

  it('names the instrument, the figure and its least, and sends to the authority', () => {
    const outcome = lawCheck(alaska!, figures)
    const words = outcome.findings.map((finding) =>
      finding.code === 'legal-figure-not-met' || finding.code === 'check-with-authority' ? lawWords(finding) : '',
    )
    expect(words[0]).toBe(
      'The peak draw weight of 38.0 lb does not meet the 40.0 lb of Alaska, 5 AAC 92.085 (date not noted).',
    )
    expect(words.at(-1)).toBe(
      'Figures of Alaska, 5 AAC 92.085 (date not noted), as guidance. Check with the authority, the outfitter and the licensed guide.',
    )
    expect(lawVerdictWords(answer(outcome))).toBe(
      'Does not meet the figures of Alaska, 5 AAC 92.085 (date not noted); check with the authority.',
    )
  })

  it('says of every verdict of every rule no more than that figures are met', () => {
    for (const rule of PLACE_RULES) {
      for (const given of [{}, figures, { ...figures, drawWeight: poundsForce(80) }]) {
        const words = lawVerdictWords(answer(lawCheck(rule, given)))
        expect(words).toMatch(
          /^(Meets the figures of|Does not meet the figures of|Not everything is known or confirmed for) /,
        )
        expect(words).toMatch(/; check with the authority\.$/)
        expect(words).not.toMatch(/legal|lawful|allowed/i)
      }
    }
  })

  it('says when an instrument names nothing for the game', () => {
    const finding = {
      code: 'rule-silent-on-game',
      place: 'Victoria',
      instrument: 'X',
      dated: '2012',
      game: 'wapiti',
    } as const
    expect(lawWords(finding)).toContain('Victoria, X (dated 2012) names no figure for wapiti here.')
  })
})
