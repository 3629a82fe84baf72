/**
 * From when on a part cannot go back to its lot: a shaft that is cut, a vane that is glued, a post that is trimmed or
 * bonded; nocks and heads once the finished arrow was looked at. Common practice, no source [CP].
 */
import type { BenchArrow } from '../bench/bench'
import type { DataPoint } from '../bench/data-points'
import type { StepKey } from '../bench/route'
import type { PartKind } from './part'

interface Sign {
  /** Any of these read, or any of these steps confirmed for the arrow. */
  readonly points: readonly DataPoint[]
  readonly steps: readonly StepKey[]
}

const FINISHED: Sign = { points: ['finishedWeight', 'weightLessHead', 'balancePoint'], steps: ['inspect'] }
const and = (sign: Sign, later: Sign): Sign => ({
  points: [...sign.points, ...later.points],
  steps: [...sign.steps, ...later.steps],
})
const BONDED = and(
  {
    points: ['trimWeight', 'edgeWeight', 'insertTrimmed', 'bondWeight', 'bondLength'],
    steps: ['edge', 'bond', 'index'],
  },
  FINISHED,
)
const FLETCHED = and({ points: ['fletchedWeight'], steps: ['fletch'] }, FINISHED)
const CUT = and(
  and({ points: ['cutNockEnd', 'cutPointEnd', 'c2c', 'cutWeight'], steps: ['cut', 'square'] }, FLETCHED),
  BONDED,
)

const SIGN_OF: Readonly<Record<PartKind, Sign>> = {
  shaft: CUT,
  vane: FLETCHED,
  feather: FLETCHED,
  wrap: FLETCHED,
  insert: BONDED,
  'half-out': BONDED,
  outsert: BONDED,
  collar: BONDED,
  sleeve: BONDED,
  footing: BONDED,
  'rear weight': BONDED,
  adapter: BONDED,
  bushing: FINISHED,
  nock: FINISHED,
  broadhead: FINISHED,
  'field point': FINISHED,
  glue: FINISHED,
}

export function isSpent(kind: PartKind, arrow: Pick<BenchArrow, 'readings' | 'confirmed'>): boolean {
  const { points, steps } = SIGN_OF[kind]
  const read = arrow.readings.some(({ reading, withdrawn }) => withdrawn === null && points.includes(reading.point))
  return read || arrow.confirmed.some(({ step }) => (steps as readonly string[]).includes(step))
}
