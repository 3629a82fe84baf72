/** How the sheet's arrow flies: what it keeps at each distance, and whether its vanes can steer the head. */
import { standardAtmosphere } from '../../core/air/standard-atmosphere'
import type { FinSet } from '../../core/flight/fin-lift'
import { flightTable, type FlightRow } from '../../core/flight/flight-table'
import { steering, type HeadShape, type Steering } from '../../core/flight/steering'
import type { Outcome } from '../../core/outcome'
import { difference, inches, metres, millimetres, quantity, scaled, sum, type Length } from '../../core/quantity'
import type { Placed } from './geometry'
import type { Sheet } from './sheet'
import type { SheetFigures } from './sheet-figures'

/** Yards; the client's own distance is put among them. */
const RANGES_YD = [10, 20, 30, 40, 50, 60]

/** At sea level in standard air. Undefined while no speed is known. */
export function flightOf(
  { hunt }: Sheet,
  { figures, geometry }: SheetFigures,
): Outcome<readonly FlightRow[]> | undefined {
  const shaft = geometry.placed.find(({ part }) => part.kind === 'shaft')?.part
  if (shaft?.kind !== 'shaft' || figures?.speed === undefined) return undefined
  const { finished, speed } = figures
  if (!finished.ok) return finished
  if (!speed.ok) return speed
  const air = standardAtmosphere(metres(0))
  if (!air.ok) return air
  const own = hunt.shotDistanceYd
  const ranges = own === undefined ? RANGES_YD : [...new Set([...RANGES_YD, own])].toSorted((a, b) => a - b)
  const flown = {
    mass: finished.value,
    diameter: millimetres(shaft.outerDiameterMm),
    speed: speed.value,
    density: air.value.density,
  }
  const table = flightTable(
    flown,
    ranges.map((yards) => quantity(yards, 'yd')),
  )
  return table.ok ? { ...table, derivation: { ...table.derivation, steps: [speed.derivation, air.derivation] } } : table
}

/** Blades are taken as triangles from the tip to their rear edge, half of the cutting width high. Undefined without vanes. */
export function steeringOf({ plan }: Sheet, { figures, geometry }: SheetFigures): Outcome<Steering> | undefined {
  const of = (...kinds: readonly string[]) => geometry.placed.find(({ part }) => kinds.includes(part.kind))
  const [shaft, head] = [of('shaft')?.part, of('broadhead', 'field point')]
  const vane = of('vane', 'feather')
  const line = plan.lines.find(({ id }) => id === vane?.line.id)
  if (shaft?.kind !== 'shaft' || head === undefined || vane === undefined || line === undefined) return undefined
  const balance = figures?.balance
  if (balance?.ok !== true) return balance
  const diameter = millimetres(shaft.outerDiameterMm)
  const vanes = vanesOf(vane, line.count)
  const shape = headOf(head, diameter)
  if (vanes === undefined || shape === undefined) return undefined
  return steering({
    overall: inches(head.toIn),
    diameter,
    balance: typeof balance.value === 'number' ? balance.value : balance.value.value,
    vanes,
    head: shape,
  })
}

const finCount = (n: number): FinSet['count'] | undefined => (n === 2 || n === 3 || n === 4 ? n : undefined)

function vanesOf({ part, toIn }: Placed, many: number): FinSet | undefined {
  const count = finCount(many)
  if ((part.kind !== 'vane' && part.kind !== 'feather') || count === undefined) return undefined
  return {
    count,
    span: inches(part.heightIn),
    rootChord: inches(part.lengthIn),
    tipChord: inches(part.tipLengthIn),
    sweep: inches(part.sweepIn),
    rootFront: inches(toIn),
  }
}

function headOf({ part, fromIn, toIn }: Placed, diameter: Length): HeadShape | undefined {
  const coneLength = difference(inches(toIn), inches(fromIn))
  if (part.kind !== 'broadhead') return { coneLength }
  const count = finCount(part.blades)
  const rear = sum(inches(fromIn), inches(part.bladeRearIn))
  const blade = difference(inches(toIn), rear)
  const span = scaled(difference(inches(part.cuttingWidthIn), diameter), 0.5)
  if (count === undefined || !(span > 0) || !(blade > 0)) return { coneLength }
  const blades = { count, span, rootChord: blade, tipChord: inches(0), sweep: blade, rootFront: inches(toIn) }
  return { coneLength, blades }
}
