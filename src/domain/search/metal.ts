/** Posts and rings in the core's terms, on plain numbers. What is no metal neither stiffens nor is trimmed by weight. */
import { grains, inches, inGrains, millimetres } from '../../core/quantity'
import { stiffeningOf } from '../../core/stiffness/tube-rigidity'
import { chamferWeight } from '../../core/trim/chamfer-weight'
import type { PostSection } from '../../core/trim/post'
import { linearDensityOf } from '../../core/trim/weight-per-length'
import { materialOf } from '../sheet/post-of'

/** E·I of a bonded tube, N·m². */
export function tubeStiffening(material: string, outerMm: number, innerMm: number): number {
  const youngsModulus = materialOf(material)?.youngsModulus
  if (youngsModulus === undefined) return 0
  return stiffeningOf({ outerDiameter: millimetres(outerMm), innerDiameter: millimetres(innerMm), youngsModulus })
}

export interface Bar {
  readonly material: string
  readonly diameterMm: number
  readonly boreMm: number
}

const sectionOf = ({ material, diameterMm, boreMm }: Bar): PostSection | undefined => {
  const density = materialOf(material)?.density
  return density === undefined
    ? undefined
    : {
        name: '',
        length: inches(1),
        outerDiameter: millimetres(diameterMm),
        bore: millimetres(boreMm),
        density,
        bonded: true,
      }
}

/** Grains of an inch of a bar; undefined for what is no metal. */
export function barGrainsPerInch(bar: Bar): number | undefined {
  const section = sectionOf(bar)
  return section && (linearDensityOf(section) * inches(1)) / grains(1)
}

/** Grains that breaking the rear edge takes; 0 where the wall is too thin for it. */
export function edgeGrains(bar: Bar, chamferMm: number): number {
  const section = sectionOf(bar)
  if (section === undefined) return 0
  const edge = chamferWeight(millimetres(chamferMm), section)
  return edge.ok ? inGrains(edge.value) : 0
}
