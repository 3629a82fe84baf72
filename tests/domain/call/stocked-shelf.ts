/** A small shelf of invented parts, for tests. */
import type { Part, PartKind } from '@/domain/stock/part'
import type { Shelf } from '@/domain/stock/shelf'
import { EMPTY_SHELF } from '@/domain/stock/shelf'

const every = { toleranceGr: 1, priceCents: 0, discontinued: false, alternates: [] }
const shaft = (name: string, staticSpineIn: number, weightPerInchGr: number): Part => ({
  ...every,
  kind: 'shaft',
  name,
  weightGr: 0,
  weightPerInchGr,
  staticSpineIn,
  outerDiameterMm: 7.2,
  innerDiameterMm: 5.2,
  rawLengthIn: 32.5,
  straightnessIn: 0.001,
  maxDrawWeightLb: 80,
  maxFrontWeightGr: 560,
})
const broadhead = (name: string, weightGr: number): Part => ({
  ...every,
  kind: 'broadhead',
  name,
  weightGr,
  lengthIn: 2.2,
  bladeRearIn: 0.2,
  blades: 2,
  cuttingWidthIn: 1.125,
  bevel: 'right',
  thread: '8-32',
})

const PARTS: readonly Part[] = [
  shaft('Tern 200', 0.2, 12.1),
  shaft('Tern 250', 0.25, 10.9),
  shaft('Tern 500', 0.5, 7.3),
  { ...every, kind: 'nock', name: 'clip 11', weightGr: 11, fit: 'press', standoutIn: 0.55, plugIn: 0.4 },
  {
    ...every,
    kind: 'insert',
    name: 'steel post 158',
    weightGr: 158,
    material: 'stainless 303/304',
    postDiameterMm: 5.2,
    postBoreMm: 0,
    postLengthIn: 2.4,
    leastBondMm: 25,
    trimmable: true,
    thread: '8-32',
    shoulderIn: 0,
    shoulderDiameterMm: 7.2,
  },
  {
    ...every,
    kind: 'collar',
    name: 'ring 42',
    weightGr: 42,
    material: 'stainless 303/304',
    lengthIn: 0.8,
    outerDiameterMm: 8.2,
    innerDiameterMm: 7.2,
    setbackIn: 0,
  },
  broadhead('two-blade 250', 250),
  broadhead('two-blade 300', 300),
  {
    ...every,
    kind: 'vane',
    name: 'broad 2.6',
    weightGr: 7.2,
    lengthIn: 2.6,
    heightIn: 0.5,
    tipLengthIn: 0.5,
    sweepIn: 1,
  },
]

/** @param kinds only these; all of them where none is named */
export const stockedShelf = (...kinds: readonly PartKind[]): Shelf => ({
  ...EMPTY_SHELF,
  parts: new Map(
    PARTS.filter((part) => kinds.length === 0 || kinds.includes(part.kind)).map((body, i) => {
      const id = `01900000-0000-7000-8000-0000000001${String(i).padStart(2, '0')}`
      return [id, { id, hash: 'a'.repeat(64), body, rivals: [] }]
    }),
  ),
})
