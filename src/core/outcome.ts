/** How a model answers: a value with its findings and its working, or the findings that say why there is none. */
import type { Finding } from './finding'
import type { Dimension, Quantity, Unit, UnitOf } from './quantity'
import { inUnit } from './quantity'
import type { SourceKey } from './sources'

/** Where a number came from. `given` is what a bare call knows; whoever assembles a figure names the true origin. */
export type Origin =
  | 'given'
  | 'read' // off a scale, a rule, a chronograph
  | 'answered' // by the client on the call
  | 'catalogue'
  | 'lot history'
  | 'shop rule'
  | 'assumed'
  | 'computed'
  | 'constant'

/** One number of a working, in a unit people use. */
export interface Term {
  readonly name: string
  readonly value: number
  readonly unit: Unit
  readonly origin: Origin
  /** What it can be traced to: a reading, a lot code, a part, a source key. */
  readonly ref?: string
}

/** The working of one result. `steps` are the results it stands on, innermost first. */
export interface Derivation {
  readonly equation: string
  readonly inputs: readonly Term[]
  readonly result: readonly Term[]
  readonly source: readonly SourceKey[]
  readonly note?: string
  readonly steps?: readonly Derivation[]
}

export interface Known<T> {
  readonly ok: true
  readonly value: T
  readonly findings: readonly Finding[]
  readonly derivation: Derivation
}
export interface NoAnswer {
  readonly ok: false
  readonly findings: readonly [Finding, ...Finding[]]
}
export type Outcome<T> = Known<T> | NoAnswer

/** A closed range; the check, the form's hint and the test use the same object. */
export interface Bounds<Q extends number> {
  readonly min: Q
  readonly max: Q
}
export const bounds = <Q extends number>(min: Q, max: Q): Bounds<Q> => Object.freeze({ min, max })
/** False for NaN as well. */
export const within = <Q extends number>(q: Q, b: Bounds<Q>) => q >= b.min && q <= b.max

/** A value with its standard uncertainty and the ends of its 95 % band. */
export interface Estimate<Q extends number> {
  readonly value: Q
  readonly sd: Q
  readonly low: Q
  readonly high: Q
}

export const known = <T>(value: T, derivation: Derivation, findings: readonly Finding[] = []): Known<T> => ({
  ok: true,
  value,
  findings,
  derivation,
})
export const noAnswer = (first: Finding, ...rest: readonly Finding[]): NoAnswer => ({
  ok: false,
  findings: [first, ...rest],
})

/** A term of a working from a quantity. */
export const term = <D extends Dimension>(
  name: string,
  q: Quantity<D>,
  unit: UnitOf<D>,
  origin: Origin = 'given',
  ref?: string,
): Term => ({ name, value: inUnit(q, unit), unit, origin, ...(ref === undefined ? {} : { ref }) })

export interface OriginNote {
  readonly origin: Origin
  readonly ref?: string
}
/** The same outcome with the true origin written on the inputs that are named. */
export const withOrigins = <T>(outcome: Outcome<T>, origins: Readonly<Record<string, OriginNote>>): Outcome<T> =>
  outcome.ok
    ? {
        ...outcome,
        derivation: {
          ...outcome.derivation,
          inputs: outcome.derivation.inputs.map((input) => ({ ...input, ...origins[input.name] })),
        },
      }
    : outcome
