/**
 * Where each line of a plan sits on the arrow: one walk from the throat to the tip that the figures, the elevation and the
 * checks all stand on. Inches from the nock throat, forward; diameters millimetres.
 */
import type { Id } from '../records/scalars'
import type { Part, PartKind, PartOf } from '../stock/part'
import type { Plan, PlanLine } from './plan'

/** A part on its interval. A line with several pieces side by side (vanes) is one placed part; stacked pieces are several. */
export interface Placed {
  readonly line: PlanLine
  readonly part: Part
  readonly fromIn: number
  readonly toIn: number
  /** Pieces that share the interval. */
  readonly pieces: number
  /** What has been trimmed off its rear. */
  readonly trimmedIn: number
  /** The stretch over which it is bonded to the shaft and stiffens it. */
  readonly bond: {
    readonly fromIn: number
    readonly toIn: number
    readonly outerMm: number
    readonly innerMm: number
  } | null
}

export interface Joint {
  readonly line: PlanLine
  readonly glue: PartOf<'glue'>
  readonly joint: 'vanes' | 'post' | 'collar'
  readonly atIn: number
}

export interface Geometry {
  /** Rear and front of the bare cut shaft. */
  readonly shaftRearIn: number
  readonly shaftFrontIn: number
  /** Where the head is seated, and where the arrow ends. */
  readonly seatIn: number
  readonly tipIn: number
  /** The front point that FOC is measured to. */
  readonly focLengthIn: number
  readonly placed: readonly Placed[]
  readonly joints: readonly Joint[]
}

interface Line {
  readonly line: PlanLine
  readonly part: Part
}
type Told<K extends PartKind> = { readonly line: PlanLine; readonly part: PartOf<K> }

/** The lines whose part is one of these kinds, in the plan's order. */
function those<K extends PartKind>(lines: readonly Line[], ...kinds: readonly K[]): readonly Told<K>[] {
  return lines.filter((each) =>
    (kinds as readonly PartKind[]).includes(each.part.kind),
  ) as unknown as readonly Told<K>[]
}

const MM_PER_INCH = 25.4
const POSTS = ['insert', 'half-out'] as const
const RINGS = ['collar', 'sleeve', 'footing'] as const

/** Takes a length off the rear of a post and of the weights stacked behind it, rearmost first; bonds shorten with it. */
function trimStack(placed: readonly Placed[], lengthIn: number): readonly Placed[] {
  const isStack = ({ part }: Placed) => part.kind === 'rear weight' || (POSTS as readonly string[]).includes(part.kind)
  const rearFirst = placed.filter(isStack).toSorted((a, b) => a.fromIn - b.fromIn)
  const cut = new Map<Placed, number>()
  let left = lengthIn
  for (const each of rearFirst) {
    const straight = (each.bond?.toIn ?? each.toIn) - each.fromIn
    const take = Math.min(left, straight)
    cut.set(each, take)
    left -= take
  }
  return placed.map((each) => {
    const take = cut.get(each) ?? 0
    if (take === 0) return each
    const fromIn = each.fromIn + take
    return { ...each, fromIn, trimmedIn: take, bond: each.bond === null ? null : { ...each.bond, fromIn } }
  })
}

/**
 * @param partOf the part a line names, or undefined when the record is not there (the line is then left out)
 * @param trimmedMm how much has come off the rear of the post, or of the weights stacked on it
 * @returns undefined while the plan has no shaft or no cut length
 */
export function geometryOf(plan: Plan, partOf: (id: Id) => Part | undefined, trimmedMm = 0): Geometry | undefined {
  const lines = plan.lines.flatMap((line): readonly Line[] => {
    const part = partOf(line.part)
    return part === undefined ? [] : [{ line, part }]
  })
  const [shaft] = those(lines, 'shaft')
  if (shaft === undefined || plan.c2cIn === undefined) return undefined

  const nocks = those(lines, 'nock')
  const bushings = those(lines, 'bushing')
  const standout = nocks[0]?.part.standoutIn ?? 0
  const flange = bushings[0]?.part.flangeIn ?? 0
  const rear = standout + flange
  const front = rear + plan.c2cIn
  const placed: Placed[] = []
  const put = ({ line, part }: Line, fromIn: number, toIn: number, bond: Placed['bond'] = null, pieces = 1) =>
    placed.push({ line, part, fromIn, toIn, pieces, bond, trimmedIn: 0 })

  for (const nock of nocks) put(nock, 0, standout + nock.part.plugIn)
  for (const bushing of bushings) put(bushing, rear - bushing.part.flangeIn, rear + bushing.part.insideIn)
  put(shaft, rear, front)
  for (const wrap of those(lines, 'wrap')) put(wrap, rear, rear + wrap.part.lengthIn)
  const vanes = those(lines, 'vane', 'feather')
  for (const vane of vanes) put(vane, plan.vaneTailIn, plan.vaneTailIn + vane.part.lengthIn, null, vane.line.count)

  let seat = front
  let postRear = front
  const joints: Joint[] = []
  const glues = those(lines, 'glue')
  const join = (joint: Joint['joint'], atIn: number) => {
    const glue = glues.find((each) => each.part.joints[joint] !== undefined)
    if (glue !== undefined) joints.push({ line: glue.line, glue: glue.part, joint, atIn })
  }

  for (const post of those(lines, ...POSTS)) {
    const { part } = post
    const ahead = part.kind === 'insert' ? part.shoulderIn : part.aheadIn
    postRear = front - part.postLengthIn
    seat = front + ahead
    put(post, postRear, seat, { fromIn: postRear, toIn: front, outerMm: part.postDiameterMm, innerMm: part.postBoreMm })
  }
  for (const outsert of those(lines, 'outsert')) {
    const { overIn, aheadIn, outerDiameterMm, innerDiameterMm } = outsert.part
    seat = Math.max(seat, front + aheadIn)
    put(outsert, front - overIn, front + aheadIn, {
      fromIn: front - overIn,
      toIn: front,
      outerMm: outerDiameterMm,
      innerMm: innerDiameterMm,
    })
    join('post', front - overIn / 2)
  }
  for (const ring of those(lines, ...RINGS)) {
    const toIn = front - ring.part.setbackIn
    const fromIn = toIn - ring.part.lengthIn
    put(ring, fromIn, toIn, { fromIn, toIn, outerMm: ring.part.outerDiameterMm, innerMm: ring.part.innerDiameterMm })
    join('collar', (fromIn + toIn) / 2)
  }
  for (const weight of those(lines, 'rear weight')) {
    for (let i = 0; i < weight.line.count; i++) {
      put(weight, postRear - weight.part.lengthIn, postRear)
      postRear -= weight.part.lengthIn
    }
  }
  for (const adapter of those(lines, 'adapter')) {
    put(adapter, seat, seat + adapter.part.aheadIn)
    seat += adapter.part.aheadIn
  }
  let tip = seat
  for (const head of those(lines, 'broadhead', 'field point')) {
    put(head, seat, seat + head.part.lengthIn)
    tip = Math.max(tip, seat + head.part.lengthIn)
  }
  const trimmed = trimStack(placed, trimmedMm / MM_PER_INCH)
  for (const { part, bond } of trimmed) {
    if (bond !== null && (part.kind === 'insert' || part.kind === 'half-out'))
      join('post', (bond.fromIn + bond.toIn) / 2)
  }
  const [firstVane] = vanes
  if (firstVane !== undefined) join('vanes', plan.vaneTailIn + firstVane.part.lengthIn / 2)

  return {
    shaftRearIn: rear,
    shaftFrontIn: front,
    seatIn: seat,
    tipIn: tip,
    focLengthIn: plan.frontPoint === 'outsert shoulder' ? seat : front,
    placed: trimmed.toSorted((a, b) => a.fromIn - b.fromIn || a.toIn - b.toIn),
    joints,
  }
}
