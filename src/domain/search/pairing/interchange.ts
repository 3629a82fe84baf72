/**
 * Any head on any arrow: the worst finished weight and FOC that a hunter can screw together, and which head on which arrow
 * comes best. Field points count as heads. Plain numbers: grains, inches from the nock throat.
 */
import { cheapestAssignment } from './assignment'

/** A finished arrow without its head. */
export interface BareArrow {
  readonly id: string
  readonly gr: number
  /** Of its weight about the throat, gr·in. */
  readonly moment: number
  /** Where a head is seated. */
  readonly seatIn: number
  /** What FOC is measured over. */
  readonly lengthIn: number
}
export interface LooseHead {
  readonly id: string
  readonly gr: number
  /** Its centre ahead of the seat. */
  readonly centreIn: number
}
export interface Mounted {
  readonly arrow: BareArrow
  readonly head: LooseHead
  readonly gr: number
  readonly focPercent: number
}

export interface Interchange {
  readonly lightest: Mounted
  readonly heaviest: Mounted
  readonly leastFoc: Mounted
  readonly mostFoc: Mounted
  /** The one furthest from the target, either way. */
  readonly furthest: Mounted
}

export type InterchangeFinding =
  | { readonly code: 'no-arrows' }
  | { readonly code: 'no-heads' }
  | { readonly code: 'fewer-heads-than-arrows'; readonly heads: number; readonly arrows: number }
  | { readonly code: 'not-usable'; readonly id: string }

const MOST_GR = 5000
const isUsable = (...figures: readonly number[]) => figures.every((n) => n >= 0 && n <= MOST_GR * 100)

function problems(arrows: readonly BareArrow[], heads: readonly LooseHead[]): readonly InterchangeFinding[] {
  return [
    ...(arrows.length === 0 ? [{ code: 'no-arrows' } as const] : []),
    ...(heads.length === 0 ? [{ code: 'no-heads' } as const] : []),
    ...arrows.flatMap(({ id, gr, moment, seatIn, lengthIn }): readonly InterchangeFinding[] =>
      isUsable(gr, moment, seatIn, lengthIn) && gr > 0 && lengthIn > 0 ? [] : [{ code: 'not-usable', id }],
    ),
    ...heads.flatMap(({ id, gr, centreIn }): readonly InterchangeFinding[] =>
      isUsable(gr, centreIn) ? [] : [{ code: 'not-usable', id }],
    ),
  ]
}

export function mounted(arrow: BareArrow, head: LooseHead): Mounted {
  const gr = arrow.gr + head.gr
  const balanceIn = (arrow.moment + head.gr * (arrow.seatIn + head.centreIn)) / gr
  return { arrow, head, gr, focPercent: 100 * (balanceIn / arrow.lengthIn - 0.5) }
}

export function interchange(
  arrows: readonly BareArrow[],
  heads: readonly LooseHead[],
  targetGr: number,
): { readonly worst: Interchange | undefined; readonly findings: readonly InterchangeFinding[] } {
  const findings = problems(arrows, heads)
  if (findings.length > 0) return { worst: undefined, findings }
  const all = arrows.flatMap((arrow) => heads.map((head) => mounted(arrow, head)))
  const most = (of: (each: Mounted) => number) => all.reduce((best, each) => (of(each) > of(best) ? each : best))
  return {
    worst: {
      lightest: most(({ gr }) => -gr),
      heaviest: most(({ gr }) => gr),
      leastFoc: most(({ focPercent }) => -focPercent),
      mostFoc: most(({ focPercent }) => focPercent),
      furthest: most(({ gr }) => Math.abs(gr - targetGr)),
    },
    findings: [],
  }
}

/** Every arrow a head: the furthest from the target as near as can be, and then all of them together. Exact. */
export function bestHeads(
  arrows: readonly BareArrow[],
  heads: readonly LooseHead[],
  targetGr: number,
): { readonly best: readonly Mounted[] | undefined; readonly findings: readonly InterchangeFinding[] } {
  const findings = problems(arrows, heads)
  if (findings.length > 0) return { best: undefined, findings }
  if (heads.length < arrows.length) {
    const short = { code: 'fewer-heads-than-arrows', heads: heads.length, arrows: arrows.length } as const
    return { best: undefined, findings: [short] }
  }
  const offs = arrows.map((arrow) => heads.map((head) => Math.abs(arrow.gr + head.gr - targetGr)))
  const within = (limit: number) =>
    cheapestAssignment(offs.map((row) => row.map((off) => (off <= limit ? off : Infinity))))
  const limits = [...new Set(offs.flat())].toSorted((a, b) => a - b)
  let [low, high] = [0, limits.length - 1] // the widest limit always leaves an assignment
  while (low < high) {
    const middle = Math.floor((low + high) / 2)
    if (within(limits[middle]!) === undefined) low = middle + 1
    else high = middle
  }
  const { columns } = within(limits[high]!)!
  return { best: arrows.map((arrow, i) => mounted(arrow, heads[columns[i]!]!)), findings: [] }
}
