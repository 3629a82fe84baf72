/** Every finished arrow, one a row, with a column for each data point: the reading that stood when the set was signed off. */
import { csvRow } from '../records/csv'
import type { FactOf } from '../records/read-fact'
import { DATA_POINTS, DATA_POINT_NAMES } from './data-points'
import type { KeptReading } from './built'

export const BUILDS_HEADER = csvRow([
  'job',
  'version',
  'arrow',
  'code',
  'outcome',
  'cause',
  'builtAt',
  'by',
  ...DATA_POINT_NAMES.map((name) => `${name} (${DATA_POINTS[name].unit})`),
  'record',
])

export function buildsCsv(asBuilt: FactOf<'asBuilt'>, arrows: readonly FactOf<'arrowBuilt'>[]): string {
  return arrows
    .map((arrow) =>
      csvRow([
        asBuilt.body.jobCode,
        asBuilt.body.version,
        arrow.body.no,
        arrow.body.code,
        arrow.body.outcome,
        arrow.body.cause ?? '',
        asBuilt.at,
        asBuilt.by,
        ...DATA_POINT_NAMES.map((name) => stood(arrow.body.readings, name)),
        arrow.hash,
      ]),
    )
    .join('')
}

/** The last reading of a point that was not withdrawn. */
const stood = (readings: readonly KeptReading[], point: string): number | null =>
  readings.findLast((kept) => kept.reading.point === point && kept.withdrawn === null)?.reading.value ?? null
