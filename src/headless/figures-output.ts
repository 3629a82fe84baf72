/** The figures as the compute command prints them: plain numbers in the trade's units at full precision. */
import type { ArrowFigures } from '../core/arrow/arrow-figures'
import type { KnownBow } from '../core/bow/known-bow'
import { VIRTUAL_MASS_PRIOR } from '../core/bow/virtual-mass-prior'
import type { Finding } from '../core/finding'
import type { FlightRow } from '../core/flight/flight-table'
import type { Derivation, Estimate, Outcome } from '../core/outcome'
import type { Dimension, Quantity, UnitOf } from '../core/quantity'
import { inGrains, inUnit, yards } from '../core/quantity'

export interface FlightOutput {
  readonly rangeYd: number
  readonly speedFps: number
  readonly kineticEnergyFtLbf: number
  readonly momentumSlugFtS: number
  readonly dropIn: number
  readonly timeS: number
}

/** A figure that the core cannot give is null, and `findings` says why. */
export interface FiguresOutput {
  readonly finishedGr: number | null
  readonly balanceIn: number | null
  readonly focPercent: number | null
  readonly grainsPerPound: number | null
  readonly bowEnergyFtLbf: number | null
  readonly virtualMassGr: number
  readonly speedFps: number | null
  readonly speedFrom: string | null
  readonly kineticEnergyFtLbf: number | null
  readonly momentumSlugFtS: number | null
  readonly columnReserve: number | null
  readonly overTargetGr: number | null
  readonly flight: readonly FlightOutput[]
  readonly bands: Readonly<Record<string, readonly [number, number]>>
  readonly findings: readonly ({ readonly figure: string } & Finding)[]
  readonly working?: Readonly<Record<string, Derivation>>
}

type Answer<D extends Dimension> = Outcome<Quantity<D> | Estimate<Quantity<D>>> | undefined

function plain<D extends Dimension>(answer: Answer<D>, unit: UnitOf<D>): number | null {
  if (answer === undefined || !answer.ok) return null
  return inUnit(typeof answer.value === 'number' ? answer.value : answer.value.value, unit)
}

function bandOf<D extends Dimension>(answer: Answer<D>, unit: UnitOf<D>): readonly [number, number] | undefined {
  if (answer === undefined || !answer.ok || typeof answer.value === 'number') return undefined
  return [inUnit(answer.value.low, unit), inUnit(answer.value.high, unit)]
}

export interface Told {
  readonly figures: ArrowFigures
  readonly bow: Pick<KnownBow, 'kind' | 'virtualMass'>
  readonly flight: Outcome<readonly FlightRow[]> | undefined
  readonly rangesYd: readonly number[]
  readonly targetGr: number | undefined
}

export function figuresOutput({ figures, bow, flight, rangesYd, targetGr }: Told, working: boolean): FiguresOutput {
  const finishedGr = plain(figures.finished, 'gr')
  const bands = {
    balanceIn: bandOf(figures.balance, 'in'),
    bowEnergyFtLbf: bandOf(figures.bowEnergy, 'ft·lbf'),
    virtualMassGr: bandOf(figures.virtualMass, 'gr'),
    speedFps: bandOf(figures.speed, 'ft/s'),
    kineticEnergyFtLbf: bandOf(figures.kineticEnergy, 'ft·lbf'),
    momentumSlugFtS: bandOf(figures.momentum, 'slug·ft/s'),
    columnReserve: bandOf(figures.columnReserve, '1'),
  }
  const { provenance, ...outcomes } = figures
  const answers: readonly (readonly [string, Outcome<unknown> | undefined])[] = [
    ...Object.entries(outcomes),
    ['flight', flight],
  ]
  return {
    finishedGr,
    balanceIn: plain(figures.balance, 'in'),
    focPercent: plain(figures.foc, '%'),
    grainsPerPound: plain(figures.grainsPerPound, 'gr/lb'),
    bowEnergyFtLbf: plain(figures.bowEnergy, 'ft·lbf'),
    // Without a speed the one told or assumed, which the reserve stands on.
    virtualMassGr:
      plain(figures.virtualMass, 'gr') ?? inGrains(bow.virtualMass?.value ?? VIRTUAL_MASS_PRIOR[bow.kind].value),
    speedFps: plain(figures.speed, 'ft/s'),
    speedFrom: provenance ?? null,
    kineticEnergyFtLbf: plain(figures.kineticEnergy, 'ft·lbf'),
    momentumSlugFtS: plain(figures.momentum, 'slug·ft/s'),
    columnReserve: plain(figures.columnReserve, '1'),
    overTargetGr: finishedGr === null || targetGr === undefined ? null : finishedGr - targetGr,
    flight: flight?.ok ? flight.value.map((row) => flightOutput(row, rangesYd)) : [],
    bands: Object.fromEntries(
      Object.entries(bands).flatMap(([name, band]) => (band === undefined ? [] : [[name, band]])),
    ),
    findings: answers.flatMap(([figure, answer]) =>
      (answer?.findings ?? []).map((finding) => ({ figure, ...finding })),
    ),
    ...(working
      ? {
          working: Object.fromEntries(
            answers.flatMap(([name, answer]) => (answer?.ok ? [[name, answer.derivation]] : [])),
          ),
        }
      : {}),
  }
}

const flightOutput = (row: FlightRow, rangesYd: readonly number[]): FlightOutput => ({
  // The number as it was asked for, not as it comes back from metres.
  rangeYd: rangesYd.find((yd) => yards(yd) === row.range) ?? inUnit(row.range, 'yd'),
  speedFps: inUnit(row.speed.value, 'ft/s'),
  kineticEnergyFtLbf: inUnit(row.energy.value, 'ft·lbf'),
  momentumSlugFtS: inUnit(row.momentum.value, 'slug·ft/s'),
  dropIn: inUnit(row.drop.value, 'in'),
  timeS: inUnit(row.time.value, 's'),
})
