/** A client's bow as it was told or measured. Absent means not known; nothing here is guessed. */
import * as z from 'zod/mini'
import { amount, line, positive } from '../records/scalars'

export const BOW_KINDS = ['compound', 'recurve', 'longbow'] as const
export const bow = z.strictObject({
  kind: z.enum(BOW_KINDS),
  name: z.optional(line),
  peakDrawWeightLb: z.optional(positive),
  labelDrawWeightLb: z.optional(positive),
  moduleMark: z.optional(line),
  /** String to grip pivot at full draw, plus 1¾ in. */
  drawLengthIn: z.optional(positive),
  drawLengthHow: z.optional(z.enum(['measured', 'module mark', 'guess'])),
  /** On a nocked arrow at full draw, from the throat to the mark. */
  markAtRestIn: z.optional(positive),
  markAtRiserIn: z.optional(positive),
  braceHeightIn: z.optional(positive),
  letOffPercent: z.optional(amount),
  ratedSpeedFps: z.optional(positive),
  chronograph: z.array(z.strictObject({ arrowGr: positive, speedFps: positive })).check(z.maxLength(20)),
  forceDraw: z.array(z.strictObject({ drawIn: positive, forceLb: amount })).check(z.maxLength(60)),
  restKind: z.optional(z.enum(['drop-away', 'containment', 'shelf', 'other'])),
  restAheadOfPivotIn: z.optional(z.number()),
  riserFrontAheadOfPivotIn: z.optional(z.number()),
  riserWindowIn: z.optional(positive),
  cableSide: z.optional(z.enum(['right', 'left', 'none'])),
  /** Sideways from the middle of the nocked arrow to the nearest cable, where the vanes pass it. */
  arrowToCableIn: z.optional(positive),
  servingDiameterIn: z.optional(positive),
  nockSnap: z.optional(z.enum(['loose', 'right', 'tight'])),
  centreShot: z.optional(z.enum(['centre', 'short of centre'])),
  looseWith: z.optional(z.enum(['release aid', 'fingers'])),
  hand: z.optional(z.enum(['right', 'left'])),
})
export type Bow = z.infer<typeof bow>
export const NO_BOW: Bow = { kind: 'compound', chronograph: [], forceDraw: [] }
