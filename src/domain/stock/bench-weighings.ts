/**
 * What the readings of one arrow say of its lots, of the glue in its joints and of the grinder. Only readings that stand
 * count; a figure by difference needs every weight in it to have been read, or weighed by the batch.
 */
import type { BenchArrow } from '../bench/bench'
import type { KeptReading } from '../bench/built'
import { isFletchedLast } from '../bench/fletched-last'
import type { DataPoint } from '../bench/data-points'
import { WEIGHED_TOGETHER } from '../bench/data-points'
import type { Id } from '../records/scalars'
import { RULES_SUBJECT } from '../shop/rules-subject'
import type { Sheet } from '../sheet/sheet'
import type { ArrowLine } from './arrow-lines'
import { linesOfKind } from './arrow-lines'
import type { PartKind } from './part'
import type { Weighing } from './weighing'
import { FRONT_KINDS } from './part-places'

export interface Learnt extends Weighing {
  /** A lot, a glue's part, or the shop for its passes. */
  readonly subject: Id
}

const RINGS: readonly PartKind[] = ['collar', 'sleeve', 'footing']
const STEELS = ['stainless 303/304', 'stainless 316', '17-4PH', 'steel 1020', 'steel 4140']

/** @param sheet what it knew of its lots (light parts are weighed by the batch, not on each arrow), and the set's route */
export function benchWeighings(
  arrow: BenchArrow,
  lines: readonly ArrowLine[],
  { learned, route }: Pick<Sheet, 'learned' | 'route'>,
): readonly Learnt[] {
  const last = (point: DataPoint): KeptReading | undefined =>
    arrow.readings.findLast((kept) => kept.reading.point === point && kept.withdrawn === null)
  const learnt = (
    subject: Id | null,
    what: Weighing['what'],
    weightGr: number,
    from: KeptReading,
    pieces = 1,
  ): readonly Learnt[] =>
    subject === null || !Number.isFinite(weightGr)
      ? []
      : [{ subject, what, weightGr, pieces, event: from.event, at: from.reading.takenAt, arrow: arrow.code }]

  // A weight teaches a lot only when one line stands behind it.
  const parts = WEIGHED_TOGETHER.flatMap(([point, kinds]) => {
    const read = last(point)
    const [line, ...others] = linesOfKind(lines, kinds)
    if (read === undefined || line === undefined || others.length > 0) return []
    return learnt(line.lot, 'weight', read.reading.value, read, line.count)
  })
  return [
    ...shaftWeighing(lines, last, learnt),
    ...parts,
    ...glue(lines, arrow, last, learnt, learned, isFletchedLast(route)),
    ...passes(arrow, lines),
  ]
}

type Last = (point: DataPoint) => KeptReading | undefined
type Say = (
  subject: Id | null,
  what: Weighing['what'],
  weightGr: number,
  from: KeptReading,
  pieces?: number,
) => readonly Learnt[]

/** A shaft's lot keeps weights of the catalogue's raw length; another length is brought to it. */
function shaftWeighing(lines: readonly ArrowLine[], last: Last, learnt: Say): readonly Learnt[] {
  const [shaft] = linesOfKind(lines, ['shaft'])
  if (shaft === undefined) return []
  const raw = last('rawWeight')
  if (raw !== undefined) {
    const length = last('rawLength')?.reading.value ?? shaft.part.rawLengthIn
    return learnt(shaft.lot, 'weight', (raw.reading.value * shaft.part.rawLengthIn) / length, raw)
  }
  const [cut, c2c] = [last('cutWeight'), last('c2c')]
  if (cut === undefined || c2c === undefined) return []
  return learnt(shaft.lot, 'weight', (cut.reading.value * shaft.part.rawLengthIn) / c2c.reading.value, cut)
}

/** What these weigh by their lots' own weighings; undefined where a lot was weighed too seldom to stand in for a reading. */
function usual(lines: readonly ArrowLine[], learned: Sheet['learned']): number | undefined {
  const weights = lines.map(({ lot, count }) => {
    const own = learned.find(({ subject, what }) => subject === lot && what === 'weight')?.weighings ?? []
    const pieces = own.reduce((all, each) => all + each.pieces, 0)
    return pieces < STANDS_IN ? undefined : (count * own.reduce((all, each) => all + each.gr, 0)) / pieces
  })
  return weights.reduce((all, each) => (all === undefined || each === undefined ? undefined : all + each), 0)
}
const STANDS_IN = 10 // pieces weighed; then the mean is known to a third of one piece's scatter

function glue(
  lines: readonly ArrowLine[],
  arrow: BenchArrow,
  last: Last,
  learnt: Say,
  learned: Sheet['learned'],
  isLast: boolean,
): readonly Learnt[] {
  const glueFor = (joint: 'vanes' | 'post' | 'collar') =>
    linesOfKind(lines, ['glue']).find((line) => line.part.joints[joint] !== undefined)
  const value = (point: DataPoint) => last(point)?.reading.value
  const fletched = last('fletchedWeight')
  const wrap = value('wrapWeight') ?? usual(linesOfKind(lines, ['wrap']), learned)
  // Fletched last, the vanes went onto the arrow as it was when it was weighed wet.
  const bare = value(isLast ? 'bondWeight' : 'cutWeight')
  const vanes = value('vanesWeight') ?? usual(linesOfKind(lines, ['vane', 'feather']), learned)
  const vaneGlue = glueFor('vanes')
  const atVanes =
    fletched === undefined || bare === undefined || vanes === undefined || wrap === undefined || !vaneGlue
      ? []
      : learnt(vaneGlue.id, 'vanes joint', fletched.reading.value - bare - vanes - wrap, fletched)

  // After the edge is broken the arrow has to have been weighed again, or the chamfer would be taken for glue.
  const isEdged = arrow.confirmed.some(({ step }) => step === 'edge')
  const dry = value('edgeWeight') ?? (isEdged ? undefined : (value('trimWeight') ?? value('dryWeight')))
  // A joint weighed wet is wiped or added to until it lands: as it was spread first is what the next will take.
  const spread = arrow.readings.find(({ reading, withdrawn }) => reading.point === 'bondWeight' && withdrawn === null)
  const finished = spread ?? (isLast ? undefined : last('finishedWeight'))
  if (dry === undefined || finished === undefined) return atVanes
  const front = finished.reading.value - dry
  const [posts, rings] = [linesOfKind(lines, FRONT_KINDS).length, linesOfKind(lines, RINGS).length]
  const [postGlue, ringGlue] = [glueFor('post'), glueFor('collar')]
  if (posts === 0 && rings === 1 && ringGlue) {
    return [...atVanes, ...learnt(ringGlue.id, 'collar joint', front, finished)]
  }
  if (posts !== 1 || !postGlue) return atVanes
  // Where both joints were weighed as one, the collars' count at their own figure and the rest is the post's.
  const atRings = rings * (ringGlue?.part.joints.collar?.gr ?? 0)
  return [...atVanes, ...learnt(postGlue.id, 'post joint', front - atRings, finished)]
}

/** What each pass took off a steel post: the steps from the dry weight through the weights after each pass. */
function passes(arrow: BenchArrow, lines: readonly ArrowLine[]): readonly Learnt[] {
  const [post] = linesOfKind(lines, ['insert', 'half-out'])
  if (post === undefined || !STEELS.includes(post.part.material)) return []
  const weights = arrow.readings.filter(
    ({ reading, withdrawn }) => withdrawn === null && (reading.point === 'dryWeight' || reading.point === 'trimWeight'),
  )
  return weights.slice(1).flatMap((kept, i): readonly Learnt[] => {
    const weightGr = weights[i]!.reading.value - kept.reading.value
    if (kept.reading.point !== 'trimWeight' || weightGr <= 0) return []
    const { event, reading } = kept
    const arrowCode = arrow.code
    return [{ subject: RULES_SUBJECT, what: 'pass', weightGr, pieces: 1, event, at: reading.takenAt, arrow: arrowCode }]
  })
}
