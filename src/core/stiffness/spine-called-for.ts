import type { Arrow } from '../arrow/arrow'
import { rootBetween } from '../numeric/root-between'
import { type Bounds, type Known, known, noAnswer, type Outcome, term } from '../outcome'
import { type Length, metres, type Ratio } from '../quantity'
import { columnReserve } from './column-reserve'
import type { Launch } from './nock-force'
import { bandProblems } from './reserve-band'
import { SPINE_BOUNDS } from './static-spine'

/** Both ends of the static spines a bow, a length and a front weight call for; the softest is the greater number. */
export interface SpineRange {
  readonly softest: Length
  readonly stiffest: Length
}

export interface SpineQuestion {
  readonly launch: Launch
  readonly band: Bounds<Ratio>
  /** The arrow with a shaft of a static spine, or why there is none; its reserve must fall as the spine softens. */
  readonly arrowAt: (spine: Length) => Outcome<Arrow>
}

const TOLERANCE = 1e-12 // m
const { min: HARDEST, max: SOFTEST } = SPINE_BOUNDS

/**
 * Which static spines put the column reserve of an arrow in the band.
 *
 *   softest: reserve = band.min,   stiffest: reserve = band.max
 *
 * @returns both ends within {@link SPINE_BOUNDS}, with `spine-range-cut-off` for an end that lies beyond;
 * `no-spine-stiff-enough` or `no-spine-soft-enough` where the whole range does; the refusals of `arrowAt` and
 * {@link columnReserve}
 *
 * Source: [OWN], {@link columnReserve} turned round by false position.
 */
export function spineCalledFor(question: SpineQuestion): Outcome<SpineRange> {
  const { launch, band } = question
  const [problem] = bandProblems(band)
  if (problem !== undefined) return noAnswer(problem)
  const most = reserveAt(question, HARDEST)
  if (!most.ok) return most
  const least = reserveAt(question, SOFTEST)
  if (!least.ok) return least
  if (most.value < band.min) {
    return noAnswer({ code: 'no-spine-stiff-enough', spine: HARDEST, reserve: most.value, wanted: band.min })
  }
  if (least.value > band.max) {
    return noAnswer({ code: 'no-spine-soft-enough', spine: SOFTEST, reserve: least.value, wanted: band.max })
  }
  const softest = least.value > band.min ? cutOff('softest', least) : spineOf(question, band.min)
  if (!softest.ok) return softest
  const stiffest = most.value < band.max ? cutOff('stiffest', most) : spineOf(question, band.max)
  if (!stiffest.ok) return stiffest
  const range = { softest: softest.value, stiffest: stiffest.value }
  return known(
    range,
    {
      equation: 'reserve(δ) = low end of the band at the softest, high end at the stiffest',
      inputs: [
        term('band, low end', band.min, '1', 'shop rule'),
        term('band, high end', band.max, '1', 'shop rule'),
        term('peak draw weight', launch.peakDraw, 'lbf'),
        term('virtual mass', launch.virtualMass, 'gr'),
      ],
      result: [term('softest spine', range.softest, 'in'), term('stiffest spine', range.stiffest, 'in')],
      source: ['OWN'],
      steps: [softest.derivation, stiffest.derivation],
    },
    [...softest.findings, ...stiffest.findings],
  )
}

function reserveAt({ arrowAt, launch }: SpineQuestion, spine: Length): Outcome<Ratio> {
  const arrow = arrowAt(spine)
  return arrow.ok ? columnReserve(arrow.value, launch) : arrow
}

/** The spine at which the reserve is the one wanted; its inverse is nearly straight over the spine. */
function spineOf(question: SpineQuestion, wanted: Ratio): Outcome<Length> {
  const missAt = (spine: number): Outcome<number> => {
    const reserve = reserveAt(question, metres(spine))
    return reserve.ok ? { ...reserve, value: 1 / reserve.value - 1 / wanted } : reserve
  }
  const spine = rootBetween(missAt, HARDEST, SOFTEST, TOLERANCE)
  return spine.ok ? { ...spine, value: metres(spine.value) } : spine
}

const cutOff = (end: 'softest' | 'stiffest', reserve: Known<Ratio>): Outcome<Length> => {
  const spine = end === 'softest' ? SOFTEST : HARDEST
  return known(spine, reserve.derivation, [{ code: 'spine-range-cut-off', spine, end }])
}
