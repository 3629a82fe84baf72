/**
 * The front end: the part that seats the head, ring, rear weights, adapter and head, with their glue. Inches forward from
 * the shaft front, grains.
 */
import { tubeStiffening } from './metal'
import type { OptionOf } from './options'
import { momentOf, type PieceAt } from './piece-at'
import { comesOff, cutsOf, type PostTrim, postTrimOf, ROUNDING_GR } from './post-trim'
import { glueOf, type Sums, sumsOf } from './sums'
import type { JointGlue, SearchProblem } from './wishes'

export interface FrontParts {
  readonly front: OptionOf<'insert' | 'half-out' | 'outsert'> | undefined
  readonly ring: OptionOf<'collar' | 'sleeve' | 'footing'> | undefined
  readonly rearWeights: OptionOf<'rear weight'> | undefined
  readonly adapter: OptionOf<'adapter'> | undefined
  readonly head: OptionOf<'broadhead' | 'field point'> | undefined
}

/** How its pieces stand, whatever is trimmed. */
interface Build extends FrontParts {
  readonly trim: PostTrim
  readonly seatingGr: number
  readonly behindIn: number
  readonly aheadIn: number
  readonly seatingStiffening: number
  /** Seat of the head. */
  readonly seatIn: number
  readonly postGlueGr: number
  readonly ringGlueGr: number
}

export interface Front extends Build, Sums {
  /** Rear of the blades; Infinity without blades. */
  readonly bladesIn: number
  /** The most that a wanted trim can be, its edge included; 0 where nothing is trimmed. */
  readonly capacityGr: number
  /** Untrimmed. */
  readonly momentGrIn: number
  readonly gain: ReturnType<typeof momentGain>
  /** All that lies behind the shaft front, how far back any of it reaches, and what it stiffens at most. */
  readonly insideGr: number
  readonly insideIn: number
  readonly stiffening: number
  readonly index: number
}

export function frontOf(problem: SearchProblem, parts: FrontParts, index: number): Front {
  const { front, ring, rearWeights, adapter, head } = parts
  const postGlue = glueOf(problem, 'post', front !== undefined)
  const ringGlue = glueOf(problem, 'collar', ring !== undefined)
  const build = buildOf(problem, parts, postGlue, ringGlue)
  const { trim, seatIn } = build
  const record = head?.item.record
  const pieces = frontPieces(build, 0)
  const inside = pieces.filter(({ fromIn }) => fromIn < 0)
  return {
    ...build,
    ...sumsOf([front, ring, rearWeights, adapter, head], [postGlue, ringGlue]),
    bladesIn: record?.kind === 'broadhead' ? seatIn + record.bladeRearIn : Infinity,
    capacityGr: trim.availableGr > 0 ? trim.availableGr + trim.edgeGr : 0,
    momentGrIn: momentOf(pieces),
    gain: momentGain(build),
    insideGr: inside.reduce((sum, { gr }) => sum + gr, 0),
    insideIn: inside.reduce((far, { fromIn }) => Math.max(far, -fromIn), 0),
    stiffening: pieces.reduce((sum, { stiffening }) => sum + stiffening, 0),
    index,
  }
}

function buildOf({ shop }: SearchProblem, parts: FrontParts, postGlue: JointGlue, ringGlue: JointGlue): Build {
  const { front, rearWeights, adapter } = parts
  const adapterIn = adapter?.item.record.aheadIn ?? 0
  const glued = { ...parts, postGlueGr: postGlue.gr, ringGlueGr: ringGlue.gr }
  const trim: PostTrim = { stretches: [], availableGr: 0, edgeGr: 0 }
  if (front === undefined) {
    return { ...glued, trim, seatingGr: 0, behindIn: 0, aheadIn: 0, seatingStiffening: 0, seatIn: adapterIn }
  }
  const { record } = front.item
  const aheadIn = record.kind === 'insert' ? record.shoulderIn : record.aheadIn
  const seating = { ...glued, seatingGr: front.weightGr, aheadIn, seatIn: aheadIn + adapterIn }
  if (record.kind === 'outsert') {
    const { material, outerDiameterMm, innerDiameterMm } = record
    const seatingStiffening = tubeStiffening(material, outerDiameterMm, innerDiameterMm)
    return { ...seating, trim, behindIn: record.overIn, seatingStiffening }
  }
  return {
    ...seating,
    trim: postTrimOf(record, rearWeights, shop.chamferMm),
    behindIn: record.postLengthIn,
    seatingStiffening: tubeStiffening(record.material, record.postDiameterMm, record.postBoreMm),
  }
}

/** Every piece of the front, with so many grains trimmed off its rear. */
export function frontPieces(build: Build, trimGr: number): readonly PieceAt[] {
  const { front, ring, rearWeights, adapter, head, trim, aheadIn, seatIn } = build
  const { cutIn, edge } = cutsOf(trim, comesOff(trim, trimGr))
  /** Grains off a stretch. */
  const off = (i: number) => {
    const cut = cutIn[i] ?? 0
    return cut > 0 ? cut * trim.stretches[i]!.perInchGr + (i === edge ? trim.edgeGr : 0) : 0
  }
  const pieces: PieceAt[] = []
  const at = (gr: number, fromIn: number, toIn: number, stiffening = 0) => pieces.push({ gr, fromIn, toIn, stiffening })
  const stacked = rearWeights?.count ?? 0
  if (front !== undefined) {
    const rearIn = -build.behindIn + (cutIn[stacked] ?? 0)
    at(build.seatingGr - off(stacked), rearIn, aheadIn, build.seatingStiffening)
    at(build.postGlueGr, rearIn / 2, rearIn / 2)
  }
  if (ring !== undefined) {
    const { setbackIn, lengthIn, material, outerDiameterMm, innerDiameterMm } = ring.item.record
    const middle = -setbackIn - lengthIn / 2
    at(ring.weightGr, -setbackIn - lengthIn, -setbackIn, tubeStiffening(material, outerDiameterMm, innerDiameterMm))
    at(build.ringGlueGr, middle, middle)
  }
  if (rearWeights !== undefined) {
    const { lengthIn } = rearWeights.item.record
    for (let i = 0; i < stacked; i++) {
      const toIn = -build.behindIn - (stacked - 1 - i) * lengthIn
      at(rearWeights.item.weightGr - off(i), toIn - lengthIn + (cutIn[i] ?? 0), toIn)
    }
  }
  if (adapter !== undefined) at(adapter.weightGr, aheadIn, seatIn)
  if (head !== undefined) at(head.weightGr, seatIn, seatIn + head.item.record.lengthIn)
  return pieces
}

/** Of a front without stacked weights: by how much trimming t grains changes its moment, gr·in. */
function momentGain({ seatingGr, postGlueGr, behindIn, aheadIn, trim }: Build) {
  const [post] = trim.stretches
  if (post === undefined) return { constant: 0, perGrain: 0, perSquare: 0 }
  // With c = (t − edge)/perInch cut off: ((seating + glue)·c − t·(ahead − behind + c))/2.
  const inch = 1 / post.perInchGr
  return {
    constant: (-(seatingGr + postGlueGr) * trim.edgeGr * inch) / 2,
    perGrain: ((seatingGr + postGlueGr + trim.edgeGr) * inch + behindIn - aheadIn) / 2,
    perSquare: -inch / 2,
  }
}

/** Ends between which that moment lies whatever is trimmed: nothing that can come off reaches further than the front does. */
export function momentEnds(front: Front): readonly [least: number, most: number] {
  const reach = Math.max(front.insideIn, Math.abs(front.aheadIn)) + front.behindIn
  const play = front.capacityGr === 0 ? 0 : reach * (front.capacityGr + front.postGlueGr)
  const { constant, perGrain, perSquare } = front.gain
  if (front.rearWeights !== undefined || perSquare === 0) return [front.momentGrIn - play, front.momentGrIn + play]
  const at = (gr: number) => front.momentGrIn + constant + gr * (perGrain + perSquare * gr)
  const turn = Math.min(Math.max(perGrain / (-2 * perSquare), front.trim.edgeGr), front.capacityGr)
  const all = [front.momentGrIn, at(front.trim.edgeGr), at(front.capacityGr), at(turn)]
  return [Math.min(...all), Math.max(...all)]
}

/** Moment about the shaft front with so many grains off, gr·in: that of {@link frontPieces}, without making them. */
export function frontMoment(front: Front, offGr: number): number {
  const { trim, rearWeights, momentGrIn, gain } = front
  if (offGr === 0) return momentGrIn
  if (rearWeights === undefined) return momentGrIn + gain.constant + offGr * (gain.perGrain + gain.perSquare * offGr)
  const { count, item } = rearWeights
  const { lengthIn, perInchGr } = trim.stretches[0]!
  let left = offGr - trim.edgeGr
  let moment = momentGrIn
  for (let i = 0; i < count && left > 0; i++) {
    const cut = Math.min(lengthIn, left / perInchGr)
    left -= cut * perInchGr
    if (left < ROUNDING_GR) left = 0
    const off = cut * perInchGr + (left === 0 ? trim.edgeGr : 0)
    const middle = -front.behindIn - (count - i - 0.5) * lengthIn
    moment += (item.weightGr * cut) / 2 - off * (middle + cut / 2)
  }
  if (left === 0) return moment
  const cut = left / trim.stretches[count]!.perInchGr
  const off = left + trim.edgeGr
  const middle = (front.aheadIn - front.behindIn) / 2
  return moment + ((front.seatingGr + front.postGlueGr) * cut) / 2 - off * (middle + cut / 2)
}
