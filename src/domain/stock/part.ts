/**
 * What a shop keeps on the shelf, one record a kind of part. Weights are grains each, lengths along the arrow inches,
 * diameters millimetres. A tolerance is the maker's ±; where none is given the kind's usual scatter stands in its place.
 */
import * as z from 'zod/mini'
import { amount, count, id, line, positive } from '../records/scalars'

export const THREADS = ['8-32', 'M5', 'glue-on', 'other'] as const
export const BEVELS = ['none', 'double', 'right', 'left'] as const
export const MATERIALS = [
  'stainless 303/304',
  'stainless 316',
  '17-4PH',
  'steel 1020',
  'steel 4140',
  'aluminium 6061',
  'aluminium 7075',
  'aluminium 2024',
  'brass C36000',
  'titanium 6Al-4V',
  'tungsten heavy alloy',
  'carbon',
  'plastic',
] as const

const every = {
  name: line,
  /** Catalogue weight, grains each (a shaft's follows from its weight per inch). */
  weightGr: amount,
  /** The maker's ±, grains. */
  toleranceGr: amount,
  priceCents: count,
  discontinued: z.boolean(),
  alternates: z.array(id).check(z.maxLength(20)),
}

const thread = z.enum(THREADS)
const material = z.enum(MATERIALS)

const shaft = z.strictObject({
  ...every,
  kind: z.literal('shaft'),
  weightPerInchGr: positive,
  staticSpineIn: positive,
  outerDiameterMm: positive,
  innerDiameterMm: positive,
  rawLengthIn: positive,
  straightnessIn: amount,
  maxDrawWeightLb: z.optional(positive),
  maxFrontWeightGr: z.optional(positive),
})

const nock = z.strictObject({
  ...every,
  kind: z.literal('nock'),
  fit: z.enum(['press', 'pin', 'lighted']),
  /** Throat to the shaft's (or bushing's) rear end. */
  standoutIn: positive,
  /** How far its plug reaches into the shaft. */
  plugIn: amount,
})

const bushing = z.strictObject({
  ...every,
  kind: z.literal('bushing'),
  flangeIn: amount,
  insideIn: positive,
})

/** A post inside the shaft, with its shoulder at the shaft front. */
const post = {
  material,
  postDiameterMm: positive,
  postBoreMm: amount,
  postLengthIn: positive,
  /** What must stay in the shaft; the rest of the post may be trimmed away. */
  leastBondMm: positive,
  trimmable: z.boolean(),
  thread,
}
const insert = z.strictObject({
  ...every,
  ...post,
  kind: z.literal('insert'),
  shoulderIn: amount,
  shoulderDiameterMm: positive,
})
const halfOut = z.strictObject({
  ...every,
  ...post,
  kind: z.literal('half-out'),
  aheadIn: positive,
  bodyDiameterMm: positive,
})
const outsert = z.strictObject({
  ...every,
  kind: z.literal('outsert'),
  material,
  overIn: positive,
  aheadIn: positive,
  outerDiameterMm: positive,
  innerDiameterMm: positive,
  thread,
})

/** A ring around the shaft, its front edge `setbackIn` behind the shaft front. */
const around = {
  material,
  lengthIn: positive,
  outerDiameterMm: positive,
  innerDiameterMm: positive,
  setbackIn: amount,
}
const collar = z.strictObject({ ...every, ...around, kind: z.literal('collar') })
const sleeve = z.strictObject({ ...every, ...around, kind: z.literal('sleeve') })
const footing = z.strictObject({ ...every, ...around, kind: z.literal('footing') })

const rearWeight = z.strictObject({
  ...every,
  kind: z.literal('rear weight'),
  material,
  lengthIn: positive,
  diameterMm: positive,
})
const adapter = z.strictObject({ ...every, kind: z.literal('adapter'), aheadIn: positive, thread })

const broadhead = z.strictObject({
  ...every,
  kind: z.literal('broadhead'),
  /** From its seat on the insert to the tip. */
  lengthIn: positive,
  /** From the seat to the rear of the blades. */
  bladeRearIn: amount,
  blades: z.int().check(z.positive()),
  cuttingWidthIn: positive,
  bevel: z.enum(BEVELS),
  thread,
})
const fieldPoint = z.strictObject({
  ...every,
  kind: z.literal('field point'),
  lengthIn: positive,
  diameterMm: positive,
  thread,
})

const fin = { lengthIn: positive, heightIn: positive, tipLengthIn: amount, sweepIn: amount }
const vane = z.strictObject({ ...every, ...fin, kind: z.literal('vane') })
const feather = z.strictObject({ ...every, ...fin, kind: z.literal('feather') })
const wrap = z.strictObject({ ...every, kind: z.literal('wrap'), lengthIn: positive })

const joint = z.strictObject({ gr: amount, sdGr: amount })
const glue = z.strictObject({
  ...every,
  kind: z.literal('glue'),
  /** Expected grains left by each kind of joint (a whole fletch counts as one), with its usual scatter. */
  joints: z.strictObject({ vanes: z.optional(joint), post: z.optional(joint), collar: z.optional(joint) }),
  handleH: positive,
  shootH: positive,
  fullH: positive,
  atC: z.number(),
  leastC: z.number(),
  mostC: z.number(),
})

export const part = z.discriminatedUnion('kind', [
  shaft,
  nock,
  bushing,
  insert,
  halfOut,
  outsert,
  collar,
  sleeve,
  footing,
  rearWeight,
  adapter,
  broadhead,
  fieldPoint,
  vane,
  feather,
  wrap,
  glue,
])
export type Part = z.infer<typeof part>
export type PartKind = Part['kind']
export type PartOf<K extends PartKind> = Extract<Part, { kind: K }>

export const PART_KINDS = part.def.options.map((option) => option.def.shape.kind.def.values[0]) as readonly PartKind[]
