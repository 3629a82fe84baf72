import { DRAW_WEIGHT_BOUNDS } from '../energy/grains-per-pound'
import type { Finding } from '../finding'
import { positiveBand } from '../numeric/band'
import { type Estimate, type Outcome, bounds, known, term } from '../outcome'
import {
  type Energy,
  type Force,
  type Length,
  type Ratio,
  difference,
  greatest,
  inches,
  joules,
  magnitude,
  newtons,
  poundsForce,
  ratio,
} from '../quantity'
import { outside, refusal } from '../refusal'

/** A point of a force-draw curve: where the string is, measured from anywhere that stays put, and the force there. */
export interface DrawPoint {
  readonly draw: Length
  readonly force: Force
}

export interface StoredEnergy {
  readonly energy: Estimate<Energy>
  readonly peak: Force
  readonly stroke: Length
  /** W/(F·d): one half for a straight line, more for a curve that bulges above it. */
  readonly fullness: Ratio
  /** The share of the stored energy that the let-down curve does not give back; absent without one. */
  readonly hysteresis?: Ratio
}

export const CURVE_BOUNDS = Object.freeze({
  draw: bounds(inches(0), inches(60)),
  force: bounds(poundsForce(0), poundsForce(400)),
})
const FEWEST = 3
const SCALE_ERROR = 0.01 // of the force, common to all points: common practice, no source [CP]
const STARTS_ABOVE = 0.05 // of the peak
const SAME_SPAN = inches(0.5)
const LEAST_STEP = inches(0.01)

/**
 * Energy stored in a drawn bow: the area under its force-draw curve, by the trapezoid rule, as [TUYN92] took it. What the
 * rule leaves out between points is estimated from the curve's second differences and counted as error, together with
 * 1 % of the force for the scale.
 *
 * @param points from brace height to full draw, in order
 * @param letDown the same on the way back, in either order; gives the hysteresis
 * @returns the energy with peak, stroke and fullness. Says `curve-starts-with-force`, `let-down-spans-another-draw` and
 * `let-down-above-draw` beside it (the last two without a hysteresis); none for `too-few-points`, `draw-does-not-go-on`
 * and `outside-model`
 *
 * Source: [F1832] for the area, [TUYN92] for the rule.
 */
export function storedEnergy(points: readonly DrawPoint[], letDown: readonly DrawPoint[] = []): Outcome<StoredEnergy> {
  const back = isBackwards(letDown) ? letDown.toReversed() : letDown
  const refused = refusal([
    ...curveProblems('force-draw curve', points),
    ...(back.length === 0 ? [] : curveProblems('let-down curve', back)),
  ])
  if (refused) return refused
  const first = points[0]!
  const last = points.at(-1)!
  const peak = peakOf(points)
  const stroke = difference(last.draw, first.draw)
  const work = area(points)
  const energy = positiveBand(joules(work), joules(Math.hypot(SCALE_ERROR * work, leftOut(points))))
  const start: readonly Finding[] =
    first.force > STARTS_ABOVE * peak ? [{ code: 'curve-starts-with-force', force: first.force, peak }] : []
  const down = returned(points, back, work)
  const stored: StoredEnergy = { energy, peak, stroke, fullness: ratio(work / (peak * stroke)), ...down.hysteresis }
  return known(
    stored,
    {
      equation: 'W = ∫F·dx from brace height to full draw, by trapezoids between the points',
      inputs: points.flatMap(({ draw, force }, i) => [
        term(`draw ${i + 1}`, draw, 'in'),
        term(`force ${i + 1}`, force, 'lbf'),
      ]),
      result: [
        term('stored energy', energy.value, 'ft·lbf'),
        term('standard error of the stored energy', energy.sd, 'ft·lbf'),
        term('share of peak force times stroke', stored.fullness, '1'),
        ...(stored.hysteresis === undefined ? [] : [term('hysteresis', stored.hysteresis, '%')]),
      ],
      source: ['F1832', 'TUYN92'],
    },
    [...start, ...down.findings],
  )
}

const peakOf = (points: readonly DrawPoint[]) => greatest(newtons(0), ...points.map(({ force }) => force))
const isBackwards = (points: readonly DrawPoint[]) => points.length > 1 && points[0]!.draw > points.at(-1)!.draw

function curveProblems(curve: string, points: readonly DrawPoint[]): readonly Finding[] {
  if (points.length < FEWEST) return [{ code: 'too-few-points', of: curve, count: points.length, needed: FEWEST }]
  const ranges = points.flatMap(({ draw, force }, i) => [
    ...outside(`draw ${i + 1} of the ${curve}`, draw, CURVE_BOUNDS.draw, 'in'),
    ...outside(`force ${i + 1} of the ${curve}`, force, CURVE_BOUNDS.force, 'lbf'),
  ])
  if (ranges.length > 0) return ranges
  const stuck = points.findIndex(({ draw }, i) => i > 0 && !(draw - points[i - 1]!.draw >= LEAST_STEP))
  if (stuck > 0) return [{ code: 'draw-does-not-go-on', curve, position: stuck + 1, draw: points[stuck]!.draw }]
  return outside(`peak of the ${curve}`, peakOf(points), DRAW_WEIGHT_BOUNDS, 'lbf')
}

/** J; SI inside. */
const area = (points: readonly DrawPoint[]) =>
  points.reduce((total, p, i) => {
    const before = points[i - 1] ?? p
    return total + ((p.force + before.force) / 2) * (p.draw - before.draw)
  }, 0)

/** J: a sixth of the triangle of each three neighbours, h³/12 of the second derivative where the steps h are equal. */
const leftOut = (points: readonly DrawPoint[]) =>
  points.slice(1, -1).reduce((total, p, i) => {
    const before = points[i]!
    const after = points[i + 2]!
    const rear = p.draw - before.draw
    const front = after.draw - p.draw
    const bend = (after.force - p.force) * rear - (p.force - before.force) * front
    return total + Math.abs(bend) / 12
  }, 0)

/** The hysteresis, where there is a let-down curve over the same draw that lies below the other. */
function returned(
  points: readonly DrawPoint[],
  back: readonly DrawPoint[],
  work: number,
): { readonly findings: readonly Finding[]; readonly hysteresis?: { readonly hysteresis: Ratio } } {
  if (back.length === 0) return { findings: [] }
  const draw = bounds(points[0]!.draw, points.at(-1)!.draw)
  const letDown = bounds(back[0]!.draw, back.at(-1)!.draw)
  const apart = greatest(magnitude(difference(draw.min, letDown.min)), magnitude(difference(draw.max, letDown.max)))
  if (apart > SAME_SPAN) return { findings: [{ code: 'let-down-spans-another-draw', draw, letDown }] }
  const given = area(back)
  if (given > work)
    return { findings: [{ code: 'let-down-above-draw', stored: joules(work), returned: joules(given) }] }
  return { findings: [], hysteresis: { hysteresis: ratio(1 - given / work) } }
}
