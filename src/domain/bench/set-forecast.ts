/**
 * Where each arrow of the set is heading, and whether it can still be brought to its number. Every arrow is trimmed to one
 * weight less head, so that heads can be swapped; its own target is that and its own head.
 */
import type { Outcome } from '../../core/outcome'
import type { Mass } from '../../core/quantity'
import { difference, grains, inGrains, sum } from '../../core/quantity'
import type { Forecast } from '../../core/weight/forecast-weight'
import { forecastWeight } from '../../core/weight/forecast-weight'
import type { LessHead } from '../../core/weight/less-head'
import { lessHead } from '../../core/weight/less-head'
import type { Id } from '../records/scalars'
import type { PlanItem } from '../sheet/plan-items'
import type { Sheet } from '../sheet/sheet'
import { finishedItems, headItems } from './arrow-items'
import type { Bench, BenchArrow } from './bench'
import { accepted, building } from './bench'

export type LandingState = 'on the number' | 'heads to' | 'light' | 'heavy'

export interface ArrowForecast {
  readonly arrow: BenchArrow
  readonly forecast: Outcome<Forecast>
  readonly head: Mass
  /** What this arrow with its own head is to finish at. */
  readonly target: Mass
  /** Forecast minus target: what is still to come off; negative when it is light. */
  readonly over: Mass
  /** Whether the finished weight itself was read. */
  readonly read: boolean
  readonly state: LandingState
}

export interface SetLanding {
  readonly lessHead: Outcome<LessHead>
  readonly arrows: ReadonlyMap<Id, ArrowForecast>
}

const total = (items: readonly { readonly mean: Mass }[]) => sum(grains(0), ...items.map(({ mean }) => mean))

/** Room for what binary fractions do to a difference of two typed numbers. */
const HAIR = 1e-9 // gr

function stateOf(over: Mass, forecast: Outcome<Forecast>, read: boolean, toleranceGr: number): LandingState {
  const overGr = inGrains(over)
  if (Math.abs(overGr) <= toleranceGr + HAIR) return read ? 'on the number' : 'heads to'
  if (read) return overGr < 0 ? 'light' : 'heavy'
  const high = forecast.ok ? inGrains(difference(forecast.value.total.high, forecast.value.total.value)) : 0
  return overGr + high < -toleranceGr ? 'light' : 'heads to'
}

/** @param items the plan's, as `planItems` gives them */
export function setLanding(bench: Bench, sheet: Sheet, items: readonly PlanItem[]): SetLanding {
  const arrows = building(bench)
  const heads = arrows.map((arrow) => total(headItems(arrow, items, sheet)))
  const finished = grains(sheet.plan.targetGr ?? 0)
  const wanted = lessHead(finished, heads)
  return {
    lessHead: wanted,
    arrows: new Map(
      arrows.map((arrow, i) => {
        const head = heads[i]!
        const forecast = forecastWeight(finishedItems(arrow, items, sheet))
        const target = wanted.ok ? sum(wanted.value.target, head) : finished
        const over = forecast.ok ? difference(forecast.value.total.value, target) : grains(0)
        const read = accepted(arrow, 'finishedWeight') !== undefined
        const state = stateOf(over, forecast, read, sheet.rules.toleranceGr)
        return [arrow.id, { arrow, forecast, head, target, over, read, state }]
      }),
    ),
  }
}
