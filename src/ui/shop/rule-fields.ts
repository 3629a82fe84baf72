/** The rules as fields: what each is called, where it acts, how it is read from the rules and put back. */
import { USUAL_CLAMP_IN } from '../../domain/shop/rules'
import type { Rules } from '../../domain/shop/rules'
import type { QuantityFieldProps } from '../controls/quantity-field'

type Asked = QuantityFieldProps['asked']

export interface RuleField {
  readonly label: string
  /** Where it acts. */
  readonly hint: string
  /** Its bounds may hang on a rule beside it: the least of a band stays under the most. */
  readonly asked: (rules: Rules) => Asked
  readonly read: (rules: Rules) => number | undefined
  readonly put: (rules: Rules, value: number) => Partial<Rules>
  /** A rule the shop can do without. */
  readonly clear?: (rules: Rules) => Rules
}

const number = (unit: Asked['unit'], min: number, max: number, decimals: number): Asked => ({
  unit,
  min,
  max,
  decimals,
})

type NumberKey = { [K in keyof Rules]-?: Rules[K] extends number ? K : never }[keyof Rules]
const own = (label: string, key: NumberKey, asked: Asked, hint: string): RuleField => ({
  label,
  hint,
  asked: () => asked,
  read: (rules) => rules[key],
  put: (_, value) => ({ [key]: value }),
})

type Group = 'runOut' | 'clearance' | 'prices' | 'planOverGr'
/** A number of a group of rules, kept times `scale`. */
const within = <G extends Group>(
  label: string,
  group: G,
  key: keyof Rules[G] & string,
  asked: Asked | ((rules: Rules) => Asked),
  hint: string,
  scale = 1,
): RuleField => ({
  label,
  hint,
  asked: typeof asked === 'function' ? asked : () => asked,
  read: (rules) => (rules[group][key] as number) / scale,
  put: (rules, value) => ({ [group]: { ...rules[group], [key]: scale === 1 ? value : Math.round(value * scale) } }),
})

const CENTS = 100
const MONEY = number('1', 0, 100_000, 2)
const PERCENT = number('%', 0, 100, 1)
const price = (label: string, key: 'perArrowCents' | 'indexingCents' | 'testKitCents' | 'rushCents') =>
  within(label, 'prices', key, MONEY, 'price lines of the read-back', CENTS)

type Band = keyof Rules['reserve']
const RESERVE = { least: 0.1, most: 5 }
const WHERE_RESERVE = 'stiffness called for and longest cut on the call; sheet, search, rebuild'
const band = (label: string, bow: Band): readonly RuleField[] => [
  {
    label: `${label}, at least`,
    hint: WHERE_RESERVE,
    asked: ({ reserve }) => number('1', RESERVE.least, reserve[bow].max, 2),
    read: ({ reserve }) => reserve[bow].min,
    put: ({ reserve }, min) => ({ reserve: { ...reserve, [bow]: { ...reserve[bow], min } } }),
  },
  {
    label: `${label}, at most`,
    hint: WHERE_RESERVE,
    asked: ({ reserve }) => number('1', reserve[bow].min, RESERVE.most, 2),
    read: ({ reserve }) => reserve[bow].max,
    put: ({ reserve }, max) => ({ reserve: { ...reserve, [bow]: { ...reserve[bow], max } } }),
  },
]

const RUN_OUT = number('in', 0.0005, 0.05, 4)
const CLEARANCE = number('in', 0, 6, 2)
const DAYS = { ...number('1', 0, 60, 0), whole: true }
const PLAN_OVER = 50 // gr

export const RULE_FIELDS: readonly { readonly title: string; readonly fields: readonly RuleField[] }[] = [
  {
    title: 'Tolerances',
    fields: [
      own('Finished weight, ±', 'toleranceGr', number('gr', 0.1, 20, 1), 'landing, search, trim, final inspection'),
      own('Spread of a set', 'setSpreadGr', number('gr', 0.1, 20, 1), 'final inspection: heaviest less lightest'),
      own('FOC, ±', 'focTolerancePoints', number('1', 0.05, 5, 2), 'rebuild: inside or outside, in points'),
      own(
        'Least grains per pound',
        'leastGrainsPerLb',
        number('1', 3, 20, 1),
        'sensible weight on the call, envelope; under it no sheet is frozen',
      ),
    ],
  },
  {
    title: 'Straight and square',
    fields: [
      within('Run-out of the raw shaft', 'runOut', 'shaftIn', RUN_OUT, 'bench, spin and mark: more opens a deviation'),
      within(
        'Run-out of the cut shaft',
        'runOut',
        'cutIn',
        ({ runOut }) => number('in', 0.0005, runOut.cutStopIn, 4),
        'bench, square and spin: more opens a deviation',
      ),
      within(
        'Run-out at which a cut shaft is stopped',
        'runOut',
        'cutStopIn',
        ({ runOut }) => number('in', runOut.cutIn, 0.05, 4),
        'bench, square and spin: the deviation says that the shop stops here',
      ),
      within('Run-out with a field point', 'runOut', 'finishedIn', RUN_OUT, 'final inspection'),
      within('Run-out with a broadhead', 'runOut', 'broadheadIn', RUN_OUT, 'final inspection'),
      own('Squareness of the ends', 'squarenessIn', number('in', 0.0005, 0.05, 4), 'bench, square and spin'),
    ],
  },
  {
    title: 'Weights and cuts',
    fields: [
      within(
        'Plan over the target, at least',
        'planOverGr',
        'min',
        ({ planOverGr }) => number('gr', 0, planOverGr.max, 1),
        'search of the shelf: grains come off, not on',
      ),
      within(
        'Plan over the target, at most',
        'planOverGr',
        'max',
        ({ planOverGr }) => number('gr', planOverGr.min, PLAN_OVER, 1),
        'search of the shelf',
      ),
      {
        label: 'Clamp of the jig, from the throat',
        hint: 'sheet: vanes beyond it cannot be set; empty: what is usual',
        asked: () => number('in', 1, 20, 2),
        read: ({ clampIn = USUAL_CLAMP_IN }) => clampIn,
        put: (_, clampIn) => ({ clampIn }),
        clear: ({ clampIn: _, ...rules }) => rules,
      },
      own('Saw kerf', 'kerfIn', number('in', 0, 0.25, 3), 'cut window of the raw shaft; search'),
      own(
        'Scatter of the cut, one s.d.',
        'cutSdIn',
        number('in', 0.001, 0.25, 3),
        'bench, cut: three of them off the planned C2C open a deviation',
      ),
      own('Chamfer of the post', 'chamferMm', number('mm', 0, 3, 1), 'trim advice and search; its weight is counted'),
    ],
  },
  {
    title: 'Column reserve',
    fields: [
      ...band('Compound', 'compound'),
      ...band('Recurve', 'recurve'),
      ...band('Longbow', 'longbow'),
      ...band('Shot with fingers', 'fingers'),
    ],
  },
  {
    title: 'Clearance at full draw',
    fields: [
      within(
        'Shaft front ahead of the rest',
        'clearance',
        'frontAheadOfRestIn',
        CLEARANCE,
        'shortest cut, sheet, envelope',
      ),
      within('Blades ahead of riser and hand', 'clearance', 'bladesAheadOfRiserIn', CLEARANCE, 'shortest cut, sheet'),
      within('Blades off the riser', 'clearance', 'bladesOffRiserIn', CLEARANCE, 'shortest cut, sheet'),
      within('Vanes off the cable', 'clearance', 'vaneOffCableIn', CLEARANCE, 'shortest cut, sheet'),
      within('Vane tail ahead of the throat', 'clearance', 'vaneTailIn', CLEARANCE, 'sheet, search'),
    ],
  },
  {
    title: 'Prices',
    fields: [
      price('An arrow', 'perArrowCents'),
      price('Indexing, an arrow', 'indexingCents'),
      price('A test kit', 'testKitCents'),
      price('Rush', 'rushCents'),
      within('Deposit', 'prices', 'depositPercent', PERCENT, 'price lines of the read-back: due with the order'),
      within('Tax', 'prices', 'taxPercent', PERCENT, 'price lines of the read-back'),
    ],
  },
  {
    title: 'Days',
    fields: [
      own('Bench days', 'benchDays', DAYS, 'date promise on the call'),
      {
        label: 'Bench days of a rush',
        hint: 'date promise of a rush; empty: no faster',
        asked: () => DAYS,
        read: ({ rushBenchDays }) => rushBenchDays,
        put: (_, rushBenchDays) => ({ rushBenchDays }),
        clear: ({ rushBenchDays: _, ...rules }) => rules,
      },
      own('Cure days', 'cureDays', DAYS, 'date promise, and what is asked when it misses the hunt'),
      own('Days on the way', 'transitDays', DAYS, 'date promise'),
    ],
  },
]
