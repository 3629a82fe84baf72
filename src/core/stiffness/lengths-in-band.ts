import type { Arrow } from '../arrow/arrow'
import { outsideModel } from '../finding'
import { rootBetween } from '../numeric/root-between'
import { type Bounds, known, noAnswer, type Outcome, term, within } from '../outcome'
import { type Length, metres, type Ratio } from '../quantity'
import { BEAM_BOUNDS } from './arrow-problems'
import { columnReserve } from './column-reserve'
import type { Launch } from './nock-force'
import { bandProblems } from './reserve-band'

/** The lengths whose reserve is in the band, and whether the band or the lengths looked at set each end. */
export interface LengthRange {
  readonly shortest: Length
  readonly longest: Length
  readonly shortestBy: 'reserve' | 'range'
  readonly longestBy: 'reserve' | 'range'
}

export interface LengthQuestion {
  readonly launch: Launch
  readonly band: Bounds<Ratio>
  /** Lengths to look at, as `arrowAt` takes them: what the raw shaft allows. */
  readonly range: Bounds<Length>
  /** The arrow cut to a length, or why there is none; its reserve must fall as it grows. */
  readonly arrowAt: (length: Length) => Outcome<Arrow>
}

const TOLERANCE = 1e-9 // m

/**
 * How long a shaft may be for its stiffness, and how short before it is stiffer than the band asks.
 *
 *   longest: reserve = band.min,   shortest: reserve = band.max
 *
 * @returns both ends within the range; `no-length-short-enough` or `no-length-long-enough` where none of it is in the
 * band; the refusals of `arrowAt` and {@link columnReserve}; `outside-model` or `range-reversed` for a range that is none
 *
 * Source: [OWN], {@link columnReserve} turned round by false position.
 */
export function lengthsInBand(question: LengthQuestion): Outcome<LengthRange> {
  const { launch, band, range } = question
  const [problem] = [...bandProblems(band), ...rangeProblems(range)]
  if (problem !== undefined) return noAnswer(problem)
  const most = reserveAt(question, range.min)
  if (!most.ok) return most
  const least = reserveAt(question, range.max)
  if (!least.ok) return least
  if (most.value < band.min) {
    return noAnswer({ code: 'no-length-short-enough', length: range.min, reserve: most.value, wanted: band.min })
  }
  if (least.value > band.max) {
    return noAnswer({ code: 'no-length-long-enough', length: range.max, reserve: least.value, wanted: band.max })
  }
  const shortestBy = most.value > band.max ? 'reserve' : 'range'
  const longestBy = least.value < band.min ? 'reserve' : 'range'
  const shortest = shortestBy === 'reserve' ? lengthOf(question, band.max) : { ...most, value: range.min }
  if (!shortest.ok) return shortest
  const longest = longestBy === 'reserve' ? lengthOf(question, band.min) : { ...least, value: range.max }
  if (!longest.ok) return longest
  const value = { shortest: shortest.value, longest: longest.value, shortestBy, longestBy } as const
  return known(value, {
    equation: 'reserve(length) = low end of the band at the longest, high end at the shortest',
    inputs: [
      term('band, low end', band.min, '1', 'shop rule'),
      term('band, high end', band.max, '1', 'shop rule'),
      term('shortest looked at', range.min, 'in'),
      term('longest looked at', range.max, 'in'),
      term('peak draw weight', launch.peakDraw, 'lbf'),
      term('virtual mass', launch.virtualMass, 'gr'),
    ],
    result: [term('shortest', value.shortest, 'in'), term('longest', value.longest, 'in')],
    source: ['OWN'],
    steps: [shortest.derivation, longest.derivation],
  })
}

function rangeProblems({ min, max }: Bounds<Length>) {
  const { length } = BEAM_BOUNDS
  if (!within(min, length)) return [outsideModel('shortest length looked at', min, length, 'in')]
  if (!within(max, length)) return [outsideModel('longest length looked at', max, length, 'in')]
  return min <= max ? [] : [{ code: 'range-reversed', shortest: min, longest: max } as const]
}

function reserveAt({ arrowAt, launch }: LengthQuestion, length: Length): Outcome<Ratio> {
  const arrow = arrowAt(length)
  return arrow.ok ? columnReserve(arrow.value, launch) : arrow
}

/** The length at which the reserve is the one wanted. */
function lengthOf(question: LengthQuestion, wanted: Ratio): Outcome<Length> {
  const missAt = (at: number): Outcome<number> => {
    const reserve = reserveAt(question, metres(at))
    return reserve.ok ? { ...reserve, value: reserve.value - wanted } : reserve
  }
  const at = rootBetween(missAt, question.range.min, question.range.max, TOLERANCE)
  return at.ok ? { ...at, value: metres(at.value) } : at
}
