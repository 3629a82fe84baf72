import { bounds } from '../outcome'
import { type Mass, grains } from '../quantity'

export type BowKind = 'compound' | 'recurve' | 'longbow'

/** A virtual mass and how well it is known, before the bow's own readings say better. */
export interface VirtualMassBelief {
  readonly value: Mass
  readonly sd: Mass
}

/** Typical virtual mass by kind of bow, to be measured: common practice, no source [CP]. */
export const VIRTUAL_MASS_PRIOR: Readonly<Record<BowKind, VirtualMassBelief>> = Object.freeze({
  compound: { value: grains(80), sd: grains(30) },
  recurve: { value: grains(90), sd: grains(30) },
  longbow: { value: grains(130), sd: grains(40) },
})

export const VIRTUAL_MASS_BOUNDS = Object.freeze({
  value: bounds(grains(0), grains(5000)),
  sd: bounds(grains(0), grains(200)),
})
