/** Every combination there is, laid out in groups: bodies, rears, and for each kind of shaft the fronts that fit it. */
import { bodyOf, type Body, cutLengths } from './body'
import type { SearchFinding } from './findings'
import { frontFitsShaft, headFits, rearWeightFitsShaft, ringFitsFront, ringFitsShaft, takesRearWeights } from './fits'
import { type Front, frontOf, momentEnds } from './front'
import { type OptionOf, optionsOn } from './options'
import { type Rear, rearsOf } from './rear'
import { tailsOf } from './tail'
import type { SearchProblem } from './wishes'

/**
 * Fronts by rising weight, and what the search's innermost loop reads of them, side by side in memory: gr, gr·in, cents.
 * Trimming t grains, more than the edge takes, changes the moment about the shaft front by constant + t·(gain + square·t);
 * not so with weights stacked on the post.
 */
export interface FrontList {
  readonly fronts: readonly Front[]
  readonly weights: Float64Array
  readonly capacities: Float64Array
  readonly moments: Float64Array
  readonly edges: Float64Array
  readonly constants: Float64Array
  readonly gains: Float64Array
  readonly squares: Float64Array
  readonly stacked: Uint8Array
  readonly seats: Float64Array
  readonly spares: Float64Array
  readonly prices: Float64Array
  readonly mostCapacityGr: number
  readonly mostEdgeGr: number
  /** Of any front: the lightest it can be trimmed to, and the heaviest it is. */
  readonly leastGr: number
  readonly mostGr: number
  readonly mostSeatIn: number
  /** Of the moment, whatever is trimmed. */
  readonly leastMomentGrIn: number
  readonly mostMomentGrIn: number
  readonly mostSpare: number
  readonly leastPriceCents: number
}
/** The fronts of a shaft: those with a post to trim, and those that must be right as they are. */
export interface Fronts {
  readonly lists: readonly FrontList[]
  readonly all: readonly Front[]
}

export interface Space {
  readonly bodies: readonly { readonly body: Body; readonly fronts: Fronts }[]
  readonly rears: readonly Rear[]
  readonly frontCount: number
  /** Combinations of the options, those that do not go together included. */
  readonly combinations: number
  readonly findings: readonly SearchFinding[]
}

/** Fronts and bodies are held one by one; beyond this many they would fill the memory. */
export const MOST_HELD = 400_000

/** Laid out at once. */
export function spaceOf(problem: SearchProblem): Space {
  const steps = spaceInSteps(problem)
  for (;;) {
    const { done, value } = steps.next()
    if (done === true) return value
  }
}

const FRONTS_A_STEP = 1000

/** Laid out in small steps, between which it can be left. */
export function* spaceInSteps(problem: SearchProblem): Generator<undefined, Space> {
  const shafts = optionsOn('shaft', problem)
  const nocks = optionsOn('nock', problem)
  const bushings = optionsOn('bushing', problem)
  const vanes = optionsOn('vanes', problem)
  const wraps = optionsOn('wrap', problem)
  const seatings = optionsOn('front', problem)
  const rings = optionsOn('ring', problem)
  const stacks = optionsOn('rear weights', problem)
  const adapters = optionsOn('adapter', problem)
  const heads = optionsOn('head', problem)
  const axes = [shafts, nocks, bushings, vanes, wraps, seatings, rings, stacks, adapters, heads]
  const findings: SearchFinding[] = axes.flatMap((axis) => axis.findings)
  const lengths = cutLengths(problem)
  const combinations = axes.reduce((product, { options }) => product * options.length, lengths.length)
  const nothing = { bodies: [], rears: [], frontCount: 0, combinations, findings }
  const frontCount = [seatings, rings, stacks, adapters, heads].reduce((n, { options }) => n * options.length, 1)
  const bodyCount = [shafts, nocks, bushings].reduce((n, { options }) => n * options.length, lengths.length)
  const held = Math.max(frontCount, bodyCount, vanes.options.length * wraps.options.length)
  if (held > MOST_HELD) {
    return {
      ...nothing,
      findings: [{ code: 'too-many-combinations', combinations: held, most: MOST_HELD }, ...findings],
    }
  }
  if (combinations === 0) return nothing

  const allTails = tailsOf(nocks.options, bushings.options)
  const { vaneTailIn } = problem.build
  // Vanes lie on the shaft: a nock that puts its rear end ahead of their tail will not do.
  const isVaned = vanes.options.some((option) => option !== undefined)
  const tails = allTails.filter(({ standoutIn }) => !isVaned || standoutIn <= vaneTailIn)
  if (tails.length === 0 && allTails.length > 0) {
    const standoutIn = Math.min(...allTails.map((tail) => tail.standoutIn))
    findings.push({ code: 'vanes-behind-shaft', vaneTailIn, standoutIn })
  }
  const allFronts: Front[] = []
  let index = 0
  for (const front of seatings.options) {
    for (const ring of rings.options) {
      for (const rearWeights of stacks.options) {
        for (const adapter of adapters.options) {
          for (const head of heads.options) {
            const parts = { front, ring, rearWeights, adapter, head }
            if (goTogether(parts)) allFronts.push(frontOf(problem, parts, index))
            index += 1
            if (index % FRONTS_A_STEP === 0) yield
          }
        }
      }
    }
  }
  if (allTails.length === 0) findings.push({ code: 'nothing-goes-together', first: 'nock', second: 'bushing' })
  if (allFronts.length === 0) findings.push({ code: 'nothing-goes-together', first: 'front', second: 'head' })
  allFronts.sort((a, b) => a.weightGr - b.weightGr || a.index - b.index)

  const known = new Map<string, Fronts>()
  const bodies: { body: Body; fronts: Fronts }[] = []
  let number = 0
  for (const shaft of shafts.options as readonly OptionOf<'shaft'>[]) {
    const { record, part } = shaft.item
    const key = `${record.outerDiameterMm} ${record.innerDiameterMm}`
    const fronts = known.get(key) ?? frontsOf(allFronts.filter((front) => fitsShaft(front, record)))
    known.set(key, fronts)
    yield
    let cut = 0
    for (const c2cIn of lengths) {
      for (const tail of tails) {
        const body = bodyOf(
          problem,
          shaft,
          c2cIn,
          tail,
          number * nocks.options.length * bushings.options.length + tail.index,
        )
        if (body === undefined) continue
        cut = c2cIn
        if (fronts.all.length > 0) bodies.push({ body, fronts })
      }
      number += 1
    }
    const longest = lengths.at(-1)!
    if (cut < longest && tails.length > 0) {
      findings.push({ code: 'raw-shaft-too-short', part, rawLengthIn: record.rawLengthIn, c2cIn: longest })
    }
  }
  if (allFronts.length > 0 && [...known.values()].every(({ all }) => all.length === 0)) {
    findings.push({ code: 'nothing-goes-together', first: 'shaft', second: 'front' })
  }
  return { bodies, rears: rearsOf(problem, vanes.options, wraps.options), frontCount, combinations, findings }
}

type Parts = Parameters<typeof frontOf>[1]
function goTogether({ front, ring, rearWeights, adapter, head }: Parts): boolean {
  const seating = front?.item.record
  return (
    (ring === undefined || ringFitsFront(ring.item.record, seating)) &&
    (rearWeights === undefined || takesRearWeights(seating)) &&
    (head === undefined || headFits(head.item.record, seating, adapter?.item.record))
  )
}

const fitsShaft = ({ front, ring, rearWeights }: Front, shaft: OptionOf<'shaft'>['item']['record']) =>
  (front === undefined || frontFitsShaft(front.item.record, shaft)) &&
  (ring === undefined || ringFitsShaft(ring.item.record, shaft)) &&
  (rearWeights === undefined || rearWeightFitsShaft(rearWeights.item.record, shaft))

function frontsOf(all: readonly Front[]): Fronts {
  const lists = [all.filter((front) => front.capacityGr > 0), all.filter((front) => front.capacityGr === 0)]
  return { all, lists: lists.filter((list) => list.length > 0).map(listOf) }
}

function listOf(fronts: readonly Front[]): FrontList {
  const column = (of: (front: Front) => number) => Float64Array.from(fronts, of)
  const spares = column(({ spare }) => spare)
  const prices = column(({ priceCents }) => priceCents)
  const ends = fronts.map(momentEnds)
  const capacities = column(({ capacityGr }) => capacityGr)
  return {
    fronts,
    weights: column(({ weightGr }) => weightGr),
    capacities,
    moments: column(({ momentGrIn }) => momentGrIn),
    edges: column(({ trim }) => trim.edgeGr),
    constants: column(({ gain }) => gain.constant),
    gains: column(({ gain }) => gain.perGrain),
    squares: column(({ gain }) => gain.perSquare),
    stacked: Uint8Array.from(fronts, ({ rearWeights }) => (rearWeights === undefined ? 0 : 1)),
    seats: column(({ seatIn }) => seatIn),
    spares,
    prices,
    mostCapacityGr: capacities.reduce((most, gr) => Math.max(most, gr), 0),
    leastGr: fronts.reduce((least, { weightGr, capacityGr }) => Math.min(least, weightGr - capacityGr), Infinity),
    mostGr: fronts.reduce((most, { weightGr }) => Math.max(most, weightGr), -Infinity),
    mostEdgeGr: fronts.reduce((most, { trim }) => Math.max(most, trim.edgeGr), 0),
    mostSeatIn: fronts.reduce((most, { seatIn }) => Math.max(most, seatIn), 0),
    leastMomentGrIn: ends.reduce((least, [low]) => Math.min(least, low), Infinity),
    mostMomentGrIn: ends.reduce((most, [, high]) => Math.max(most, high), -Infinity),
    mostSpare: spares.reduce((most, n) => Math.max(most, n), -Infinity),
    leastPriceCents: prices.reduce((least, cents) => Math.min(least, cents), Infinity),
  }
}
