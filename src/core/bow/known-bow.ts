import type { Finding } from '../finding'
import { type Known, type OriginNote, type Outcome, noAnswer, withOrigins } from '../outcome'
import { type Force, type Length, type Mass, type Speed, inches } from '../quantity'
import type { BowEnergy } from './bow-energy'
import { chronographFit } from './chronograph-fit'
import type { Provenance } from './findings'
import { forceDrawEnergy } from './force-draw-energy'
import { oneWeight } from './one-weight'
import { RATING_CONDITIONS, type RatingConditions, ratedEnergy } from './rated-energy'
import { CHRONOGRAPH_SD, type ChronographReading } from './reading'
import type { DrawPoint } from './stored-energy'
import { type BowKind, VIRTUAL_MASS_PRIOR, type VirtualMassBelief } from './virtual-mass-prior'

/** Whatever is known of a client's bow. Absent means not known. */
export interface KnownBow {
  readonly kind: BowKind
  readonly chronograph?: readonly ChronographReading[]
  /** Standard error of one reading; {@link CHRONOGRAPH_SD} where nothing is said. */
  readonly chronographSd?: Speed
  /** A virtual mass known from elsewhere; without its error, the prior's is taken. */
  readonly virtualMass?: { readonly value: Mass; readonly sd?: Mass }
  readonly forceDraw?: readonly DrawPoint[]
  readonly letDown?: readonly DrawPoint[]
  readonly ratedSpeed?: Speed
  readonly ratingConditions?: RatingConditions
  readonly peakDrawWeight?: Force
  readonly drawLength?: Length
  /** {@link ASSUMED_BRACE_HEIGHT} where nothing is said. */
  readonly braceHeight?: Length
}

/** Common practice, no source [CP]. */
export const ASSUMED_BRACE_HEIGHT = inches(6.75)

export interface SourcedBowEnergy extends BowEnergy {
  readonly provenance: Provenance
}

/**
 * A bow's energy and virtual mass from the source of most trust that answers: readings of two or more arrow weights,
 * readings of one, the force-draw curve, the rating. A source that was given and does not answer says why, beside what
 * the next one answers.
 *
 * @returns energy, virtual mass and provenance; or the findings of all that was given, `speed-not-known` for nothing
 */
export function knownBow(bow: KnownBow): Outcome<SourcedBowEnergy> {
  const failed: { readonly provenance: Provenance; readonly findings: readonly Finding[] }[] = []
  for (const { provenance, energy } of attempts(bow)) {
    const outcome = energy()
    if (outcome.ok) return sourced(outcome, provenance, failed)
    failed.push({ provenance, findings: outcome.findings })
  }
  const [first, ...rest] = failed.flatMap(({ findings }) => findings)
  return noAnswer(first ?? { code: 'speed-not-known' }, ...rest)
}

interface Attempt {
  readonly provenance: Provenance
  readonly energy: () => Outcome<BowEnergy>
}

/** What was given, in falling order of trust. */
function attempts(bow: KnownBow): readonly Attempt[] {
  const readings = bow.chronograph ?? []
  const curve = bow.forceDraw ?? []
  const speedSd = bow.chronographSd ?? CHRONOGRAPH_SD
  const prior = VIRTUAL_MASS_PRIOR[bow.kind]
  const believed: VirtualMassBelief = {
    value: bow.virtualMass?.value ?? prior.value,
    sd: bow.virtualMass?.sd ?? prior.sd,
  }
  const origins: Readonly<Record<string, OriginNote>> = bow.virtualMass
    ? {}
    : { 'virtual mass': { origin: 'assumed', ref: 'CP' } }
  const fit = chronographFit(readings, speedSd)
  const isOneWeight = readings.length === 1 || (!fit.ok && fit.findings.some(saysOneWeight))
  const all: readonly (Attempt & { readonly given: boolean })[] = [
    { provenance: 'chronograph', given: readings.length > 1, energy: () => fit },
    {
      provenance: 'one weight',
      given: isOneWeight,
      energy: () => withOrigins(oneWeight(readings, believed, speedSd), origins),
    },
    {
      provenance: 'force-draw curve',
      given: curve.length > 0,
      energy: () => withOrigins(forceDrawEnergy(curve, bow.letDown ?? [], believed), origins),
    },
    {
      provenance: 'rating',
      given: bow.ratedSpeed !== undefined,
      energy: () => withOrigins(rated(bow, believed), origins),
    },
  ]
  return all.filter(({ given }) => given)
}

const saysOneWeight = ({ code }: Finding) => code === 'equal-weights' || code === 'weights-too-close'

function rated(bow: KnownBow, believed: VirtualMassBelief): Outcome<BowEnergy> {
  const { ratedSpeed, peakDrawWeight, drawLength } = bow
  const braceHeight = bow.braceHeight ?? ASSUMED_BRACE_HEIGHT
  if (ratedSpeed === undefined || peakDrawWeight === undefined || drawLength === undefined) {
    const missing = [
      ...(peakDrawWeight === undefined ? (['peak draw weight'] as const) : []),
      ...(drawLength === undefined ? (['draw length'] as const) : []),
    ]
    return noAnswer({ code: 'rating-needs', missing })
  }
  const setting = { peakDrawWeight, drawLength, braceHeight }
  const energy = ratedEnergy(ratedSpeed, setting, believed, bow.ratingConditions ?? RATING_CONDITIONS)
  return bow.braceHeight === undefined
    ? withOrigins(energy, { 'brace height': { origin: 'assumed', ref: 'CP' } })
    : energy
}

function sourced(
  outcome: Known<BowEnergy>,
  provenance: Provenance,
  failed: readonly { readonly provenance: Provenance; readonly findings: readonly Finding[] }[],
): Known<SourcedBowEnergy> {
  const instead = failed.map((source) => source.provenance)
  const fellBack: readonly Finding[] =
    instead.length > 0 ? [{ code: 'less-trusted-source', used: provenance, instead }] : []
  const why = failed.flatMap(({ findings }) => findings)
  return { ...outcome, value: { ...outcome.value, provenance }, findings: [...fellBack, ...why, ...outcome.findings] }
}
