import { type Bounds, bounds } from '../outcome'
import { type Density, gigapascals, gramsPerCubicCentimetre, type Pressure } from '../quantity'
import type { SourceKey } from '../sources'

export interface Material {
  readonly density: Density
  readonly densitySource: SourceKey
  /** Where a grade covers a range, its ends; `density` is then the middle, and the part's own class decides. */
  readonly densityRange?: Bounds<Density>
  readonly youngsModulus?: Pressure
  readonly modulusSource?: SourceKey
}

const g = gramsPerCubicCentimetre
const metal = (density: number, modulusGPa: number, densitySource: SourceKey = 'MATERIALS') => ({
  density: g(density),
  densitySource,
  youngsModulus: gigapascals(modulusGPa),
  modulusSource: 'HANDBOOK_E' as const,
})

/**
 * What posts, inserts, collars and sleeves are made of. Densities [MATERIALS]; of 17-4PH and of titanium from memory, of
 * tungsten heavy alloy by class [B777]. Young's moduli [HANDBOOK_E], from memory; for tungsten none is given.
 */
export const MATERIALS = Object.freeze({
  'stainless 303/304': metal(8, 193),
  'stainless 316': metal(8, 193),
  '17-4PH': metal(7.8, 193, 'MEMORY'),
  'steel 1020': metal(7.87, 205),
  'steel 4140': metal(7.85, 205),
  'aluminium 6061': metal(2.7, 69),
  'aluminium 7075': metal(2.81, 72),
  'aluminium 2024': metal(2.78, 72),
  'brass C36000': metal(8.5, 97),
  'titanium 6Al-4V': metal(4.43, 114, 'MEMORY'), // 4.42 [MATERIALS]
  'tungsten heavy alloy': {
    density: g(17.85),
    densitySource: 'B777',
    densityRange: bounds(g(16.85), g(18.85)),
  },
} as const satisfies Record<string, Material>)

export type MaterialName = keyof typeof MATERIALS

/** Cured epoxy runs from 1.1 to 1.2 g/cm³ [MATERIALS]. */
export const CURED_EPOXY = Object.freeze({ density: g(1.15), densityRange: bounds(g(1.1), g(1.2)) })
