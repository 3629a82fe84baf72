import type { Finding } from '../finding'
import { type Bounds, bounds } from '../outcome'
import { type Ratio, ratio } from '../quantity'

/**
 * Working band of the column reserve of compounds shot with a release aid [CP]: most arrows picked by custom lie in it. The
 * shop's to edit. Bows shot with the fingers, or not cut to centre, need a band of their own, from that bow's reports.
 */
export const RELEASE_AID_BAND = bounds(ratio(0.75), ratio(1.3))

/** Nothing for a reserve in the band, else on which side it is out. */
export function reserveFindings(reserve: Ratio, band: Bounds<Ratio>): Finding[] {
  if (reserve < band.min) return [{ code: 'reserve-below-band', reserve, band }]
  return reserve > band.max ? [{ code: 'reserve-above-band', reserve, band }] : []
}

/** What keeps a band from being one. */
export const bandProblems = ({ min, max }: Bounds<Ratio>): Finding[] =>
  min > 0 && max > min && max < Infinity ? [] : [{ code: 'band-reversed', low: min, high: max }]
