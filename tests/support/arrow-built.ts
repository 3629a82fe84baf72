import type { ArrowBuilt } from '@/domain/bench/built'
import { DATA_POINTS } from '@/domain/bench/data-points'
import type { DataPoint } from '@/domain/bench/data-points'
import { testId } from './test-id'

const HASH = 'a'.repeat(64)

/** An accepted arrow with these readings, each taken once. */
export const arrowBuilt = (no: number, read: Partial<Record<DataPoint, number>>): ArrowBuilt => ({
  arrow: testId(500 + no),
  code: `TEST-1-0/${no}`,
  no,
  sheet: HASH,
  outcome: 'accepted',
  fitted: [],
  confirmed: [],
  deviations: [],
  readings: (Object.entries(read) as [DataPoint, number][]).map(([point, value], at) => ({
    event: `${no}${at}`.padEnd(64, '0'),
    by: 'Ilse',
    step: 'inspect',
    withdrawn: null,
    reading: {
      point,
      value,
      unit: DATA_POINTS[point].unit,
      raw: String(value),
      source: 'typed',
      stable: true,
      attempt: 1,
      scale: 'Scale 1',
      takenAt: '2026-03-02T09:00:00.000Z',
    },
  })),
})
