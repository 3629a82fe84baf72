import type { Finding } from '../finding'
import { bounds, known, type Outcome, term } from '../outcome'
import { greatest, inches, least, type Length, metres } from '../quantity'
import { outside, refusal } from '../refusal'

/** What limits the cut, each as a length from carbon to carbon. */
export interface CutQuestion {
  /** The shortest that stays clear at full draw. */
  readonly clear: Length
  /** The lengths whose reserve is in the band. */
  readonly stiff: { readonly shortest: Length; readonly longest: Length }
  /** The longest the raw shaft gives. */
  readonly raw: Length
  /** What the builder leans to. */
  readonly wish: 'shortest' | 'longest' | Length
  /** Lengths the saw stop is set to are whole multiples of this. */
  readonly step: Length
}

export interface CutChoice {
  readonly c2c: Length
  readonly shortest: Length
  readonly longest: Length
  readonly shortestBy: 'clearance' | 'stiffness'
  readonly longestBy: 'stiffness' | 'raw shaft'
}

export const CUT_BOUNDS = Object.freeze({
  c2c: bounds(inches(0), inches(80)),
  step: bounds(inches(0.001), inches(2)),
})
const HAIR = 1e-9 // of a step: a limit that is a whole multiple but for its last digit

/**
 * A length to cut to, between what clearance and stiffness ask for and what stiffness and the raw shaft allow: the step
 * nearest to the wish, or the middle where no step lies between.
 *
 * @returns the choice, with `cut-wish-moved` where the wish lay outside; when nothing fits, each pair of limits that shuts
 * the other out; or `outside-model`
 *
 * Source: [CP]; the rules are the shop's, the builder picks between.
 */
export function chooseCut({ clear, stiff, raw, wish, step }: CutQuestion): Outcome<CutChoice> {
  const wished = wish === 'shortest' ? CUT_BOUNDS.c2c.min : wish === 'longest' ? CUT_BOUNDS.c2c.max : wish
  const refused = refusal([
    ...outside('shortest clear cut', clear, CUT_BOUNDS.c2c, 'in'),
    ...outside('shortest stiff cut', stiff.shortest, CUT_BOUNDS.c2c, 'in'),
    ...outside('longest stiff cut', stiff.longest, CUT_BOUNDS.c2c, 'in'),
    ...outside('raw shaft', raw, CUT_BOUNDS.c2c, 'in'),
    ...outside('wished cut', wished, CUT_BOUNDS.c2c, 'in'),
    ...outside('step of the saw stop', step, CUT_BOUNDS.step, 'in'),
  ])
  if (refused) return refused
  const nothingFits = refusal(shutOut({ clear, stiff, raw }))
  if (nothingFits) return nothingFits
  const shortest = greatest(clear, stiff.shortest)
  const longest = least(stiff.longest, raw)
  const first = Math.ceil(shortest / step - HAIR)
  const last = Math.floor(longest / step + HAIR)
  const nearest = Math.min(last, Math.max(first, Math.round(wished / step)))
  const c2c = metres(first > last ? (shortest + longest) / 2 : nearest * step)
  const moved = typeof wish === 'number' && (wish < shortest || wish > longest)
  const choice: CutChoice = {
    c2c,
    shortest,
    longest,
    shortestBy: clear >= stiff.shortest ? 'clearance' : 'stiffness',
    longestBy: stiff.longest <= raw ? 'stiffness' : 'raw shaft',
  }
  return known(
    choice,
    {
      equation:
        'the greater of what clearance and stiffness ask ≤ C2C ≤ the lesser of what stiffness and raw shaft allow',
      inputs: [
        term('shortest clear', clear, 'in', 'computed'),
        term('shortest by stiffness', stiff.shortest, 'in', 'computed'),
        term('longest by stiffness', stiff.longest, 'in', 'computed'),
        term('raw shaft allows', raw, 'in'),
        term('step', step, 'in'),
      ],
      result: [term('carbon to carbon', c2c, 'in'), term('shortest', shortest, 'in'), term('longest', longest, 'in')],
      source: ['CP'],
    },
    moved ? [{ code: 'cut-wish-moved', wish: wished, c2c }] : [],
  )
}

const shutOut = ({ clear, stiff, raw }: Pick<CutQuestion, 'clear' | 'stiff' | 'raw'>): readonly Finding[] => [
  ...(stiff.shortest > stiff.longest ? [{ code: 'range-reversed', ...stiff } as const] : []),
  ...(clear > stiff.longest ? [{ code: 'clearance-against-stiffness', clear, longest: stiff.longest } as const] : []),
  ...(clear > raw ? [{ code: 'clearance-against-raw-shaft', clear, longest: raw } as const] : []),
  ...(stiff.shortest > raw
    ? [{ code: 'stiffness-against-raw-shaft', shortest: stiff.shortest, longest: raw } as const]
    : []),
]
