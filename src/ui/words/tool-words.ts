/** Words of the sheet's tools. */
import type { EnvelopeEnd } from '../../core/envelope/envelope'
import type { SheetLimit } from '../../domain/sheet/sheet-envelope'
import type { Varied } from '../../domain/sheet/what-if'

export const FLIGHT_WORDS = {
  noShaft: 'Needs a shaft on the sheet first.',
  noSpeed: 'Needs a speed first: a chronograph reading, a force-draw curve or a draw weight.',
  noVanes: 'needs vanes and a head',
  chart: 'Drop below the level line of launch, with its band.',
  centre: 'a range: the more askew, the further forward',
  margin: 'how far the balance point lies ahead of it',
} as const

export const ENVELOPE_WORDS = {
  nothing: 'Needs a shaft and a cut length first.',
  missing: 'not known of this bow',
  clientNote: 'Each alone. It is no leave to change the bow: the makers’ limits stand above it. Ask first.',
  note: 'Each alone, everything else as it is on the sheet. Bare-shaft tuning on the bow decides.',
} as const

export function envelopeEndWords(end: EnvelopeEnd<SheetLimit>): string {
  switch (end.kind) {
    case 'open':
      return 'looked at no further'
    case 'not known':
      return 'not known past that'
    case 'limit':
      return end.limit === 'grains per pound'
        ? 'too light for the bow'
        : end.limit === 'shaft front at the rest'
          ? 'the shaft front comes too near the rest'
          : end.limit
  }
}

export const WHAT_IF_WORDS = {
  nothing: 'The sheet has none yet.',
  untouched: 'The plan stays as it is; this is only looked at.',
} as const
const VARIED: Readonly<Record<Varied, string>> = {
  'head weight': 'Head weight',
  C2C: 'C2C',
  'draw weight': 'Draw weight',
  'finished weight': 'Finished weight',
}
export const variedWord = (what: Varied): string => VARIED[what]

export const COMPARE_WORDS = {
  alone: 'Only this plan so far. Keep an arrow from Find parts, or freeze a version, and it stands beside it.',
} as const
export const STOCK_WORDS = {
  lotUnknown: 'lot unknown',
  notEnough: 'not enough for the set',
  enough: 'enough',
} as const
