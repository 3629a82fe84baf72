import { describe, expect, it } from 'vitest'
import { inGrains } from '@/core/quantity'
import type { DataPoint } from '@/domain/bench/data-points'
import { glueAdvice } from '@/domain/bench/glue-advice'
import { setLanding } from '@/domain/bench/set-forecast'
import { takeReading } from '@/domain/bench/take-reading'
import { landedWet } from '@/domain/bench/taking-at'
import { fixedOn } from '@/domain/bench/mends-for'
import { newEvent, newFact } from '@/domain/records/write'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import { demoSheet } from '@tests/support/demo-sheet'
import { inMemoryJob, opened } from '@tests/support/in-memory-job'
import { testId } from '@tests/support/test-id'

const JOB = testId(9000)
const ARROW = testId(20_000)
const AT = '2026-01-01T00:00:00.000Z'
const SHEET = demoSheet({ targetGr: 785, c2cIn: 28, quantity: 1 })
const TAKING = { source: 'typed', scale: 'Scale 1', stable: true, attempt: 1, takenAt: AT } as const

async function arrowWith(weights: readonly (readonly [DataPoint, string])[], confirmed: readonly string[] = []) {
  const fact = newFact({ by: 'Ilse', at: AT }, 'sheet', JOB, SHEET)
  const { perform, begun } = inMemoryJob([
    opened(JOB),
    newEvent('frozen', { job: JOB }, { sheet: fact.hash, version: 1 }),
    newEvent('setStarted', { job: JOB }, { sheet: fact.hash, arrows: [{ id: ARROW, no: 1, code: 'T/1' }] }),
  ])
  const started = await begun
  const read = weights.map(([point, raw]) => {
    const answer = takeReading(raw, { ...TAKING, point }, true)
    if (answer.kind !== 'taken') throw new Error(`not taken: ${raw}`)
    return newEvent('read', { job: JOB, arrow: ARROW }, { step: 'bond', reading: answer.reading })
  })
  const done = confirmed.map((step) => newEvent('confirmed', { job: JOB, arrow: ARROW }, { step }))
  const { bench } = read.length + done.length === 0 ? started : await perform([...read, ...done])
  const worked = sheetFigures(SHEET)!
  const own = setLanding(bench!, SHEET, worked.items).arrows.get(ARROW)!
  return { own, bench: bench!, glue: glueAdvice(own, worked, SHEET) }
}

describe('the glue of one arrow', () => {
  it('is not spoken of before the arrow was weighed dry', async () => {
    expect((await arrowWith([])).glue).toBeUndefined()
  })

  it('is what the last dry weight leaves to the target, and what the scale should show is the target', async () => {
    const { glue, own } = await arrowWith([
      ['headWeight', '250.0'],
      ['dryWeight', '790.0'],
      ['trimWeight', '782.7'],
      ['edgeWeight', '782.4'],
    ])
    expect(glue?.advice.ok && glue.advice.value.next).toBe('spread')
    expect(inGrains(glue!.weighs)).toBeCloseTo(inGrains(own.target), 9)
    expect(inGrains(glue!.change)).toBeCloseTo(785 - 782.4, 6)
  })

  it('counts what breaking the edge took where the arrow was not weighed again', async () => {
    const unweighed = await arrowWith([['trimWeight', '782.7']], ['edge'])
    const before = await arrowWith([['trimWeight', '782.7']])
    // 0.5 mm on a 5.2 mm post of 8.00 g/cm³: π·c²·(D/2 − c/3)·ρ, 0.236 gr
    expect(inGrains(unweighed.glue!.change) - inGrains(before.glue!.change)).toBeCloseTo(
      (Math.PI * 0.05 ** 2 * (0.26 - 0.05 / 3) * 8) / 0.064_798_91,
      2,
    )
  })

  it('is wiped while it is over, and the wet arrow is where it is heading then', async () => {
    const { glue, own } = await arrowWith([
      ['edgeWeight', '782.4'],
      ['bondWeight', '785.8'],
    ])
    expect(glue?.advice.ok && glue.advice.value.next).toBe('wipe')
    expect(inGrains(glue!.on!)).toBeCloseTo(3.4, 6)
    expect(inGrains(glue!.change)).toBeCloseTo(0.8, 6)
    expect(own.forecast.ok && inGrains(own.forecast.value.total.value)).toBeCloseTo(785.8, 6)
    expect(inGrains(own.over)).toBeCloseTo(0.8, 6)
  })

  it('makes the post final, as the bond confirmed does', async () => {
    const { bench } = await arrowWith([['bondWeight', '785.0']])
    expect(fixedOn(bench.arrows[0]!, bench)).toContain('post bonded')
  })
})

describe('a finished weight', () => {
  const finished = async (wet: string, raw: string) => {
    const { own } = await arrowWith([
      ['edgeWeight', '782.4'],
      ['bondWeight', wet],
    ])
    return takeReading(raw, { ...TAKING, point: 'finishedWeight', landed: landedWet(own, SHEET) })
  }

  it('that is off its number while the wet one was on it is asked about, and weighed again or taken', async () => {
    expect(await finished('785.1', '785.6')).toMatchObject({
      kind: 'asked',
      slips: [{ code: 'off-since-wet', value: 785.6, wet: 785.1 }],
    })
    expect(await finished('785.1', '784.4')).toMatchObject({ kind: 'asked' })
  })

  it('that is on its number, or was off it wet already, is taken', async () => {
    expect(await finished('785.1', '785.5')).toMatchObject({ kind: 'taken' })
    expect(await finished('785.7', '785.7')).toMatchObject({ kind: 'taken' })
  })
})
