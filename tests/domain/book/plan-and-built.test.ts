import { describe, expect, it } from 'vitest'
import { planAndBuilt } from '@/domain/book/plan-and-built'
import { DEFAULT_RULES } from '@/domain/shop/rules'
import { arrowBuilt } from '@tests/support/arrow-built'
import { demoSheet } from '@tests/support/demo-sheet'

const sheet = demoSheet({ targetGr: 815, c2cIn: 28, quantity: 2 })
const arrows = [
  arrowBuilt(1, { c2c: 28.01, headWeight: 250.6, finishedWeight: 815.4, cutRunOut: 0.001 }),
  arrowBuilt(2, { c2c: 27.99, finishedWeight: 814.9 }),
]
const rows = planAndBuilt(sheet, arrows)
const row = (point: string) => rows.find((each) => each.point === point)!

describe('the plan beside as-built', () => {
  // Worked by hand from the readings above and the plan's own numbers.
  it('sets each planned number beside what was read, arrow by arrow, with the mean of the difference', () => {
    expect(row('finishedWeight')).toMatchObject({
      planned: 815,
      half: DEFAULT_RULES.toleranceGr,
      built: [815.4, 814.9],
    })
    expect(row('finishedWeight').off).toBeCloseTo(0.15, 9)
    expect(row('c2c').outside).toEqual([])
    expect(
      planAndBuilt(sheet, [arrowBuilt(1, { c2c: 28.05 }), ...arrows]).find(({ point }) => point === 'c2c')!.outside,
    ).toEqual([0])
    expect(row('c2c').off).toBeCloseTo(0, 9)
    expect(row('headWeight').planned).toBeCloseTo(250, 9)
    expect(row('headWeight').built).toEqual([250.6, undefined])
    expect(row('headWeight').off).toBeCloseTo(0.6, 9)
  })

  // Mean head 251, so the set was trimmed to 815 − 251 = 564 less head: 563.9 and 564.6 were built.
  it('holds each finished weight against its own head, where all heads were read', () => {
    const [finished] = planAndBuilt(sheet, [
      arrowBuilt(1, { headWeight: 249, finishedWeight: 812.9 }),
      arrowBuilt(2, { headWeight: 253, finishedWeight: 817.6 }),
    ]).filter(({ point }) => point === 'finishedWeight')
    expect(finished).toMatchObject({ planned: 815, outside: [1], isOfOwnHead: true })
    expect(finished!.off).toBeCloseTo(0.25, 9)
    expect(row('finishedWeight').isOfOwnHead).toBe(false)
  })

  it('speaks of nothing that was not read, or that the sheet does not plan', () => {
    expect(rows.map(({ point }) => point)).toEqual(['c2c', 'headWeight', 'finishedWeight'])
    expect(planAndBuilt(sheet, [])).toEqual([])
    expect(planAndBuilt({ ...sheet, plan: { ...sheet.plan, lines: [] } }, arrows)).toEqual([])
  })

  // The bench weighs the post with what is screwed to it, and the nock in its bushing: 158 + 20, and 178.3 was read.
  it('reckons with every part that lay on the scale', () => {
    const heavy = demoSheet({ targetGr: 835, c2cIn: 28 }, [
      'Heron 200',
      'Long post 158',
      'Rear weight 20',
      'Two-blade 250',
      'Clip 11',
      'Slow epoxy',
    ])
    const [insert] = planAndBuilt(heavy, [arrowBuilt(1, { insertWeight: 178.3 })])
    expect(insert!.planned).toBeCloseTo(178, 9)
    expect(insert!.off).toBeCloseTo(0.3, 9)
  })

  it('reckons the dry weight without the glue that comes after it', () => {
    const [dry] = planAndBuilt(sheet, [arrowBuilt(1, { dryWeight: 820 })])
    const glued = planAndBuilt(
      demoSheet({ targetGr: 815, c2cIn: 28 }, [
        'Heron 200',
        'Long post 158',
        'Ring 15',
        'Two-blade 250',
        'Clip 11',
        'Vane glue',
      ]),
      [arrowBuilt(1, { dryWeight: 820 })],
    )
    expect(dry!.planned).toBeCloseTo(glued[0]!.planned, 6)
  })
})
