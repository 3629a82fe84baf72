/** The finished set against its frozen sheet, arrow by arrow: what was read, what was meant, and by how much it is off. */
import { measuredFoc } from '../../core/balance/measured-foc'
import type { Estimate, Outcome } from '../../core/outcome'
import type { Mass, Ratio } from '../../core/quantity'
import { difference, grains, inches } from '../../core/quantity'
import type { SetStatistics } from '../../core/statistics/set-statistics'
import { setStatistics } from '../../core/statistics/set-statistics'
import type { Bench, BenchArrow } from '../bench/bench'
import { accepted, building } from '../bench/bench'
import { ownGeometry, ownSheet } from '../bench/own-sheet'
import { setLanding } from '../bench/set-forecast'
import type { SheetFigures } from '../sheet/sheet-figures'
import type { Sheet } from '../sheet/sheet'

export interface InspectedArrow {
  readonly arrow: BenchArrow
  readonly target: Mass
  readonly finished: Mass | undefined
  /** Finished less target. */
  readonly off: Mass | undefined
  readonly lessHead: Mass | undefined
  readonly foc: Outcome<Estimate<Ratio>> | undefined
}
export interface Inspection {
  readonly arrows: readonly InspectedArrow[]
  readonly lessHeadTarget: Mass | undefined
  /** Of the weights less head. */
  readonly statistics: Outcome<SetStatistics<'mass'>> | undefined
  /** Of the finished weights, head on. */
  readonly finished: Outcome<SetStatistics<'mass'>> | undefined
}

const RULE_STEP = inches(1 / 16)

export function inspection(bench: Bench, sheet: Sheet, worked: SheetFigures): Inspection {
  const landing = setLanding(bench, sheet, worked.items)
  const arrows = building(bench).map((arrow): InspectedArrow => {
    const own = landing.arrows.get(arrow.id)!
    const read = accepted(arrow, 'finishedWeight')?.reading.value
    const finished = read === undefined ? undefined : grains(read)
    const balance = accepted(arrow, 'balancePoint')?.reading.value
    return {
      arrow,
      target: own.target,
      finished,
      off: finished && difference(finished, own.target),
      lessHead: finished && difference(finished, own.head),
      foc:
        balance === undefined
          ? undefined
          : measuredFoc({
              balance: { value: inches(balance), step: RULE_STEP },
              length: {
                value: inches((ownGeometry(ownSheet(arrow, sheet)) ?? worked.geometry).focLengthIn),
                step: RULE_STEP,
              },
              frontPoint: sheet.plan.frontPoint,
            }),
    }
  })
  const over = (key: 'lessHead' | 'finished') => {
    const weights = arrows.flatMap(({ [key]: weight }) => (weight === undefined ? [] : [weight]))
    return weights.length === 0 ? undefined : setStatistics(weights, 'gr', grains(sheet.rules.setSpreadGr))
  }
  return {
    arrows,
    lessHeadTarget: landing.lessHead.ok ? landing.lessHead.value.target : undefined,
    statistics: over('lessHead'),
    finished: over('finished'),
  }
}

/** What goes into the box, as data; the shop's own things are written by hand on the list. Common practice [CP]. */
export const PACKING = [
  'arrows, heads off and capped',
  'broadheads in their case',
  'field points',
  'spare nocks and vanes',
  'spare insert and collar',
  'wrench for the heads',
  'flex card',
  'client sheet',
] as const
