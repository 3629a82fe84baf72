/** A placed plan as the core's arrow: each part's expected weight on its interval, bonded metal as stiffening. */
import type { Arrow, BondedTube, Piece } from '../../core/arrow/arrow'
import type { PartSpread } from '../../core/balance/balance-uncertainty'
import type { Outcome } from '../../core/outcome'
import type { Mass } from '../../core/quantity'
import { difference, grains, inches, inQuadrature, kilograms, millimetres, sum } from '../../core/quantity'
import { linearDensityOf } from '../../core/trim/weight-per-length'
import { rigidityFromSpine } from '../../core/stiffness/static-spine'
import type { Part } from '../stock/part'
import type { Geometry, Placed } from './geometry'
import type { PlanItem } from './plan-items'
import { materialOf } from './post-of'

export interface LiftedArrow {
  readonly arrow: Arrow
  /** Standard uncertainties in the order of the arrow's pieces. */
  readonly spread: PartSpread
}

const PLACE_SD = inches(0.02) // of a part's place along the arrow, common practice, no source [CP]

function bondOf(part: Part, bond: Placed['bond']): BondedTube | undefined {
  if (bond === null || !('material' in part)) return undefined
  const modulus = materialOf(part.material)?.youngsModulus
  if (modulus === undefined) return undefined
  return {
    outerDiameter: millimetres(bond.outerMm),
    innerDiameter: millimetres(bond.innerMm),
    youngsModulus: modulus,
  }
}

const sdOf = ({ item }: PlanItem) => inQuadrature(item.ownSd, item.sharedSd)

/** What has come off a part of the post: its straight length, and for the rearmost one the broken edge. */
function trimmedOff({ trimmedIn, part }: Placed, chamfer: Mass): Mass {
  if (trimmedIn === 0) return grains(0)
  const isPost = part.kind === 'insert' || part.kind === 'half-out'
  const density = 'material' in part ? materialOf(part.material)?.density : undefined
  if (density === undefined || (!isPost && part.kind !== 'rear weight')) return grains(0)
  const section = {
    outerDiameter: millimetres(isPost ? part.postDiameterMm : part.diameterMm),
    bore: millimetres(isPost ? part.postBoreMm : 0),
    density,
    name: part.name,
    length: inches(trimmedIn),
    bonded: isPost,
  }
  return sum(kilograms(linearDensityOf(section) * inches(trimmedIn)), chamfer)
}

/**
 * @param geometry with the post as it is once trimmed; `items` are of the same plan, their weights untrimmed
 * @param chamfer what breaking the edge takes off the rearmost piece that is trimmed
 * @returns the arrow, or why the shaft's spine is none
 */
export function liftArrow(geometry: Geometry, items: readonly PlanItem[], chamfer: Mass): Outcome<LiftedArrow> {
  const shaft = items.find((each) => each.part.kind === 'shaft')
  const spine = shaft?.part.kind === 'shaft' ? shaft.part.staticSpineIn : 0
  const rigidity = rigidityFromSpine(inches(spine))
  if (!rigidity.ok) return rigidity
  const others = items.filter((each) => each !== shaft)
  const edged = geometry.placed.findLast(({ trimmedIn }) => trimmedIn > 0)
  const glue = others.filter(({ at }) => at.kind === 'glue')
  const pieces = others.map((each): Piece => {
    const { part, item, at } = each
    if (at.kind === 'glue') {
      const { atIn } = geometry.joints[glue.indexOf(each)] ?? at.joint
      return { name: item.name, mass: item.mean, from: inches(atIn), to: inches(atIn) }
    }
    const placed = placedLike(geometry, at.placed, others)
    const bonded = bondOf(part, placed.bond)
    const off = trimmedOff(placed, placed === edged ? chamfer : grains(0))
    return {
      name: part.name,
      mass: difference(item.mean, off),
      from: inches(placed.fromIn),
      to: inches(placed.toIn),
      ...(bonded === undefined ? {} : { bonded }),
    }
  })
  const arrow: Arrow = {
    length: inches(geometry.shaftFrontIn),
    shaft: { mass: shaft?.item.mean ?? grains(0), rear: inches(geometry.shaftRearIn), rigidity: rigidity.value },
    pieces,
  }
  const spread: PartSpread = {
    shaft: shaft === undefined ? grains(0) : sdOf(shaft),
    pieces: others.map(sdOf),
    place: PLACE_SD,
  }
  return { ...rigidity, value: { arrow, spread } }
}

/** The same part in another geometry of the plan: stacked pieces of a line keep their order from the rear. */
function placedLike(geometry: Geometry, wanted: Placed, items: readonly PlanItem[]): Placed {
  const before = items.flatMap(({ at }) => (at.kind === 'part' && at.placed.line === wanted.line ? [at.placed] : []))
  const same = geometry.placed.filter((placed) => placed.line.id === wanted.line.id)
  return same[before.indexOf(wanted)] ?? wanted
}
