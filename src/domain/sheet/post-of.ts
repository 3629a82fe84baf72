/** The post that is trimmed, with the rear weights stacked behind it, as the core takes it. */
import { millimetres, inches } from '../../core/quantity'
import type { Post, PostSection } from '../../core/trim/post'
import { MATERIALS } from '../../core/trim/materials'
import type { Material, MaterialName } from '../../core/trim/materials'
import type { PartOf } from '../stock/part'
import type { Geometry } from './geometry'

/** Carbon and plastic are no metals: neither trimmed by weight nor counted as stiffening. */
export const materialOf = (name: string): Material | undefined =>
  Object.hasOwn(MATERIALS, name) ? MATERIALS[name as MaterialName] : undefined

/** @returns undefined where the plan has no post that may be trimmed */
export function postOf(geometry: Geometry): Post | undefined {
  const posts = geometry.placed.flatMap(({ part }) =>
    part.kind === 'insert' || part.kind === 'half-out' ? [part as PartOf<'insert' | 'half-out'>] : [],
  )
  const post = posts.find((part) => part.trimmable)
  const metal = post === undefined ? undefined : materialOf(post.material)
  if (post === undefined || metal === undefined) return undefined
  const stacked = geometry.placed
    .filter(({ part }) => part.kind === 'rear weight')
    .flatMap(({ part }): readonly PostSection[] => {
      const weight = part as PartOf<'rear weight'>
      const own = materialOf(weight.material)
      if (own === undefined) return []
      return [
        {
          name: weight.name,
          length: inches(weight.lengthIn),
          outerDiameter: millimetres(weight.diameterMm),
          bore: millimetres(0),
          density: own.density,
          bonded: false,
        },
      ]
    })
  return {
    sections: [
      ...stacked,
      {
        name: post.name,
        length: inches(post.postLengthIn),
        outerDiameter: millimetres(post.postDiameterMm),
        bore: millimetres(post.postBoreMm),
        density: metal.density,
        bonded: true,
      },
    ],
    leastBond: millimetres(post.leastBondMm),
  }
}
