/**
 * What a part record asks for, field by field, as data: the form, the import and the checks between fields all read this.
 * Bounds are those of a slip, not of taste.
 */
import type { EntryUnit } from '../entry/unit-names'
import { BEVELS, MATERIALS, THREADS } from './part'
import type { Part, PartKind } from './part'

export type PartField = { readonly field: string } & (
  | {
      readonly shape: 'number'
      readonly unit: EntryUnit
      readonly min: number
      readonly max: number
      readonly decimals: number
      readonly thousandths?: boolean
      readonly optional?: boolean
      /** What a part has where nothing is said. */
      readonly usual?: number
    }
  | { readonly shape: 'count'; readonly min: number; readonly max: number; readonly usual?: number }
  | { readonly shape: 'choice'; readonly options: readonly string[]; readonly usual: string }
  | { readonly shape: 'yes or no'; readonly usual: boolean }
)

const number = (
  field: string,
  unit: EntryUnit,
  min: number,
  max: number,
  decimals: number,
  more: { optional?: boolean; usual?: number; thousandths?: boolean } = {},
): PartField => ({ field, shape: 'number', unit, min, max, decimals, ...more })
const choice = (field: string, options: readonly string[], usual: string): PartField => ({
  field,
  shape: 'choice',
  options,
  usual,
})

const weight = number('weightGr', 'gr', 0, 1000, 1)
const tolerance = number('toleranceGr', 'gr', 0, 50, 1, { usual: 0 })
const diameter = (field: string) => number(field, 'mm', 1, 40, 2)
const length = (field: string, max = 12) => number(field, 'in', 0.01, max, 3)
const material = choice('material', MATERIALS, 'stainless 303/304')
const thread = choice('thread', THREADS, '8-32')
const post: readonly PartField[] = [
  material,
  diameter('postDiameterMm'),
  number('postBoreMm', 'mm', 0, 20, 2, { usual: 0 }),
  length('postLengthIn'),
  number('leastBondMm', 'mm', 1, 100, 1, { usual: 25 }),
  { field: 'trimmable', shape: 'yes or no', usual: true },
  thread,
]
const ring: readonly PartField[] = [
  weight,
  tolerance,
  material,
  length('lengthIn'),
  diameter('outerDiameterMm'),
  diameter('innerDiameterMm'),
  number('setbackIn', 'in', 0, 10, 3, { usual: 0 }),
]
const fin: readonly PartField[] = [
  weight,
  tolerance,
  length('lengthIn', 8),
  length('heightIn', 2),
  number('tipLengthIn', 'in', 0, 6, 2, { usual: 0.8 }),
  number('sweepIn', 'in', 0, 8, 2, { usual: 1.4 }),
]

export const PART_FIELDS: Readonly<Record<PartKind, readonly PartField[]>> = {
  shaft: [
    number('weightPerInchGr', 'gr/in', 3, 30, 2),
    tolerance,
    number('staticSpineIn', 'in', 0.05, 1.2, 3, { thousandths: true }),
    diameter('outerDiameterMm'),
    diameter('innerDiameterMm'),
    number('rawLengthIn', 'in', 20, 40, 2),
    number('straightnessIn', 'in', 0, 0.02, 4, { usual: 0.003 }),
    number('maxDrawWeightLb', 'lbf', 10, 200, 0, { optional: true }),
    number('maxFrontWeightGr', 'gr', 50, 1200, 0, { optional: true }),
  ],
  nock: [
    weight,
    tolerance,
    choice('fit', ['press', 'pin', 'lighted'], 'press'),
    length('standoutIn', 3),
    number('plugIn', 'in', 0, 3, 2, { usual: 0.4 }),
  ],
  bushing: [weight, tolerance, number('flangeIn', 'in', 0, 1, 3, { usual: 0 }), length('insideIn', 3)],
  insert: [
    weight,
    tolerance,
    ...post,
    number('shoulderIn', 'in', 0, 2, 3, { usual: 0.05 }),
    diameter('shoulderDiameterMm'),
  ],
  'half-out': [weight, tolerance, ...post, length('aheadIn', 4), diameter('bodyDiameterMm')],
  outsert: [
    weight,
    tolerance,
    material,
    length('overIn', 4),
    length('aheadIn', 4),
    diameter('outerDiameterMm'),
    diameter('innerDiameterMm'),
    thread,
  ],
  collar: ring,
  sleeve: ring,
  footing: ring,
  'rear weight': [weight, tolerance, material, length('lengthIn', 4), diameter('diameterMm')],
  adapter: [weight, tolerance, length('aheadIn', 3), thread],
  broadhead: [
    weight,
    tolerance,
    length('lengthIn', 6),
    number('bladeRearIn', 'in', 0, 5, 2, { usual: 0.3 }),
    { field: 'blades', shape: 'count', min: 1, max: 6, usual: 2 },
    number('cuttingWidthIn', 'in', 0.3, 4, 3),
    choice('bevel', BEVELS, 'double'),
    thread,
  ],
  'field point': [weight, tolerance, length('lengthIn', 4), diameter('diameterMm'), thread],
  vane: fin,
  feather: fin,
  wrap: [weight, tolerance, length('lengthIn', 10)],
  glue: [
    number('handleH', 'h', 0.01, 200, 1, { usual: 12 }),
    number('shootH', 'h', 0.01, 400, 1, { usual: 24 }),
    number('fullH', 'h', 0.01, 1000, 1, { usual: 168 }),
    number('atC', '°C', -10, 60, 0, { usual: 22 }),
    number('leastC', '°C', -20, 40, 0, { usual: 13 }),
    number('mostC', '°C', 10, 120, 0, { usual: 45 }),
    number('vanesJointGr', 'gr', 0, 20, 1, { optional: true }),
    number('postJointGr', 'gr', 0, 20, 1, { optional: true }),
    number('collarJointGr', 'gr', 0, 20, 1, { optional: true }),
  ],
}

export type PartEntries = Readonly<Record<string, number | string | boolean | undefined>>

/** Usual scatter of a joint's glue as a share of its weight, where nothing else is known: common practice, no source [CP]. */
const JOINT_SD_SHARE = 0.22

/** Entries of the form as a record's body, not yet checked: the part schema has the last word. */
export function partFromEntries(kind: PartKind, name: string, entries: PartEntries, before?: Part): unknown {
  const { vanesJointGr, postJointGr, collarJointGr, ...own } = entries
  const joint = (gr: PartEntries[string]) => (typeof gr === 'number' ? { gr, sdGr: gr * JOINT_SD_SHARE } : undefined)
  const joints = { vanes: joint(vanesJointGr), post: joint(postJointGr), collar: joint(collarJointGr) }
  const weightGr =
    kind === 'shaft' ? Number(own['weightPerInchGr']) * Number(own['rawLengthIn']) : (own['weightGr'] ?? 0)
  return {
    kind,
    name,
    toleranceGr: 0,
    priceCents: before?.priceCents ?? 0,
    discontinued: before?.discontinued ?? false,
    alternates: before?.alternates ?? [],
    ...Object.fromEntries(Object.entries(own).filter(([, value]) => value !== undefined)),
    weightGr,
    ...(kind === 'glue'
      ? { joints: Object.fromEntries(Object.entries(joints).filter(([, value]) => value !== undefined)) }
      : {}),
  }
}

/** A record's body as the entries of its form. */
export function entriesFromPart(part: Part): PartEntries {
  const flat: Record<string, number | string | boolean | undefined> = {}
  for (const [field, value] of Object.entries(part)) {
    if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') flat[field] = value
  }
  if (part.kind === 'glue') {
    flat['vanesJointGr'] = part.joints.vanes?.gr
    flat['postJointGr'] = part.joints.post?.gr
    flat['collarJointGr'] = part.joints.collar?.gr
  }
  return flat
}
