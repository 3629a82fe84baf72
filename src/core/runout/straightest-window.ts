import { bounds, known, noAnswer, type Outcome, term } from '../outcome'
import { difference, inches, type Length, metres } from '../quantity'
import { outside, refusal } from '../refusal'
import { type CentreLine, centreLine, type Spun, spunProblems } from './centre-line'
import { type RunOut, runOutOf, type Sides } from './run-out'

/** A stretch of the raw shaft, and what it would read spun on rollers at its two ends. */
export interface Window {
  /** Off the nock end, from the raw end to the new one. */
  readonly offNock: Length
  readonly offPoint: Length
  readonly runOut: RunOut
  /** Where along the raw shaft the cut shaft would run out most. */
  readonly at: Length
}

export interface StraightestWindow {
  readonly window: Window
  /** The same length with as much off either end. */
  readonly equal: Window
}

export interface WindowQuestion {
  readonly spun: Spun
  /** Carbon to carbon of the cut shaft. */
  readonly c2c: Length
  /** By how much run-out must fall for a cut off centre to be worth it. */
  readonly worthwhile: Length
}

export const WORTHWHILE_BOUNDS = bounds(inches(0), inches(0.1))
/** Half the step of a usual dial: less is not seen. [CP] */
export const WORTHWHILE = inches(0.000_5)

const PLACES = 100 // windows looked at, evenly along what may come off
const STATIONS = 32 // places looked at in each

/**
 * The stretch of a raw shaft that runs out least when cut to a length, from the run-out read along it.
 *
 *   remaining at s = |c(s) − chord(s)|, c the shape of the shaft, its bends in any plane, chord through the window's ends
 *
 * Of all windows no worse than the best by more than is worthwhile, the one nearest to equal ends.
 *
 * @returns the window, and the one with equal ends for comparison; `run-out-extrapolated` when it reaches past the outermost
 * roller or station; `window-longer-than-shaft`, or what is wrong with the readings
 *
 * Source: [ARR203] for the reading; the shape by parabolas through neighbouring readings [OWN].
 * Error: that of the readings, near 0.0005 in; a bend between two stations is seen as far as they see it.
 */
export function straightestWindow({ spun, c2c, worthwhile }: WindowQuestion): Outcome<StraightestWindow> {
  const refused = refusal([
    ...spunProblems(spun),
    ...outside('carbon to carbon', c2c, bounds(inches(1), inches(60)), 'in'),
    ...outside('worthwhile gain', worthwhile, WORTHWHILE_BOUNDS, 'in'),
  ])
  if (refused) return refused
  const spare = difference(spun.rawLength, c2c)
  if (spare < 0) return noAnswer({ code: 'window-longer-than-shaft', window: c2c, raw: spun.rawLength })
  const shape = centreLine(spun)
  const windowAt = (offNock: number): Window => ({
    offNock: metres(offNock),
    offPoint: metres(spare - offNock),
    ...greatestRunOut(shape, offNock, c2c),
  })
  const equal = windowAt(spare / 2)
  const windows = Array.from({ length: PLACES + 1 }, (_, i) => windowAt((spare * i) / PLACES))
  const least = Math.min(equal.runOut.tir, ...windows.map(({ runOut }) => runOut.tir))
  const offCentre = ({ offNock }: Window) => Math.abs(offNock - spare / 2)
  const window = [equal, ...windows]
    .filter(({ runOut }) => runOut.tir <= least + worthwhile)
    .reduce((best, next) => (offCentre(next) < offCentre(best) ? next : best))
  const beyond = reachBeyond(spun, window)
  return known(
    { window, equal },
    {
      equation: 'remaining = max|c(s) − chord(s)| over the window, least over where it may lie',
      inputs: [
        term('raw length', spun.rawLength, 'in'),
        term('carbon to carbon', c2c, 'in'),
        term('rear support', spun.rearSupport, 'in'),
        term('front support', spun.frontSupport, 'in'),
        ...spun.stations.flatMap(({ at, tir, angle }, i) => [
          term(`station ${i + 1}`, at, 'in'),
          term(`station ${i + 1}, run-out`, tir, 'in'),
          term(`station ${i + 1}, angle`, angle, '°'),
        ]),
      ],
      result: [
        term('off the nock end', window.offNock, 'in'),
        term('off the point end', window.offPoint, 'in'),
        term('remaining run-out', window.runOut.tir, 'in'),
        term('its angle', window.runOut.angle, '°'),
        term('remaining with equal ends', equal.runOut.tir, 'in'),
      ],
      source: ['ARR203', 'OWN'],
    },
    beyond > 0 ? [{ code: 'run-out-extrapolated', by: metres(beyond) }] : [],
  )
}

function greatestRunOut(shape: CentreLine, from: number, length: number): Pick<Window, 'runOut' | 'at'> {
  const rear = shape(from)
  const front = shape(from + length)
  let most: Sides = { up: 0, across: 0 }
  let where = from + length / 2
  for (let i = 1; i < STATIONS; i++) {
    const share = i / STATIONS
    const at = from + share * length
    const here = shape(at)
    const off = {
      up: here.up - rear.up - share * (front.up - rear.up),
      across: here.across - rear.across - share * (front.across - rear.across),
    }
    if (Math.hypot(off.up, off.across) > Math.hypot(most.up, most.across)) {
      most = off
      where = at
    }
  }
  return { runOut: runOutOf(most), at: metres(where) }
}

/** How far a window reaches past the outermost roller or station. */
function reachBeyond({ rearSupport, frontSupport, stations, rawLength }: Spun, { offNock, offPoint }: Window): number {
  const places = [rearSupport, frontSupport, ...stations.map(({ at }) => at)]
  return Math.max(Math.min(...places) - offNock, rawLength - offPoint - Math.max(...places))
}
