/** The places of an arrow that the search fills from stock, and which kinds of part may stand there. */
import type { PartKind } from '../stock/part'

export const AXES = {
  shaft: { kinds: ['shaft'], without: 'never', counts: [1] },
  nock: { kinds: ['nock'], without: 'never', counts: [1] },
  bushing: { kinds: ['bushing'], without: 'may', counts: [1] },
  vanes: { kinds: ['vane', 'feather'], without: 'never', counts: [3] },
  wrap: { kinds: ['wrap'], without: 'may', counts: [1] },
  front: { kinds: ['insert', 'half-out', 'outsert'], without: 'never', counts: [1] },
  ring: { kinds: ['collar', 'sleeve', 'footing'], without: 'may', counts: [1] },
  'rear weights': { kinds: ['rear weight'], without: 'may', counts: [1, 2] },
  adapter: { kinds: ['adapter'], without: 'must', counts: [1] },
  head: { kinds: ['broadhead', 'field point'], without: 'never', counts: [1] },
} as const satisfies Record<string, { kinds: readonly PartKind[]; without: Without; counts: readonly number[] }>

/** Whether an arrow may, must or never go without a part on this axis. */
export type Without = 'may' | 'must' | 'never'
export type Axis = keyof typeof AXES
export type KindOn<A extends Axis> = (typeof AXES)[A]['kinds'][number]
/** In the order that breaks the last ties: a combination is numbered by its choices, the first axis counting most. */
export const AXIS_NAMES = Object.keys(AXES) as readonly Axis[]

/** The place of a kind of part; undefined for glue. */
export const axisOf = (kind: PartKind): Axis | undefined =>
  AXIS_NAMES.find((axis) => (AXES[axis].kinds as readonly PartKind[]).includes(kind))
