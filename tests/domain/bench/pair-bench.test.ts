import { describe, expect, it } from 'vitest'
import { accepted } from '@/domain/bench/bench'
import type { DataPoint } from '@/domain/bench/data-points'
import { benchPairing, pairEvents } from '@/domain/bench/pair-bench'
import { setLanding } from '@/domain/bench/set-forecast'
import type { Job } from '@/domain/job/job'
import { newEvent } from '@/domain/records/write'
import type { EventDraft } from '@/domain/records/write'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import { demoSheet } from '@tests/support/demo-sheet'
import { inMemoryJob, opened } from '@tests/support/in-memory-job'
import { testId } from '@tests/support/test-id'

const JOB = testId(9000)
const HASH = 'a'.repeat(64)
const NOW = '2026-03-02T09:00:00.000Z'
const SHEET = demoSheet({ targetGr: 785, c2cIn: 28, quantity: 3 })
const WORKED = sheetFigures(SHEET)!

const read = (no: number, point: DataPoint, value: number): EventDraft =>
  newEvent(
    'read',
    { job: JOB, arrow: testId(20_000 + no) },
    {
      step: 'weigh parts',
      reading: {
        point,
        value,
        unit: 'gr',
        raw: `${value}`,
        source: 'typed',
        stable: true,
        attempt: 1,
        scale: 'Scale 1',
        takenAt: NOW,
      },
    },
  )
async function weighed(cut: readonly number[], inserts: readonly number[]) {
  const { perform, begun } = inMemoryJob([
    opened(JOB),
    newEvent('frozen', { job: JOB }, { sheet: HASH, version: 1 }),
    newEvent(
      'setStarted',
      { job: JOB },
      { sheet: HASH, arrows: cut.map((_, i) => ({ id: testId(20_001 + i), no: i + 1, code: `T/${i + 1}` })) },
    ),
  ])
  await begun
  const job = await perform([
    ...cut.map((gr, i) => read(i + 1, 'cutWeight', gr)),
    ...inserts.map((gr, i) => read(i + 1, 'insertWeight', gr)),
  ])
  return { job, perform }
}
const pairing = ({ bench }: Job) => benchPairing(bench!, SHEET, WORKED, setLanding(bench!, SHEET, WORKED.items))

describe('pairing a set on the bench', () => {
  it('waits until every arrow has its insert weighed', async () => {
    expect(pairing((await weighed([330, 331, 332], [158])).job)).toBeUndefined()
  })

  it('gives the heavy insert to the light shaft', async () => {
    const { job, perform } = await weighed([325, 330, 335], [156, 158, 160])
    const found = pairing(job)!
    expect(found.takes.map(({ from }) => from.insertWeight!.no)).toEqual([3, 2, 1])
    // 335 + 160 against 325 + 156 as it lies; 325 + 160 against 335 + 156 paired.
    expect(found.nowSpreadGr).toBeCloseTo(14, 9)
    expect(found.paired.spreadGr).toBeCloseTo(6, 9)
    const paired = await perform(pairEvents(JOB, found, NOW))
    const inserts = paired.bench!.arrows.map((arrow) => accepted(arrow, 'insertWeight')!.reading)
    expect(inserts.map(({ value }) => value)).toEqual([160, 158, 156])
    expect(inserts.map(({ source }) => source)).toEqual(['derived', 'typed', 'derived'])
    // Every piece weighs on one arrow, and what was read stays in the history.
    expect(paired.bench!.arrows[0]!.readings.find((kept) => kept.withdrawn !== null)?.withdrawn?.reason).toContain(
      'no. 3',
    )
    expect(pairing(paired)!.takes.every(({ arrow, from }) => from.insertWeight!.id === arrow.id)).toBe(true)
  })

  it('lets be what is put together', async () => {
    const { perform } = await weighed([325, 330, 335], [156, 158, 160])
    expect(pairing(await perform([read(1, 'dryWeight', 800)]))).toBeUndefined()
  })
})
