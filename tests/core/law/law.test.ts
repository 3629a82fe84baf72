import { describe, expect, it } from 'vitest'
import { type LawFigures, lawCheck } from '@/core/law/law-check'
import type { PlaceRule } from '@/core/law/place-rule'
import { PLACE_RULES } from '@/core/law/place-rules'
import { grains, inches, millimetres, poundsForce } from '@/core/quantity'
import { answer } from '@tests/support/answer'

const rule = (place: string) => PLACE_RULES.find((each) => each.place === place)!
const ARROW: LawFigures = {
  drawWeight: poundsForce(72),
  arrowWeight: grains(825),
  arrowLength: inches(28),
  head: { kind: 'broadhead', width: inches(1.25) },
}
const check = (place: string, change: LawFigures = {}) => lawCheck(rule(place), { ...ARROW, ...change })
const verdicts = (place: string, change: LawFigures = {}) => answer(check(place, change)).rows.map((row) => row.verdict)

describe('PLACE_RULES', () => {
  // Each row as read: [AK-5AAC92], [WA-220-414-070], [AR-06.04], [VIC-2012] (since replaced), [ZW-SI114] (from press).
  it.each([
    ['Alaska', ['peak draw weight 40 lbf', 'peak draw weight 50 lbf', 'arrow length 20 in', 'arrow weight 300 gr']],
    [
      'Washington',
      [
        'peak draw weight 40 lbf',
        'arrow weight per draw weight 6 gr/lb',
        'arrow weight 300 gr',
        'broadhead width 0.875 in',
        'no barbs on the broadhead',
        'no electronics on the arrow',
      ],
    ],
    ['Arkansas', ['peak draw weight 35 lbf', 'broadhead width 0.875 in']],
    ['Victoria', ['peak draw weight 50 lbf', 'arrow weight 400 gr', 'peak draw weight 45 lbf', 'arrow weight 350 gr']],
    ['Zimbabwe', ['hunting with the bow', `broadhead width ${30 / 25.4} in`, 'trained guide']],
  ])('has the demands of %s', (place, demands) => {
    const rows = answer(lawCheck(rule(place), {})).rows
    const said = rows.map(({ demand, least }) =>
      least ? `${demand.what} ${+least.value.toPrecision(12)} ${least.unit}` : demand.what,
    )
    expect(said).toEqual(demands.map((each) => each.replace(`${30 / 25.4}`, `${+(30 / 25.4).toPrecision(12)}`)))
  })

  // As read, each with its instrument: [AK-5AAC92], [WA-220-414-070], [AR-06.04], [VIC-2012], [ZW-SI114].
  it.each([
    ['Alaska', '5 AAC 92.085', undefined, 'AK-5AAC92', 'read'],
    ['Washington', 'WAC 220-414-070', undefined, 'WA-220-414-070', 'read'],
    ['Arkansas', 'AGFC code 06.04', '2019', 'AR-06.04', 'read'],
    ['Victoria', 'Wildlife (Game) Regulations 2012', '2012', 'VIC-2012', 'since replaced'],
    ['Zimbabwe', 'SI 114 of 2019', '2019', 'ZW-SI114', 'from press'],
  ])('names instrument, date and standing of %s', (place, instrument, dated, source, standing) => {
    const { instrument: named, dated: on, source: from, standing: stands } = rule(place)
    expect([named, on, from, stands]).toEqual([instrument, dated, source, standing])
  })

  it.each([
    ['Alaska', ['', 'moose, elk, brown bear, musk ox, bison, goat', '', '']],
    [
      'Victoria',
      ['sambar, rusa, red deer', 'sambar, rusa, red deer', 'hog deer, fallow, chital', 'hog deer, fallow, chital'],
    ],
    ['Zimbabwe', ['buffalo', 'buffalo', 'buffalo']],
  ])('names the game that each demand of %s is for', (place, game) => {
    expect(rule(place).demands.map((demand) => demand.game?.join(', ') ?? '')).toEqual(game)
  })

  it('holds nothing that was not read', () => {
    expect(PLACE_RULES.map(({ place }) => place)).toEqual(['Alaska', 'Washington', 'Arkansas', 'Victoria', 'Zimbabwe'])
    expect(rule('Victoria').standing).toBe('since replaced')
    expect(rule('Zimbabwe').standing).toBe('from press')
  })
})

describe('lawCheck', () => {
  it('never says more than that figures are met, and always to ask the authority', () => {
    for (const each of PLACE_RULES) {
      const outcome = lawCheck(each, ARROW)
      expect(outcome.findings.at(-1)).toMatchObject({ code: 'check-with-authority', place: each.place })
      expect(['meets the figures', 'does not meet the figures', 'incomplete']).toContain(answer(outcome).verdict)
    }
  })

  it('asks for more draw weight for the larger game, and only for that', () => {
    const light = { drawWeight: poundsForce(45) }
    expect(answer(check('Alaska', { ...light, game: 'Moose' })).verdict).toBe('does not meet the figures')
    expect(answer(check('Alaska', { ...light, game: 'sitka deer' })).verdict).toBe('meets the figures')
    const [finding] = check('Alaska', { ...light, game: 'moose' }).findings
    expect(finding).toMatchObject({
      code: 'legal-figure-not-met',
      what: 'peak draw weight',
      instrument: '5 AAC 92.085',
    })
    expect(finding?.code === 'legal-figure-not-met' && [finding.at.value, finding.least.value]).toEqual([
      expect.closeTo(45, 9),
      expect.closeTo(50, 9),
    ])
  })

  it('is incomplete while rows depend on game that is not named', () => {
    expect(answer(check('Alaska')).verdict).toBe('incomplete')
    expect(answer(check('Alaska', { drawWeight: poundsForce(39) })).verdict).toBe('does not meet the figures')
    expect(answer(check('Alaska', { drawWeight: poundsForce(45) })).verdict).toBe('incomplete')
  })

  it('takes a figure that is exactly the least', () => {
    const exact = { game: 'deer', drawWeight: poundsForce(50), arrowWeight: grains(300), arrowLength: inches(20) }
    expect(answer(check('Alaska', exact)).verdict).toBe('meets the figures')
    const perPound = verdicts('Washington', { drawWeight: poundsForce(70), arrowWeight: grains(420) })
    expect(perPound[1]).toBe('meets')
    expect(verdicts('Washington', { drawWeight: poundsForce(70), arrowWeight: grains(419.9) })[1]).toBe('does not meet')
    expect(verdicts('Arkansas', { head: { kind: 'broadhead', width: inches(0.875) } })[1]).toBe('meets')
  })

  it('asks field points for no width', () => {
    expect(verdicts('Arkansas', { head: { kind: 'field point', width: millimetres(9) } })).toEqual([
      'meets',
      'not for this head',
    ])
    expect(answer(check('Arkansas', { head: { kind: 'field point' } })).verdict).toBe('meets the figures')
  })

  it('knows what it does not know', () => {
    expect(answer(lawCheck(rule('Arkansas'), {})).rows.map(({ verdict }) => verdict)).toEqual([
      'not known',
      'not known',
    ])
    expect(answer(lawCheck(rule('Arkansas'), { drawWeight: poundsForce(60) })).verdict).toBe('incomplete')
    expect(answer(lawCheck(rule('Washington'), { drawWeight: poundsForce(60) })).rows[1]!.verdict).toBe('not known')
    expect(answer(lawCheck(rule('Washington'), { arrowWeight: grains(500) })).rows[1]!.verdict).toBe('not known')
  })

  it('leaves what is no figure for a person to confirm', () => {
    expect(verdicts('Washington').slice(-2)).toEqual(['to confirm', 'to confirm'])
    expect(answer(check('Washington')).verdict).toBe('incomplete')
  })

  it('says when the instrument names nothing for the game', () => {
    const outcome = check('Victoria', { game: 'wapiti' })
    expect(answer(outcome)).toMatchObject({ rows: [], verdict: 'incomplete' })
    expect(outcome.findings).toMatchObject([
      { code: 'rule-silent-on-game', game: 'wapiti' },
      { code: 'check-with-authority', dated: '2012', standing: 'since replaced' },
    ])
    expect(answer(check('Victoria', { game: 'sambar' })).verdict).toBe('meets the figures')
  })

  it('takes a rule of the shop’s own, without a source', () => {
    const own: PlaceRule = { place: 'Here', instrument: 'Notice 1', dated: '2025', standing: 'read', demands: [] }
    const outcome = lawCheck(own, {})
    expect(answer(outcome).verdict).toBe('incomplete')
    expect(outcome.findings).toHaveLength(1)
    expect(outcome.ok && outcome.derivation.source).toEqual([])
  })

  it.each([
    ['draw weight', { drawWeight: poundsForce(NaN) }],
    ['arrow weight', { arrowWeight: grains(0) }],
    ['arrow length', { arrowLength: inches(Infinity) }],
    ['broadhead width', { head: { kind: 'broadhead' as const, width: inches(-1) } }],
  ])('names a %s it cannot take', (input, change) => {
    expect(check('Alaska', change)).toMatchObject({ ok: false, findings: [{ code: 'outside-model', input }] })
  })
})
