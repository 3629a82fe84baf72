/** Which parts go together: diameters, threads, order. The gaps are common practice, no source [CP]. */
import type { PartOf } from '../stock/part'

const HAIR_MM = 1e-6 // of rounding in a catalogue
const LOOSEST_MM = 0.3 // across the diameter; a wider gap is not bridged by glue alone [CP]

const slides = (insideMm: number, outsideMm: number) =>
  outsideMm - insideMm >= -HAIR_MM && outsideMm - insideMm <= LOOSEST_MM

type Shaft = PartOf<'shaft'>
type Front = PartOf<'insert' | 'half-out' | 'outsert'>
type Ring = PartOf<'collar' | 'sleeve' | 'footing'>

export const frontFitsShaft = (front: Front, shaft: Shaft) =>
  front.kind === 'outsert'
    ? slides(shaft.outerDiameterMm, front.innerDiameterMm)
    : slides(front.postDiameterMm, shaft.innerDiameterMm)

export const ringFitsShaft = (ring: Ring, shaft: Shaft) => slides(shaft.outerDiameterMm, ring.innerDiameterMm)

export const rearWeightFitsShaft = (weight: PartOf<'rear weight'>, shaft: Shaft) =>
  weight.diameterMm <= shaft.innerDiameterMm

/** A ring and an outsert share the outside of the shaft. */
export const ringFitsFront = (ring: Ring, front: Front | undefined) =>
  front?.kind !== 'outsert' || ring.setbackIn >= front.overIn

/** Rear weights screw onto a post. */
export const takesRearWeights = (front: Front | undefined) => front !== undefined && front.kind !== 'outsert'

/** A head without a thread is glued to the shaft itself. */
export const headFits = (
  head: PartOf<'broadhead' | 'field point'>,
  front: Front | undefined,
  adapter: PartOf<'adapter'> | undefined,
) => head.thread === ((adapter ?? front)?.thread ?? 'glue-on')

/** A pin nock sits on a bushing, and nothing else does. */
export const nockFitsBushing = (nock: PartOf<'nock'> | undefined, bushing: PartOf<'bushing'> | undefined) =>
  (nock?.fit === 'pin') === (bushing !== undefined)
