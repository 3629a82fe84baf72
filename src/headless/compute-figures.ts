/** What the compute command does, without files: unknown in, figures or the faults in words out. */
import * as z from 'zod/mini'
import type { ArrowFigures } from '../core/arrow/arrow-figures'
import { arrowFigures } from '../core/arrow/arrow-figures'
import { dragBetween, DRAG_BAND } from '../core/flight/drag-band'
import { flightTable } from '../core/flight/flight-table'
import { inches, kilogramsPerCubicMetre, millimetres, ratio, yards } from '../core/quantity'
import { rigidityFromSpine } from '../core/stiffness/static-spine'
import { sheetFigures } from '../domain/sheet/sheet-figures'
import { sheet } from '../domain/sheet/sheet'
import type { Sheet } from '../domain/sheet/sheet'
import type { FiguresOutput } from './figures-output'
import { figuresOutput } from './figures-output'
import { liftOpenInputs } from './lift-open-inputs'
import type { OpenInputs } from './open-inputs'
import { openInputs } from './open-inputs'

export type Computed =
  | { readonly ok: true; readonly output: unknown }
  | { readonly ok: false; readonly faults: readonly string[] }

const SEA_LEVEL = kilogramsPerCubicMetre(1.225) // [USSA76]
const USUAL_RANGES_YD = [20, 40, 60]

/** An array gives an array; its faults name the place in it. */
export function computeFigures(told: unknown, working: boolean): Computed {
  if (!Array.isArray(told)) {
    const one = computeOne(told, working, '')
    return 'faults' in one ? { ok: false, faults: one.faults } : { ok: true, output: one.output }
  }
  const all = told.map((each, i) => computeOne(each, working, `[${i}]`))
  const faults = all.flatMap((each) => ('faults' in each ? each.faults : []))
  return faults.length > 0
    ? { ok: false, faults }
    : { ok: true, output: all.map((each) => 'output' in each && each.output) }
}

type One = { readonly output: FiguresOutput } | { readonly faults: readonly string[] }

function computeOne(told: unknown, working: boolean, at: string): One {
  if (typeof told !== 'object' || told === null) {
    return { faults: [`${at || 'input'}: expected an object, found ${told === null ? 'null' : typeof told}`] }
  }
  if ('format' in told) {
    const read = openInputs.safeParse(told)
    return read.success ? ofOpenInputs(read.data, working, at) : { faults: faultsOf(read.error, at) }
  }
  // An exported sheet: the fact as a backup holds it, or its body alone.
  const body = 'kind' in told && told.kind === 'sheet' && 'body' in told ? told.body : told
  if (!('plan' in (body as object))) {
    return { faults: [`${at}format: expected "grainwright.inputs/1", or an exported sheet; found neither`] }
  }
  const read = sheet.safeParse(body)
  return read.success ? ofSheet(read.data, working, at) : { faults: faultsOf(read.error, at) }
}

function ofOpenInputs(told: OpenInputs, working: boolean, at: string): One {
  const rigidity = rigidityFromSpine(inches(told.shaft.staticSpineIn))
  if (!rigidity.ok)
    return { faults: [`${dot(at)}shaft.staticSpineIn: ${told.shaft.staticSpineIn} in is no static spine of a shaft`] }
  const backwards = told.parts.findIndex(({ fromIn, toIn }) => fromIn > toIn)
  if (backwards >= 0) return { faults: [`${dot(at)}parts[${backwards}].toIn: lies behind fromIn`] }
  if (told.shaft.rearIn >= told.lengthIn) return { faults: [`${dot(at)}shaft.rearIn: lies ahead of lengthIn`] }
  const inputs = liftOpenInputs(told, rigidity.value)
  const figures = arrowFigures(inputs)
  const { flight } = told
  const drag =
    flight?.dragCoefficient === undefined
      ? DRAG_BAND
      : dragBetween(ratio(flight.dragCoefficient), ratio(flight.dragCoefficient))
  const table =
    flight === undefined
      ? undefined
      : flightOf(
          figures,
          flight.diameterMm,
          flight.rangesYd,
          flight.airDensityKgM3 === undefined ? SEA_LEVEL : kilogramsPerCubicMetre(flight.airDensityKgM3),
          drag,
        )
  return {
    output: figuresOutput(
      { figures, bow: inputs.bow, flight: table, rangesYd: flight?.rangesYd ?? [], targetGr: told.targetGr },
      working,
    ),
  }
}

function ofSheet(told: Sheet, working: boolean, at: string): One {
  const worked = sheetFigures(told)
  if (worked === undefined) return { faults: [`${dot(at)}plan: has no shaft or no cut length (plan.c2cIn) yet`] }
  if (worked.figures === undefined)
    return { faults: [`${dot(at)}parts: the shaft's static spine is outside the model`] }
  const shaft = worked.items.find(({ part }) => part.kind === 'shaft')?.part
  const diameterMm = shaft?.kind === 'shaft' ? shaft.outerDiameterMm : 7
  const flight = flightOf(worked.figures, diameterMm, USUAL_RANGES_YD, SEA_LEVEL, DRAG_BAND)
  return {
    output: figuresOutput(
      {
        figures: worked.figures,
        bow: worked.bow.known,
        flight,
        rangesYd: USUAL_RANGES_YD,
        targetGr: told.plan.targetGr,
      },
      working,
    ),
  }
}

function flightOf(
  figures: ArrowFigures,
  diameterMm: number,
  rangesYd: readonly number[],
  density: typeof SEA_LEVEL,
  drag: typeof DRAG_BAND,
) {
  const { finished, speed } = figures
  if (!finished.ok || speed === undefined || !speed.ok || rangesYd.length === 0) return undefined
  const arrow = { mass: finished.value, diameter: millimetres(diameterMm), speed: speed.value, density, drag }
  return flightTable(arrow, rangesYd.map(yards))
}

const dot = (at: string) => (at === '' ? '' : `${at}.`)

const faultsOf = (error: z.core.$ZodError, at: string): readonly string[] =>
  error.issues.map((issue) => {
    const path = issue.path.map((key) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`)).join('')
    return `${(at + path).replace(/^\./, '') || 'input'}: ${issue.message}`
  })
