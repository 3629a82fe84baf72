/**
 * How stiff a shaft the bow, the likely length and the weight in front call for, and how long one may be cut. The arrow is
 * taken in outline: an even shaft, nock and vanes at the throat, everything else in front, landing on the working weight
 * unless the shaft alone is so heavy that too little is left for the front.
 */
import { customaryShaft } from '../../core/stiffness/customary-shaft'
import { lengthsInBand, type LengthRange } from '../../core/stiffness/lengths-in-band'
import type { Launch } from '../../core/stiffness/nock-force'
import { outlineArrow } from '../../core/stiffness/outline-arrow'
import { spineCalledFor, type SpineRange } from '../../core/stiffness/spine-called-for'
import { rigidityFromSpine } from '../../core/stiffness/static-spine'
import { arrowLength, c2cOf } from '../../core/cut/arrow-length'
import type { Arrow } from '../../core/arrow/arrow'
import type { BowSpeed } from '../../core/bow/bow-speed'
import { VIRTUAL_MASS_PRIOR } from '../../core/bow/virtual-mass-prior'
import { type Bounds, type Derivation, type Known, type Outcome, bounds, term } from '../../core/outcome'
import {
  type Length,
  type LinearDensity,
  type Mass,
  type Ratio,
  difference,
  grains,
  greatest,
  inches,
  kilograms,
  least,
  metres,
  ratio,
} from '../../core/quantity'
import type { Rules } from '../shop/rules'
import type { Answers } from './answers'
import type { CallBow } from './call-bow'
import type { Follows, Origins } from './follows'
import { figure, needs, tracedOutcome, valueIn } from './follows'
import type { SensibleWeight } from './sensible-weight'
import { NOCK_STANDOUT } from './shortest-cut'
import { toldText } from './told'

/** Nock, four vanes and their glue, common practice, no source [CP]. */
export const REAR_WEIGHT = grains(40)
/** A post and the lightest head that is ever hunted with, common practice, no source [CP]: no front is lighter. */
const LEAST_IN_FRONT = grains(125)

export interface ShaftOnShelf {
  readonly name: string
  readonly spine: Length
  readonly weightPerLength: LinearDensity
  readonly rawLength: Length
}

export interface StiffnessQuestion {
  readonly launch: Launch
  readonly band: Bounds<Ratio>
  readonly working: Mass
  /** Throat to shaft front as the arrow is likely to be cut. */
  readonly length: Length
  readonly origins: Origins
}

export interface CalledFor extends SpineRange {
  readonly length: Length
  /** What is left for the front once a shaft from the middle of the range and the rear are taken off. */
  readonly front: Mass
}

/** The shop's band for this bow: one shot with the fingers has its own. */
export function reserveBand(answers: Answers, bow: CallBow, rules: Rules): Bounds<Ratio> {
  const of = toldText(answers, 'looseWith') === 'fingers' ? 'fingers' : bow.kind
  const { min, max } = rules.reserve[of]
  return bounds(ratio(min), ratio(max))
}

export function stiffnessQuestion(
  bow: CallBow,
  weight: Follows<SensibleWeight>,
  speed: Follows<BowSpeed>,
  band: Bounds<Ratio>,
  length: Length,
  lengthOrigin: Origins,
): StiffnessQuestion | Follows<never> {
  const working = valueIn(weight)
  if (bow.peak === undefined) return needs('peakDrawWeightLb', 'labelDrawWeightLb')
  if (working === undefined) return weight as Follows<never>
  const fitted = valueIn(speed)
  const isFitted = fitted?.provenance === 'chronograph'
  return {
    launch: {
      peakDraw: bow.peak,
      virtualMass: isFitted ? fitted.virtualMass.value : VIRTUAL_MASS_PRIOR[bow.kind].value,
    },
    band,
    working: working.working,
    length,
    origins: {
      ...bow.origins,
      ...lengthOrigin,
      'virtual mass': isFitted ? { origin: 'computed' } : { origin: 'assumed', ref: 'CP' },
      'finished weight': { origin: working.workingFrom === 'wish' ? 'answered' : 'shop rule' },
      'rear, weight': { origin: 'assumed', ref: 'CP' },
      'front, weight': { origin: 'computed' },
      'shaft weight': { origin: 'assumed', ref: 'CP' },
    },
  }
}

const middleOf = ({ softest, stiffest }: SpineRange) => metres(Math.sqrt(softest * stiffest))

export function calledFor(question: StiffnessQuestion): Follows<CalledFor> {
  const { launch, band, length, origins } = question
  const range = spineCalledFor({ launch, band, arrowAt: (spine) => landingAt(question, spine, length) })
  if (!range.ok) return figure(range)
  const middle = landingAt(question, middleOf(range.value), length)
  if (!middle.ok) return figure(middle)
  const front = middle.value.pieces[1]!.mass
  const derivation: Derivation = {
    ...range.derivation,
    inputs: [
      ...range.derivation.inputs,
      term('arrow length', length, 'in'),
      term('finished weight', question.working, 'gr'),
      term('rear, weight', REAR_WEIGHT, 'gr'),
    ],
    note: 'An arrow in outline on the working weight, its shaft as heavy as shafts of its spine customarily are. Bare-shaft tuning on the bow decides.',
  }
  const answered: Known<CalledFor> = { ...range, value: { ...range.value, length, front }, derivation }
  return figure(tracedOutcome(answered, origins))
}

/** An arrow of a static spine that lands on the working weight. */
function landingAt(question: StiffnessQuestion, spine: Length, length: Length): Outcome<Arrow> {
  const weight = customaryShaft(spine)
  return weight.ok ? landing(question, spine, weight, length) : weight
}

function landing(
  { working }: StiffnessQuestion,
  spine: Length,
  weight: Known<LinearDensity>,
  length: Length,
): Outcome<Arrow> {
  const rigidity = rigidityFromSpine(spine)
  if (!rigidity.ok) return rigidity
  const shaft = kilograms(weight.value * length)
  const frontMass = greatest(LEAST_IN_FRONT, difference(difference(working, shaft), REAR_WEIGHT))
  const arrow = outlineArrow({
    length,
    rigidity: rigidity.value,
    shaftWeightPerLength: weight.value,
    frontMass,
    rearMass: REAR_WEIGHT,
  })
  return { ...rigidity, value: arrow }
}

export interface LongestCut extends LengthRange {
  /** Carbon to carbon of the longest. */
  readonly c2c: Length
  readonly shaft: ShaftOnShelf
  /** What ends it: the shop's band, the raw shaft, or too little weight left for the front. */
  readonly endsBy: 'stiffness' | 'raw length' | 'front weight'
  /** None on the shelf fits: a shaft from the middle of the range stands in for it. */
  readonly isAssumed: boolean
}

/**
 * How long a shaft may be cut, throat to shaft front: of those on the shelf that the bow calls for, the stiffest, which
 * may be longest.
 */
export function longestCut(
  question: StiffnessQuestion,
  called: SpineRange,
  shafts: readonly ShaftOnShelf[],
): Follows<LongestCut> {
  const fitting = shafts
    .filter(({ spine }) => spine >= called.stiffest && spine <= called.softest)
    .toSorted((a, b) => a.spine - b.spine)
  const middle = middleOf(called)
  const customary = customaryShaft(middle)
  if (!customary.ok) return figure(customary)
  const shaft = fitting[0] ?? {
    name: 'middle of the range',
    spine: middle,
    weightPerLength: customary.value,
    rawLength: TYPICAL_RAW,
  }
  const isAssumed = fitting[0] === undefined
  const heaviest = metres(difference(difference(question.working, REAR_WEIGHT), LEAST_IN_FRONT) / shaft.weightPerLength)
  const raw = arrowLength(shaft.rawLength, { nockStandout: NOCK_STANDOUT, shoulder: inches(0) })
  const range = bounds(SHORTEST_LOOKED_AT, least(raw, heaviest))
  const { launch, band, origins } = question
  const weight: Known<LinearDensity> = { ...customary, value: shaft.weightPerLength }
  const found = lengthsInBand({
    launch,
    band,
    range,
    arrowAt: (length) => landing(question, shaft.spine, weight, length),
  })
  if (!found.ok) return figure(found)
  const endsBy = found.value.longestBy === 'reserve' ? 'stiffness' : raw <= heaviest ? 'raw length' : 'front weight'
  const c2c = c2cOf(found.value.longest, { nockStandout: NOCK_STANDOUT, shoulder: inches(0) })
  const derivation: Derivation = {
    ...found.derivation,
    result: [...found.derivation.result, term('longest C2C', c2c, 'in')],
    inputs: [
      ...found.derivation.inputs,
      term('throat to shaft rear, at the nock', NOCK_STANDOUT, 'in', 'assumed', 'CP'),
      term('static spine', shaft.spine, 'in', isAssumed ? 'assumed' : 'catalogue', shaft.name),
      term('weight per inch', shaft.weightPerLength, 'gr/in', isAssumed ? 'assumed' : 'catalogue', shaft.name),
      term('raw length', shaft.rawLength, 'in', isAssumed ? 'assumed' : 'catalogue', shaft.name),
    ],
  }
  return figure(
    tracedOutcome({ ...found, value: { ...found.value, c2c, shaft, endsBy, isAssumed }, derivation }, origins),
  )
}

const TYPICAL_RAW = inches(32.5) // common practice, no source [CP]
const SHORTEST_LOOKED_AT = inches(18)
