/** Words of spinning, cutting and turning the insert. */
import { inInches, type Length } from '../../core/quantity'
import { showNumber } from './format'

export const stationWords = (station: number) => `Station ${station} of 5, from the nock end`

export const STATIONS_STAND =
  'Rollers an inch in from either end, the stations at even sixths between them; one mark for zero along the whole shaft.'

export const takenWords = (no: number, station: number, tirIn: number, angleDeg: number) =>
  `No. ${no}, station ${station}: ${showNumber(tirIn, 4)} in at ${showNumber(angleDeg, 0)}° taken.`

const GAIN_SEEN = 0.0005 // in, half the step of a usual dial

/** Whether to cut off centre, in a sentence. */
export function windowWords(best: Length, equal: Length): string {
  return inInches(equal) - inInches(best) >= GAIN_SEEN
    ? 'Cut unevenly: this window is straighter than with as much off either end.'
    : 'Cut as much off either end: no other window is straighter by what a dial shows.'
}
