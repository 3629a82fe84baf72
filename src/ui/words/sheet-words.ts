/** Words of the sheet page. */
import type { LineWeight } from '../../domain/sheet/line-weights'
import type { NamedLine } from '../../domain/sheet/lines-since'

/** `3 × Broad vane 2.6, lot V-49` */
export const namedLineWords = ({ name, count, lotCode }: NamedLine): string =>
  `${count > 1 ? `${count} × ` : ''}${name}, ${lotCode === undefined ? 'lot unknown' : `lot ${lotCode}`}`

/** @param was null: the line is new */
export const lineSinceWords = (was: NamedLine | null): string =>
  was === null ? 'new since it was frozen' : `changed: was ${namedLineWords(was)} as frozen`

/** @param to its place from 0 */
export const lineMovedWords = (to: number, of: number): string => `Now line ${to + 1} of ${of}.`

export function lineKnownWords({ origin }: LineWeight): string {
  switch (origin) {
    case 'read':
      return 'weighed'
    case 'lot history':
      return 'from its lot'
    default:
      return 'catalogue'
  }
}

export const INTO_BAND_WORDS = {
  title: 'Any one of these brings the reserve into its band, the rest as it is:',
  alone: 'this alone does not do it',
  notClear: 'too short to stay clear at full draw',
  up: { spine: 'A static spine of, or stiffer', c2c: 'A C2C of, or shorter', head: 'A head of, or lighter' },
  down: { spine: 'A static spine of, or softer', c2c: 'A C2C of, or longer', head: 'A head of, or heavier' },
} as const

export const STRAIGHTEST_WORDS = {
  title: 'Straightest window of each shaft that was spun',
  columns: ['Arrow', 'Off the nock end', 'Off the point end', 'Then runs out', 'With equal ends'],
} as const
