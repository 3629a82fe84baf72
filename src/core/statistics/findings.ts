import type { Dimension, Quantity, UnitOf } from '../quantity'

/** Fewer values than a figure needs. */
export interface TooFewValues {
  readonly code: 'too-few-values'
  readonly figure: string
  readonly got: number
  readonly needed: number
}

/** All values are the same, so that nothing can be divided by their spread. */
export interface NoSpread {
  readonly code: 'no-spread'
  readonly figure: string
}

/** Values outside the control limits, by their place in the list, from 1. */
export interface BeyondControlLimits {
  readonly code: 'beyond-control-limits'
  readonly places: readonly number[]
}

/** The set's lightest and heaviest lie further apart than the shop allows. */
export type SpreadOver = {
  [D in Dimension]: {
    readonly code: 'spread-over'
    readonly spread: Quantity<D>
    readonly limit: Quantity<D>
    readonly unit: UnitOf<D>
  }
}[Dimension]

export type StatisticsFinding = TooFewValues | NoSpread | BeyondControlLimits | SpreadOver

export const spreadOver = <D extends Dimension>(spread: Quantity<D>, limit: Quantity<D>, unit: UnitOf<D>) =>
  ({ code: 'spread-over', spread, limit, unit }) as unknown as SpreadOver
