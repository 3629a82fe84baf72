/** Every reading a finished arrow may carry: its name in a record, the unit it is kept in, and what limits a slip. */
import type { PartKind } from '../stock/part'

export const DATA_POINTS = {
  rawWeight: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  rawLength: { unit: 'in', decimals: 2, min: 15, max: 40 },
  runOut1: { unit: 'in', decimals: 4, min: 0, max: 0.2 },
  runOut2: { unit: 'in', decimals: 4, min: 0, max: 0.2 },
  runOut3: { unit: 'in', decimals: 4, min: 0, max: 0.2 },
  runOut4: { unit: 'in', decimals: 4, min: 0, max: 0.2 },
  runOut5: { unit: 'in', decimals: 4, min: 0, max: 0.2 },
  runOutAngle1: { unit: '°', decimals: 0, min: 0, max: 360 },
  runOutAngle2: { unit: '°', decimals: 0, min: 0, max: 360 },
  runOutAngle3: { unit: '°', decimals: 0, min: 0, max: 360 },
  runOutAngle4: { unit: '°', decimals: 0, min: 0, max: 360 },
  runOutAngle5: { unit: '°', decimals: 0, min: 0, max: 360 },
  spineQuarter1: { unit: 'in', decimals: 3, min: 0.05, max: 1 },
  spineQuarter2: { unit: 'in', decimals: 3, min: 0.05, max: 1 },
  spineQuarter3: { unit: 'in', decimals: 3, min: 0.05, max: 1 },
  spineQuarter4: { unit: 'in', decimals: 3, min: 0.05, max: 1 },
  spineMarkAngle: { unit: '°', decimals: 0, min: 0, max: 360 },
  cutNockEnd: { unit: 'in', decimals: 2, min: 0, max: 15 },
  cutPointEnd: { unit: 'in', decimals: 2, min: 0, max: 15 },
  c2c: { unit: 'in', decimals: 2, min: 10, max: 36 },
  squareness: { unit: 'in', decimals: 4, min: 0, max: 0.1 },
  cutRunOut: { unit: 'in', decimals: 4, min: 0, max: 0.2 },
  cutWeight: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  nockWeight: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  vanesWeight: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  wrapWeight: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  insertWeight: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  collarWeight: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  headWeight: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  fletchedWeight: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  dryWeight: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  dryLessHead: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  trimWeight: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  edgeWeight: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  insertTrimmed: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  bondWeight: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  bondLength: { unit: 'mm', decimals: 1, min: 0, max: 200 },
  bondRunOut: { unit: 'in', decimals: 4, min: 0, max: 0.2 },
  roomTemperature: { unit: '°C', decimals: 0, min: -20, max: 60 },
  indexNock: { unit: '°', decimals: 0, min: 0, max: 360 },
  indexPoint: { unit: '°', decimals: 0, min: 0, max: 360 },
  finishedWeight: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  weightLessHead: { unit: 'gr', decimals: 1, min: 0, max: 2000 },
  balancePoint: { unit: 'in', decimals: 2, min: 5, max: 40 },
  overallLength: { unit: 'in', decimals: 2, min: 10, max: 45 },
  finishedRunOut: { unit: 'in', decimals: 4, min: 0, max: 0.2 },
} as const

export type DataPoint = keyof typeof DATA_POINTS
export const DATA_POINT_NAMES = Object.keys(DATA_POINTS) as [DataPoint, ...DataPoint[]]

/** Parts that lie on the scale together at one point of the bench: the one list of what each of these weights stands for. */
export const WEIGHED_TOGETHER: readonly (readonly [DataPoint, readonly PartKind[]])[] = [
  ['insertWeight', ['insert', 'half-out', 'outsert', 'rear weight', 'adapter']],
  ['collarWeight', ['collar', 'sleeve', 'footing']],
  ['headWeight', ['broadhead', 'field point']],
  ['nockWeight', ['nock', 'bushing']],
  ['vanesWeight', ['vane', 'feather']],
  ['wrapWeight', ['wrap']],
]

/** @returns undefined for a point that weighs no parts by themselves */
export const kindsAt = (point: DataPoint): readonly PartKind[] | undefined =>
  WEIGHED_TOGETHER.find(([each]) => each === point)?.[1]
