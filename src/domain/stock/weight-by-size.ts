/**
 * What a part of its size and material can weigh: wide enough for threads, bores and cones that no field tells of, narrow
 * enough for a wrong unit, a moved point or another material. The shares of the full body are our own, no source.
 */
import { grams, inGrains, inUnit } from '../../core/quantity'
import { materialOf } from '../sheet/post-of'
import type { Part } from './part'

const MM_PER_IN = 25.4 // exact [SP811]
const MM3_PER_CM3 = 1000

const tubeMm3 = (outerMm: number, innerMm: number, lengthIn: number) =>
  (Math.PI / 4) * (outerMm ** 2 - innerMm ** 2) * lengthIn * MM_PER_IN

/** Carbon in epoxy is 1.5 to 1.6 g/cm³ [MATERIALS]; wall and weight per inch are catalogue figures that round. */
const SHAFT_DENSITY = { least: 0.8, most: 2.6 } // g/cm³

interface Body {
  readonly mm3: number
  /** Shares of the full body's weight. */
  readonly least: number
  readonly most: number
}

function bodyOf(part: Part): Body | undefined {
  switch (part.kind) {
    case 'insert':
    case 'half-out': {
      const [aheadIn, aheadMm] =
        part.kind === 'insert' ? [part.shoulderIn, part.shoulderDiameterMm] : [part.aheadIn, part.bodyDiameterMm]
      const post = tubeMm3(part.postDiameterMm, part.postBoreMm, part.postLengthIn)
      return { mm3: post + tubeMm3(aheadMm, 0, aheadIn), least: 0.3, most: 1.3 }
    }
    case 'outsert':
      return { mm3: tubeMm3(part.outerDiameterMm, 0, part.overIn + part.aheadIn), least: 0.1, most: 1.2 }
    case 'collar':
    case 'sleeve':
    case 'footing':
      return { mm3: tubeMm3(part.outerDiameterMm, part.innerDiameterMm, part.lengthIn), least: 0.5, most: 1.5 }
    case 'rear weight':
      return { mm3: tubeMm3(part.diameterMm, 0, part.lengthIn), least: 0.5, most: 1.3 }
    default:
      return undefined
  }
}

/** @returns undefined for what is no plain body of a known metal, or no shaft */
export function weightBySize(part: Part): { readonly leastGr: number; readonly mostGr: number } | undefined {
  if (part.kind === 'shaft') {
    const cm3 = tubeMm3(part.outerDiameterMm, part.innerDiameterMm, part.rawLengthIn) / MM3_PER_CM3
    const at = (density: number) => inGrains(grams(cm3 * density))
    return { leastGr: at(SHAFT_DENSITY.least), mostGr: at(SHAFT_DENSITY.most) }
  }
  const body = bodyOf(part)
  const metal = 'material' in part ? materialOf(part.material) : undefined
  if (body === undefined || metal === undefined) return undefined
  const full = inGrains(grams((body.mm3 / MM3_PER_CM3) * inUnit(metal.density, 'g/cm³')))
  return { leastGr: body.least * full, mostGr: body.most * full }
}
