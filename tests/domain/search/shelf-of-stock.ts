/** Invented stock for the search's tests: seeded, so that every run sees the same shelves. */
import type { StockItem } from '@/domain/search/stock-item'
import type { SearchProblem, Wishes } from '@/domain/search/wishes'
import type { Part, PartOf } from '@/domain/stock/part'

export type Dice = () => number

/** A small generator of even numbers from 0 to 1 (mulberry32, public domain; from memory). */
export function dice(seed: number): Dice {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = state
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296
  }
}
export const between = (roll: Dice, low: number, high: number) => low + (high - low) * roll()
export const oneOf = <T>(roll: Dice, all: readonly T[]): T => all[Math.floor(roll() * all.length)]!
export const whole = (roll: Dice, low: number, high: number) => Math.floor(between(roll, low, high + 1))

const every = { toleranceGr: 0.5, discontinued: false, alternates: [] }
const ids = { next: 0 }
export const idOf = (n: number) => `018f0000-0000-7000-8000-${n.toString(16).padStart(12, '0')}`

/** An item of its own part and lot. */
export function item<P extends Part>(record: P, free: number, weightGr = record.weightGr): StockItem<P> {
  ids.next += 1
  const scatter = record.kind === 'shaft' ? 0.06 : record.kind === 'vane' ? 0.1 : 0.4
  return {
    part: idOf(2 * ids.next),
    lot: idOf(2 * ids.next + 1),
    record,
    free,
    weightGr,
    ownSdGr: scatter,
    sharedSdGr: scatter / 2,
  }
}

const tenth = (gr: number) => Math.round(gr * 10) / 10

export const shaft = (roll: Dice, more: Partial<PartOf<'shaft'>> = {}): PartOf<'shaft'> => {
  const staticSpineIn = oneOf(roll, [0.15, 0.2, 0.25, 0.3, 0.34, 0.4])
  return {
    ...every,
    kind: 'shaft',
    name: `Shaft ${staticSpineIn}`,
    weightGr: 0,
    priceCents: whole(roll, 10, 60) * 100,
    weightPerInchGr: tenth(3.2 / staticSpineIn ** 0.85 + between(roll, -0.5, 0.5)),
    staticSpineIn,
    outerDiameterMm: 7.4,
    innerDiameterMm: 6.22,
    rawLengthIn: 33,
    straightnessIn: 0.001,
    ...more,
  }
}
export const nock = (roll: Dice, more: Partial<PartOf<'nock'>> = {}): PartOf<'nock'> => ({
  ...every,
  kind: 'nock',
  name: 'Nock',
  fit: 'press',
  weightGr: tenth(between(roll, 8, 22)),
  priceCents: whole(roll, 1, 12) * 100,
  standoutIn: oneOf(roll, [0.5, 0.55, 0.6]),
  plugIn: 0.4,
  ...more,
})
export const vane = (roll: Dice, more: Partial<PartOf<'vane'>> = {}): PartOf<'vane'> => ({
  ...every,
  kind: 'vane',
  name: 'Vane',
  weightGr: tenth(between(roll, 5, 10)),
  priceCents: whole(roll, 1, 4) * 50,
  lengthIn: oneOf(roll, [2, 2.5, 3, 4]),
  heightIn: 0.5,
  tipLengthIn: 0.8,
  sweepIn: 0.7,
  ...more,
})
export const wrap = (roll: Dice): PartOf<'wrap'> => ({
  ...every,
  kind: 'wrap',
  name: 'Wrap',
  weightGr: tenth(between(roll, 4, 10)),
  priceCents: whole(roll, 1, 4) * 50,
  lengthIn: oneOf(roll, [4, 7]),
})
export const insert = (roll: Dice, more: Partial<PartOf<'insert'>> = {}): PartOf<'insert'> => {
  const postLengthIn = oneOf(roll, [1, 1.5, 2, 2.5, 3])
  return {
    ...every,
    kind: 'insert',
    name: 'Insert',
    weightGr: tenth(20 + 50 * postLengthIn + between(roll, -10, 10)),
    priceCents: whole(roll, 2, 30) * 100,
    material: 'stainless 303/304',
    postDiameterMm: 6.2,
    postBoreMm: oneOf(roll, [0, 2, 3]),
    postLengthIn,
    leastBondMm: 20,
    trimmable: true,
    thread: '8-32',
    shoulderIn: 0.1,
    shoulderDiameterMm: 7.4,
    ...more,
  }
}
export const outsert = (roll: Dice): PartOf<'outsert'> => ({
  ...every,
  kind: 'outsert',
  name: 'Outsert',
  weightGr: tenth(between(roll, 40, 120)),
  priceCents: whole(roll, 2, 30) * 100,
  material: 'aluminium 7075',
  overIn: 0.75,
  aheadIn: 0.5,
  outerDiameterMm: 9,
  innerDiameterMm: 7.45,
  thread: '8-32',
})
export const collar = (roll: Dice, more: Partial<PartOf<'collar'>> = {}): PartOf<'collar'> => ({
  ...every,
  kind: 'collar',
  name: 'Collar',
  weightGr: tenth(between(roll, 8, 45)),
  priceCents: whole(roll, 1, 10) * 100,
  material: 'stainless 303/304',
  lengthIn: oneOf(roll, [0.5, 1]),
  outerDiameterMm: 8.4,
  innerDiameterMm: 7.45,
  setbackIn: oneOf(roll, [0, 0.8]),
  ...more,
})
export const rearWeight = (roll: Dice): PartOf<'rear weight'> => ({
  ...every,
  kind: 'rear weight',
  name: 'Rear weight',
  weightGr: oneOf(roll, [10, 20, 50]),
  priceCents: whole(roll, 1, 6) * 100,
  material: 'brass C36000',
  lengthIn: 0.4,
  diameterMm: 5,
})
export const broadhead = (roll: Dice, more: Partial<PartOf<'broadhead'>> = {}): PartOf<'broadhead'> => ({
  ...every,
  kind: 'broadhead',
  name: 'Broadhead',
  weightGr: oneOf(roll, [150, 175, 200, 225, 250, 275, 300]),
  priceCents: whole(roll, 10, 90) * 100,
  lengthIn: oneOf(roll, [1.8, 2.4, 3]),
  bladeRearIn: oneOf(roll, [0.2, 0.6]),
  blades: 2,
  cuttingWidthIn: 1.1,
  bevel: oneOf(roll, ['none', 'double', 'right', 'left'] as const),
  thread: '8-32',
  ...more,
})
export const fieldPoint = (roll: Dice): PartOf<'field point'> => ({
  ...every,
  kind: 'field point',
  name: 'Field point',
  weightGr: oneOf(roll, [125, 150, 200, 250]),
  priceCents: whole(roll, 1, 4) * 100,
  lengthIn: 1,
  diameterMm: 7.4,
  thread: oneOf(roll, ['8-32', '8-32', 'M5'] as const),
})
export const JOINTS: SearchProblem['joints'] = {
  vanes: { gr: 1.2, ownSdGr: 0.2, sharedSdGr: 0.1 },
  post: { gr: 1.8, ownSdGr: 0.35, sharedSdGr: 0.17 },
  collar: { gr: 0.8, ownSdGr: 0.2, sharedSdGr: 0.1 },
}

export const many = <T>(n: number, make: (i: number) => T): T[] => Array.from({ length: n }, (_, i) => make(i))

export const WISHES: Wishes = {
  targetGr: 850,
  toleranceGr: 0.5,
  overGr: { min: 6, max: 9 },
  quantity: 6,
  c2cIn: { min: 27, max: 31, step: 0.25 },
  foc: { min: 20, max: 30, tolerance: 0.5 },
  reserve: { min: 0.75, max: 1.3, tolerance: 0.05 },
  clearance: { frontIn: 27.5, bladesIn: 28 },
  leastChance: 0.95,
  most: 5,
}

export const problemOf = (stock: readonly StockItem[], wishes: Partial<Wishes> = {}): SearchProblem => ({
  stock,
  wishes: { ...WISHES, ...wishes },
  launch: { peakDrawLb: 74, virtualMassGr: 85 },
  build: { vaneTailIn: 1, fletchSide: 'right', frontPoint: 'shaft front' },
  joints: JOINTS,
  shop: { kerfIn: 0.04, chamferMm: 0.5 },
})

export interface ShelfSize {
  readonly shafts: number
  readonly inserts: number
  readonly collars: number
  readonly heads: number
  readonly nocks: number
  readonly vanes: number
  readonly wraps: number
  readonly rearWeights?: number
}
export function shelf(roll: Dice, size: ShelfSize): StockItem[] {
  const free = () => whole(roll, 6, 40)
  return [
    ...many(size.shafts, () => {
      const record = shaft(roll)
      return item(record, free(), record.weightPerInchGr + between(roll, -0.1, 0.1))
    }),
    ...many(size.inserts, () => item(insert(roll), free())),
    ...many(size.collars, () => item(collar(roll), free())),
    ...many(size.heads, (i) =>
      i % 4 === 3 ? item(fieldPoint(roll), free()) : item(broadhead(roll, { bevel: 'double' }), free()),
    ),
    ...many(size.nocks, () => item(nock(roll), free())),
    ...many(size.vanes, () => item(vane(roll), 4 * free())),
    ...many(size.wraps, () => item(wrap(roll), free())),
    ...many(size.rearWeights ?? 0, () => item(rearWeight(roll), 2 * free())),
  ]
}
