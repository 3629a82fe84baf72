/** Which bow a set was made for, as the client's sheet says it. */
import type { Bow } from '../../domain/call/bow'
import { showPlain } from './format'

export function madeForWords({ peakDrawWeightLb: weight, drawLengthIn: length }: Bow): string {
  const known = [
    ...(weight === undefined ? [] : [`${showPlain(weight)} lb`]),
    ...(length === undefined ? [] : [`${showPlain(length)} in of draw`]),
  ]
  const bow = known.length === 0 ? 'your bow as it was described' : `your bow at ${known.join(' and ')}`
  return `Made for ${bow}, and for no other.`
}
