import { describe, expect, it } from 'vitest'
import { inGrains } from '@/core/quantity'
import type { DataPoint } from '@/domain/bench/data-points'
import { DATA_POINTS } from '@/domain/bench/data-points'
import { expectedAt } from '@/domain/bench/expected-at'
import { isFletchedLast, onItsRoute } from '@/domain/bench/fletched-last'
import { glueAdvice } from '@/domain/bench/glue-advice'
import { DEFAULT_ROUTE } from '@/domain/bench/route'
import { setLanding } from '@/domain/bench/set-forecast'
import { trimAdvice } from '@/domain/bench/trim-advice'
import { newEvent } from '@/domain/records/write'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import { frontFirst } from '@/domain/shop/route-changes'
import { jobShares } from '@/domain/stock/job-share'
import { demoSheet } from '@tests/support/demo-sheet'
import { inMemoryJob, opened } from '@tests/support/in-memory-job'
import { testId } from '@tests/support/test-id'

const JOB = testId(9000)
const HASH = 'a'.repeat(64)
const ARROW = testId(20_000)
const FROZEN = demoSheet({ targetGr: 785, c2cIn: 28, quantity: 1 })
const ROUTE = frontFirst(DEFAULT_ROUTE)

/** Weighed one after the other on the other order; vanes of 28 gr together. */
const WEIGHTS: readonly (readonly [DataPoint, number])[] = [
  ['cutWeight', 330],
  ['insertWeight', 158],
  ['collarWeight', 15],
  ['headWeight', 250],
  ['nockWeight', 11],
  ['vanesWeight', 28],
  ['dryWeight', 764],
  ['trimWeight', 753],
  ['edgeWeight', 752.8],
  ['bondWeight', 755.4],
  ['fletchedWeight', 784.7],
]

async function upTo(last: DataPoint) {
  const { begun, perform } = inMemoryJob([
    opened(JOB),
    newEvent('frozen', { job: JOB }, { sheet: HASH, version: 1 }),
    newEvent('setStarted', { job: JOB }, { sheet: HASH, arrows: [{ id: ARROW, no: 1, code: 'T/1' }] }),
  ])
  await begun
  const end = WEIGHTS.findIndex(([point]) => point === last) + 1
  const job = await perform([
    newEvent('routeSet', { job: JOB }, { route: [...ROUTE] }),
    ...WEIGHTS.slice(0, end).map(([point, value]) =>
      newEvent(
        'read',
        { job: JOB, arrow: ARROW },
        {
          step: 'dry fit',
          reading: {
            point,
            value,
            unit: DATA_POINTS[point].unit,
            raw: `${value}`,
            source: 'typed',
            stable: true,
            attempt: 1,
            scale: 'Scale 1',
            takenAt: '2026-01-01T00:00:00.000Z',
          },
        },
      ),
    ),
  ])
  const sheet = onItsRoute(FROZEN, job.bench!)
  const worked = sheetFigures(sheet)!
  const own = setLanding(job.bench!, sheet, worked.items).arrows.get(ARROW)!
  const expected = (point: DataPoint) => expectedAt(point, own.arrow, worked.items, sheet)!.value
  return { job, sheet, worked, own, expected, heads: own.forecast.ok ? inGrains(own.forecast.value.total.value) : NaN }
}

const [VANE_GLUE, FRONT_GLUE] = [1.2, 1.8 + 0.8] // gr; what the demo shop's glues are put down at

describe('the front bonded before it is fletched', () => {
  it('is told by the route', () => {
    expect(isFletchedLast(DEFAULT_ROUTE)).toBe(false)
    expect(isFletchedLast(ROUTE)).toBe(true)
    expect(isFletchedLast(ROUTE.filter(({ key }) => key !== 'bond'))).toBe(false)
    expect(isFletchedLast(ROUTE.filter(({ key }) => key !== 'fletch'))).toBe(false)
  })

  it('expects the dry and the wet arrow without its vanes, and the fletched one whole', async () => {
    expect((await upTo('vanesWeight')).expected('dryWeight')).toBeCloseTo(330 + 158 + 15 + 250 + 11, 6)
    expect((await upTo('edgeWeight')).expected('bondWeight')).toBeCloseTo(752.8 + FRONT_GLUE, 1)
    expect((await upTo('bondWeight')).expected('fletchedWeight')).toBeCloseTo(755.4 + 28 + VANE_GLUE, 1)
  })

  it('heads to the weight with the vanes that are still to come, at every weighing', async () => {
    expect((await upTo('vanesWeight')).heads).toBeCloseTo(764 + 28 + VANE_GLUE + FRONT_GLUE, 1)
    expect((await upTo('dryWeight')).heads).toBeCloseTo(764 + 28 + VANE_GLUE + FRONT_GLUE, 1)
    expect((await upTo('bondWeight')).heads).toBeCloseTo(755.4 + 28 + VANE_GLUE, 1)
    expect((await upTo('fletchedWeight')).heads).toBeCloseTo(784.7, 6)
  })

  it('trims and glues to what the scale shows without them', async () => {
    const dry = await upTo('dryWeight')
    const trim = trimAdvice(dry.own, dry.worked, dry.sheet)
    expect(inGrains(trim.downTo) - inGrains(trim.chamfer)).toBeCloseTo(
      inGrains(dry.own.target) - 28 - VANE_GLUE - FRONT_GLUE,
      1,
    )
    const edged = await upTo('edgeWeight')
    const glue = glueAdvice(edged.own, edged.worked, edged.sheet)!
    expect(inGrains(glue.change)).toBeCloseTo(inGrains(edged.own.target) - 28 - VANE_GLUE - 752.8, 1)
  })

  it('teaches the vane glue what the fletched arrow weighs over the wet one and its vanes', async () => {
    const { job } = await upTo('fletchedWeight')
    const learnt = [...jobShares(job, () => FROZEN).values()].flatMap(({ weighed }) => weighed)
    const by = (what: string) => learnt.filter((each) => each.what === what).map(({ weightGr }) => weightGr)
    expect(by('vanes joint')).toEqual([expect.closeTo(784.7 - 755.4 - 28, 6)])
    expect(by('post joint')).toEqual([expect.closeTo(755.4 - 752.8 - 0.8, 6)])
  })
})
