import type { Finding } from '../finding'
import { positiveBand, symmetricBand } from '../numeric/band'
import { type Outcome, bounds, known, noAnswer, term } from '../outcome'
import { type Speed, greatest, joules, kilograms, least, ratio } from '../quantity'
import { refusal } from '../refusal'
import type { BowEnergy } from './bow-energy'
import { type InverseSquareLine, inverseSquareLine } from './inverse-square-line'
import { CHRONOGRAPH_SD, type ChronographReading, readingProblems } from './reading'
import { wildReading } from './wild-reading'

/** Slope's standard error over the slope of a bow without virtual mass: above the first say so, above the second refuse. */
const CLOSE = 0.25
const TOO_CLOSE = 1
const MUCH_SCATTER = 2
const ROUNDING = 1e-12

/**
 * A bow's energy and virtual mass from chronograph readings of two or more arrow weights.
 *
 *   E = ½(m + m_v)v²  ⇒  1/v² = m_v/(2E) + m/(2E): a straight line in m, by plain least squares
 *
 * Each reading's error is carried through that line; where three or more readings scatter more than the error explains,
 * it is taken as much larger. The energy found is below the energy stored at full draw: part of that always stays in the
 * bow in proportion to the arrow's weight.
 *
 * @param speedSd standard error of one reading
 * @returns energy and virtual mass with their correlation and the weights measured. Says `weights-too-close`,
 * `readings-scatter` and `wild-reading` beside the answer; gives none for `too-few-points`, `equal-weights`, weights much
 * too close, `speed-does-not-fall-with-weight` and `negative-virtual-mass`
 *
 * Source: [KLOPSTEG]; the errors by [GUM] 5.1.2.
 */
export function chronographFit(
  readings: readonly ChronographReading[],
  speedSd: Speed = CHRONOGRAPH_SD,
): Outcome<BowEnergy> {
  const refused = refusal(readingProblems(readings, speedSd))
  if (refused) return refused
  const [first, ...others] = readings.map(({ mass }) => mass)
  if (first === undefined || others.length === 0)
    return noAnswer({ code: 'too-few-points', of: 'chronograph readings', count: readings.length, needed: 2 })
  const lightest = least(first, ...others)
  const heaviest = greatest(first, ...others)
  const line = inverseSquareLine(readings, speedSd)
  if (line === undefined) return noAnswer({ code: 'equal-weights', mass: lightest })

  const close: Finding = {
    code: 'weights-too-close',
    lightest,
    heaviest,
    uncertainty: ratio(unresolved(readings, speedSd)),
    speedSd,
  }
  if (close.uncertainty > TOO_CLOSE) return noAnswer(close)
  const wild = wildReading(readings, speedSd)
  const named: readonly Finding[] = wild
    ? [{ code: 'wild-reading', position: wild.index + 1, expected: wild.expected, ...readings[wild.index]! }]
    : []
  if (line.slope <= line.slopeSd)
    return noAnswer({ code: 'speed-does-not-fall-with-weight', lightest, heaviest }, ...named)

  const bow = { ...estimates(line), measured: bounds(lightest, heaviest) }
  const { energy, virtualMass } = bow
  if (virtualMass.value < -ROUNDING * heaviest)
    return noAnswer({ code: 'negative-virtual-mass', virtualMass: virtualMass.value, sd: virtualMass.sd }, ...named)

  const scatter: readonly Finding[] =
    line.scatter > MUCH_SCATTER ? [{ code: 'readings-scatter', times: line.scatter, speedSd }] : []
  return known(
    bow,
    {
      equation: '1/v² = (m + m_v) / (2·E), a straight line in m through the readings by least squares',
      inputs: [
        ...readings.flatMap(({ mass, speed }, i) => [
          term(`arrow weight ${i + 1}`, mass, 'gr'),
          term(`arrow speed ${i + 1}`, speed, 'ft/s'),
        ]),
        term('error of one reading', speedSd, 'ft/s'),
      ],
      result: [
        term('bow energy', energy.value, 'ft·lbf'),
        term('standard error of the bow energy', energy.sd, 'ft·lbf'),
        term('virtual mass', virtualMass.value, 'gr'),
        term('standard error of the virtual mass', virtualMass.sd, 'gr'),
      ],
      source: ['KLOPSTEG', 'GUM'],
      note: 'Below the energy stored at full draw: some of that stays in the bow in proportion to the arrow weight.',
    },
    [...(close.uncertainty > CLOSE ? [close] : []), ...scatter, ...named],
  )
}

/** How far the weights leave the slope open at the chronograph's error, whatever the readings say. */
function unresolved(readings: readonly ChronographReading[], speedSd: Speed): number {
  const masses = readings.map(({ mass }) => mass)
  const mean = masses.reduce((total, mass) => total + mass, 0) / masses.length
  const spread = Math.hypot(...masses.map((mass) => mass - mean))
  const speeds = readings.map(({ speed }) => speed).sort((v, w) => v - w)
  const usual = speeds[Math.floor(speeds.length / 2)]! // the median, which one wild reading does not move
  return ((2 * speedSd) / usual) * (mean / spread)
}

/** E = 1/(2b) and m_v = a/b, with each reading's share of their errors. */
function estimates(line: InverseSquareLine): BowEnergy {
  const { intercept, slope, shares } = line
  const energy = 1 / (2 * slope) // J
  const virtualMass = intercept / slope // kg
  const ofEnergy = shares.map((share) => (-energy * share.slope) / slope)
  const ofMass = shares.map((share) => (share.intercept - virtualMass * share.slope) / slope)
  const energySd = Math.hypot(...ofEnergy)
  const massSd = Math.hypot(...ofMass)
  const together = ofEnergy.reduce((total, e, i) => total + e * ofMass[i]!, 0)
  return {
    energy: positiveBand(joules(energy), joules(energySd)),
    virtualMass: symmetricBand(kilograms(virtualMass), kilograms(massSd)),
    correlation: ratio(together / (energySd * massSd)),
  }
}
