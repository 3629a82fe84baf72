import type { Finding } from '../finding'
import { type Ratio, ratio, seconds, type Temperature, type Time } from '../quantity'
import { known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { cureRate } from './cure-rate'
import type { CuringGlue } from './glue'
import { CURE_BOUNDS, glueProblems } from './glue-problems'

/** A stretch of time at one temperature. */
export interface Spell {
  readonly temperature: Temperature
  readonly lasted: Time
}

export interface CureProgress {
  /** What all the spells come to, in time at the stated temperature. */
  readonly equivalent: Time
  /** Share of the way, 1 and more when reached. */
  readonly handle: Ratio
  readonly shoot: Ratio
  readonly full: Ratio
}

/**
 * How far a bond has cured over a room's warm days and cold nights. A spell too cold or too hot counts for nothing and is
 * a finding.
 *
 *   equivalent = Σ time·2^((temperature − stated temperature)/10 K)
 *
 * @returns the progress, or what is wrong with the glue's figures or a spell
 *
 * Source: common practice, no source [CP]: ten degrees about double the rate.
 */
export function cureProgress(glue: CuringGlue, spells: readonly Spell[]): Outcome<CureProgress> {
  const refused = refusal([
    ...glueProblems(glue),
    ...spells.flatMap(({ temperature, lasted }) => [
      ...outside('temperature of a spell', temperature, CURE_BOUNDS.temperature, 'K'),
      ...outside('length of a spell', lasted, CURE_BOUNDS.already, 'h'),
    ]),
  ])
  if (refused) return refused
  const findings = spells.flatMap(({ temperature: at }): readonly Finding[] => {
    if (at < glue.least) return [{ code: 'too-cold-to-cure', at, least: glue.least }]
    return at > glue.most ? [{ code: 'too-hot-to-cure', at, most: glue.most }] : []
  })
  const counts = ({ temperature }: Spell) => temperature >= glue.least && temperature <= glue.most
  const equivalent = seconds(
    spells.filter(counts).reduce((s, { temperature, lasted }) => s + lasted * cureRate(glue.at, temperature), 0),
  )
  const value = {
    equivalent,
    handle: ratio(equivalent / glue.handle),
    shoot: ratio(equivalent / glue.shoot),
    full: ratio(equivalent / glue.full),
  }
  return known(
    value,
    {
      equation: 'equivalent = Σ time·2^((temperature − stated temperature)/10 K)',
      inputs: [
        term('stated temperature', glue.at, 'K', 'catalogue'),
        ...spells.flatMap(({ temperature, lasted }, i) => [
          term(`temperature of spell ${i + 1}`, temperature, 'K', 'read'),
          term(`length of spell ${i + 1}`, lasted, 'h', 'read'),
        ]),
      ],
      result: [term('cure at the stated temperature', equivalent, 'h')],
      source: ['CP'],
    },
    findings,
  )
}
