/**
 * The bench route as data: the eighteen steps of the trade in the usual order. A shop switches steps off, adds its own,
 * or takes the other order; a job keeps the route it was started on. Practice: common practice, no source [CP].
 */
import * as z from 'zod/mini'
import { line } from '../records/scalars'
import { DATA_POINT_NAMES } from './data-points'

export const STEP_KEYS = [
  'receive',
  'spin',
  'cut',
  'square',
  'weigh cut',
  'weigh parts',
  'budget',
  'fletch',
  'weigh fletched',
  'dry fit',
  'trim',
  'edge',
  'prepare bond',
  'bond',
  'index',
  'cure',
  'inspect',
  'pack',
] as const
export type StepKey = (typeof STEP_KEYS)[number]

export const step = z.strictObject({
  /** One of the eighteen, or `own:` and a name for a step that the shop added. */
  key: z.union([z.enum(STEP_KEYS), z.string().check(z.regex(/^own:.{1,40}$/))]),
  points: z.array(z.enum(DATA_POINT_NAMES)),
  /** Readings that the step can do without; every other point must be read before the step is done. */
  optional: z.array(z.enum(DATA_POINT_NAMES)),
  /** A confirmation closes the step, for each arrow or once for the set. */
  confirm: z.enum(['none', 'arrow', 'set']),
  /** Nothing after this step may begin before the whole set is through it. */
  hold: z.boolean(),
  instruction: z.optional(line),
})
export type Step = z.infer<typeof step>

const s = (key: StepKey, points: Step['points'], more: Partial<Step> = {}): Step => ({
  key,
  points,
  optional: [],
  confirm: 'none',
  hold: false,
  ...more,
})

const SPIN_POINTS: Step['points'] = [
  'runOut1',
  'runOutAngle1',
  'runOut2',
  'runOutAngle2',
  'runOut3',
  'runOutAngle3',
  'runOut4',
  'runOutAngle4',
  'runOut5',
  'runOutAngle5',
  'spineQuarter1',
  'spineQuarter2',
  'spineQuarter3',
  'spineQuarter4',
  'spineMarkAngle',
]

export const DEFAULT_ROUTE: readonly Step[] = [
  s('receive', ['rawWeight', 'rawLength'], { optional: ['rawLength'] }),
  s('spin', SPIN_POINTS, { optional: SPIN_POINTS, confirm: 'arrow' }),
  s('cut', ['cutNockEnd', 'cutPointEnd', 'c2c'], { optional: ['cutNockEnd', 'cutPointEnd'] }),
  s('square', ['cutRunOut', 'squareness'], { optional: ['squareness'], confirm: 'arrow' }),
  s('weigh cut', ['cutWeight']),
  s('weigh parts', ['insertWeight', 'collarWeight', 'headWeight', 'nockWeight', 'vanesWeight', 'wrapWeight'], {
    optional: ['nockWeight', 'vanesWeight', 'wrapWeight'],
  }),
  s('budget', [], { confirm: 'set', hold: true }),
  s('fletch', [], { confirm: 'arrow' }),
  s('weigh fletched', ['fletchedWeight']),
  s('dry fit', ['dryWeight', 'dryLessHead'], { optional: ['dryLessHead'] }),
  s('trim', ['trimWeight'], { optional: ['trimWeight'], confirm: 'arrow' }),
  s('edge', ['edgeWeight'], { optional: ['edgeWeight'], confirm: 'arrow' }),
  s('prepare bond', [], { confirm: 'set' }),
  s('bond', ['bondWeight', 'bondLength', 'roomTemperature'], {
    optional: ['bondWeight', 'bondLength', 'roomTemperature'],
    confirm: 'arrow',
  }),
  s('index', ['bondRunOut', 'indexNock', 'indexPoint'], {
    optional: ['bondRunOut', 'indexNock', 'indexPoint'],
    confirm: 'arrow',
  }),
  s('cure', [], { confirm: 'set', hold: true }),
  s('inspect', ['finishedWeight', 'balancePoint', 'overallLength', 'finishedRunOut', 'weightLessHead'], {
    optional: ['weightLessHead', 'overallLength'],
    confirm: 'arrow',
  }),
  s('pack', [], { confirm: 'set' }),
]
