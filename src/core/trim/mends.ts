import type { Arrow, Piece } from '../arrow/arrow'
import { balancePoint } from '../balance/balance-point'
import { focOf } from '../balance/foc'
import { difference, inches, type Length, type Mass, type Ratio } from '../quantity'
import { bounds, known, noAnswer, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { lengthened } from '../stiffness/lengthened'
import { type FixingEvent, type MendKind, MENDS_FIXED_BY } from './fixing-events'
import { POST_BOUNDS } from './post-problems'

/** What is done to the arrow: a part in place of another, a part more, a longer shaft; or the arrow as it is afterwards. */
export type Change =
  | { readonly does: 'replace'; readonly part: string; readonly by: Piece }
  | { readonly does: 'add'; readonly piece: Piece }
  | { readonly does: 'lengthen'; readonly by: Length }
  /** `focLength` where FOC is measured to another place than the shaft front. */
  | { readonly does: 'become'; readonly arrow: Arrow; readonly focLength?: Length }

export interface MendOption {
  readonly kind: MendKind
  readonly name: string
  readonly change: Change
  readonly ref?: string
}

export interface Mend {
  readonly option: MendOption
  /** What it adds. */
  readonly gain: Mass
  /** Weight over the target afterwards; what is more than the tolerance must be trimmed off again. */
  readonly over: Mass
  readonly foc: Ratio
  readonly focChange: Ratio
  readonly reserve?: Ratio
  readonly reserveChange?: Ratio
}

export interface LightState {
  readonly arrow: Arrow
  /** The length that FOC is measured to, when it is another than the shaft front. */
  readonly focLength?: Length
  /** How much the arrow is short of its target. */
  readonly short: Mass
  readonly tolerance: Mass
  /** What the post can still give, should a mend add too much. */
  readonly trimmable: Mass
  /** What is final already. */
  readonly fixed: readonly FixingEvent[]
}

/** Column reserve of an arrow, from whoever knows the bow. */
export type ReserveOf = (arrow: Arrow) => Outcome<Ratio>

export const LENGTHEN_BOUNDS = bounds(inches(0), inches(20))

/** The arrow after a change, or the name of the part that is not there. */
function changed(arrow: Arrow, change: Change): Arrow | string {
  switch (change.does) {
    case 'add':
      return { ...arrow, pieces: [...arrow.pieces, change.piece] }
    case 'lengthen':
      return lengthened(arrow, change.by)
    case 'become':
      return change.arrow
    case 'replace': {
      const at = arrow.pieces.findIndex(({ name }) => name === change.part)
      return at < 0 ? change.part : { ...arrow, pieces: arrow.pieces.with(at, change.by) }
    }
  }
}

interface Figures {
  readonly mass: Mass
  readonly foc: Ratio
}

function figures(arrow: Arrow, focLength: Length = arrow.length): Outcome<Figures> {
  const balance = balancePoint(arrow)
  if (!balance.ok) return balance
  const { mass, point } = balance.value
  return { ...balance, value: { mass, foc: focOf(point, focLength) } }
}

const valueOf = <T>(outcome: Outcome<T> | undefined): T | undefined => (outcome?.ok ? outcome.value : undefined)

/**
 * What would mend a light arrow, the smallest change first: of the options still possible, those that bring it inside the
 * tolerance, with what the post can still give taken off again. Each with its effect on weight, FOC and column reserve.
 *
 * @param options what the shop has
 * @param reserveOf works out the column reserve; left out, no reserve is told
 * @returns the mends; `no-mend` when there is none; `no-such-part` beside the rest; what is wrong with the arrow
 *
 * Source: balance-point and foc; what is final when is common practice, no source [CP].
 */
export function mends(
  state: LightState,
  options: readonly MendOption[],
  reserveOf?: ReserveOf,
): Outcome<readonly Mend[]> {
  const { arrow, short, tolerance, trimmable, fixed } = state
  const refused = refusal([
    ...outside('weight short', short, POST_BOUNDS.trim, 'gr'),
    ...outside('tolerance', tolerance, POST_BOUNDS.trim, 'gr'),
    ...outside('what the post can give', trimmable, POST_BOUNDS.trim, 'gr'),
    ...options.flatMap(({ change }) =>
      change.does === 'lengthen' ? outside('longer by', change.by, LENGTHEN_BOUNDS, 'in') : [],
    ),
  ])
  if (refused) return refused
  const now = figures(arrow, state.focLength)
  if (!now.ok) return now
  const reserveNow = valueOf(reserveOf?.(arrow))

  const possible = options.filter(({ kind }) => !fixed.includes(MENDS_FIXED_BY[kind]))
  const tried = possible.map((option) => ({ option, after: changed(arrow, option.change) }))
  const missing = tried.flatMap(({ option, after }) =>
    typeof after === 'string' ? [{ code: 'no-such-part', part: after, change: option.name } as const] : [],
  )
  const found = tried.flatMap(({ option, after }): readonly Mend[] => {
    const then =
      typeof after === 'string'
        ? undefined
        : valueOf(figures(after, option.change.does === 'become' ? option.change.focLength : undefined))
    if (typeof after === 'string' || then === undefined) return []
    const gain = difference(then.mass, now.value.mass)
    const over = difference(gain, short)
    if (over + tolerance < 0 || over > tolerance + trimmable) return []
    const reserve = valueOf(reserveOf?.(after))
    return [
      {
        option,
        gain,
        over,
        foc: then.foc,
        focChange: difference(then.foc, now.value.foc),
        ...(reserve === undefined ? {} : { reserve }),
        ...(reserve === undefined || reserveNow === undefined
          ? {}
          : { reserveChange: difference(reserve, reserveNow) }),
      },
    ]
  })
  const [first, ...rest] = found.toSorted((a, b) => a.gain - b.gain)
  if (first === undefined) return noAnswer({ code: 'no-mend', short, fixed }, ...missing)
  const ranked = [first, ...rest]
  return known(
    ranked,
    {
      equation: 'short − tolerance ≤ gain ≤ short + tolerance + trimmable, least gain first',
      inputs: [
        term('weight short', short, 'gr'),
        term('tolerance', tolerance, 'gr'),
        term('trimmable', trimmable, 'gr'),
        term('weight now', now.value.mass, 'gr', 'computed'),
        term('FOC now', now.value.foc, '%', 'computed'),
      ],
      result: ranked.flatMap(({ option, gain, foc: share }) => [
        term(`gain by ${option.name}`, gain, 'gr'),
        term(`FOC with ${option.name}`, share, '%'),
      ]),
      source: ['CP', 'OWN'],
      steps: [now.derivation],
    },
    missing,
  )
}
