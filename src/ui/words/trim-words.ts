/** What the coach says at the grinder. */
import type { PassAdvice } from '../../core/trim/next-pass'
import { showNumber } from './format'

const gr = (n: number) => showNumber(n, 1)

/** At the grinder, of an arrow that has nothing to lose. */
export const LIGHT_WORDS =
  'Stop: it is light as it stands. Mend it below, or go on and decide about the finished weight.'

export function adviceWords(advice: PassAdvice, usualGr: number, chamferGr: number): string {
  const edge = chamferGr > 0 ? `; the edge takes ${gr(chamferGr)}` : ''
  switch (advice.next) {
    case 'heavy':
      return `A heavy pass now, then weigh. A usual pass here takes ${gr(usualGr)} gr${edge}.`
    case 'usual':
      return `A usual pass now: about ${gr(usualGr)} gr, then weigh${edge}.`
    case 'light':
      return `A light pass now, then weigh${edge}.`
    case 'chamfer':
      return `Stop: one more pass would take too much. Only the edge is left${edge}.`
    case 'stop':
      return 'Stop: one more pass would make it too light.'
  }
}
