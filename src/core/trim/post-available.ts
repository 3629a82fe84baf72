import { kilograms, type Length, type Mass, metres } from '../quantity'
import type { Post } from './post'
import { linearDensityOf } from './weight-per-length'

export interface Available {
  readonly length: Length
  readonly weight: Mass
}

/**
 * How much may come off the rear of a post before its bond gets too short: the stacked weights, which hold no bond, and of
 * the bonded sections what is more than the least. Nothing when the bond is too short already. For posts already found to
 * be sound.
 */
export function postAvailable({ sections, leastBond }: Post): Available {
  let bond = sections.reduce((total, { length, bonded }) => total + (bonded ? length : 0), 0) // m
  let length = 0
  let weight = 0
  for (const section of sections) {
    const take = section.bonded ? Math.min(section.length, Math.max(0, bond - leastBond)) : section.length
    length += take
    weight += take * linearDensityOf(section)
    if (take < section.length) break
    if (section.bonded) bond -= take
  }
  return { length: metres(length), weight: kilograms(weight) }
}
