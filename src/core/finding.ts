/**
 * What a model has to say beside, or instead of, its value. Findings are data and hold quantities; their sentences stand
 * in ui/words/findings. One file of findings stands in each topic folder; a new code does not compile without a sentence.
 */
import type { AirFinding } from './air/findings'
import type { BowFinding } from './bow/findings'
import type { CureFinding } from './cure/findings'
import type { CutFinding } from './cut/findings'
import type { EnergyFinding } from './energy/findings'
import type { EnvelopeFinding } from './envelope/findings'
import type { FlightFinding } from './flight/findings'
import type { BalanceFinding } from './balance/findings'
import type { LawFinding } from './law/findings'
import type { Bounds } from './outcome'
import type { Dimension, Quantity, UnitOf } from './quantity'
import type { RunOutFinding } from './runout/findings'
import type { StatisticsFinding } from './statistics/findings'
import type { StiffnessFinding } from './stiffness/findings'
import type { TrimFinding } from './trim/findings'
import type { WeightFinding } from './weight/findings'

/** An input outside the range where a model holds, or no number at all. `unit` is the one people use for it. */
export type OutsideModel = {
  [D in Dimension]: {
    readonly code: 'outside-model'
    readonly input: string
    readonly at: Quantity<D>
    readonly bounds: Bounds<Quantity<D>>
    readonly unit: UnitOf<D>
  }
}[Dimension]

export type Finding =
  | OutsideModel
  | StatisticsFinding
  | StiffnessFinding
  | RunOutFinding
  | CutFinding
  | EnvelopeFinding
  | EnergyFinding
  | BowFinding
  | AirFinding
  | FlightFinding
  | WeightFinding
  | BalanceFinding
  | TrimFinding
  | CureFinding
  | LawFinding

/** The finding for an input that is not within the bounds (NaN never is). */
export const outsideModel = <D extends Dimension>(
  input: string,
  at: Quantity<D>,
  bounds: Bounds<Quantity<D>>,
  unit: UnitOf<D>,
) => ({ code: 'outside-model', input, at, bounds, unit }) as unknown as OutsideModel
