/**
 * The shape of one raw shaft from its spin: five stations between two rollers, each with its angle, and where to cut it.
 * Where rollers and stations stand is the shop's usual way: common practice, no source [CP].
 */
import type { Outcome } from '../../core/outcome'
import { degrees, inches } from '../../core/quantity'
import type { Station } from '../../core/runout/centre-line'
import type { RunOut } from '../../core/runout/run-out'
import { runOutOf, sidesOf } from '../../core/runout/run-out'
import type { StraightestWindow } from '../../core/runout/straightest-window'
import { straightestWindow, WORTHWHILE } from '../../core/runout/straightest-window'
import type { Sheet } from '../sheet/sheet'
import type { Bench, BenchArrow } from './bench'
import { accepted, building } from './bench'
import type { DataPoint } from './data-points'
import { ownSheet } from './own-sheet'

const ROLLERS_IN_FROM_ENDS = 1 // in
export const SPIN_STATIONS = [1, 2, 3, 4, 5] as const
export type SpinStation = (typeof SPIN_STATIONS)[number]

export const stationPoints = (station: SpinStation): { readonly tir: DataPoint; readonly angle: DataPoint } => ({
  tir: `runOut${station}`,
  angle: `runOutAngle${station}`,
})

/** Station 1 is the nearest to the nock end. */
const placeOf = (station: SpinStation, rawIn: number) =>
  ROLLERS_IN_FROM_ENDS + ((rawIn - 2 * ROLLERS_IN_FROM_ENDS) * station) / (SPIN_STATIONS.length + 1)

/** @returns undefined where it was not read; a shaft that does not run out there needs no angle */
export function stationRead(arrow: BenchArrow, station: SpinStation): RunOut | undefined {
  const { tir, angle } = stationPoints(station)
  const out = accepted(arrow, tir)?.reading.value
  const at = accepted(arrow, angle)?.reading.value
  if (out === undefined || (at === undefined && out > 0)) return undefined
  return { tir: inches(out), angle: degrees(at ?? 0) }
}

/** @returns undefined until a station is read, and while the sheet has no cut length */
export function windowOf(arrow: BenchArrow, sheet: Sheet): Outcome<StraightestWindow> | undefined {
  const { plan, parts } = ownSheet(arrow, sheet)
  const shaft = parts.find(({ id, part }) => part.kind === 'shaft' && plan.lines.some((line) => line.part === id))?.part
  if (plan.c2cIn === undefined || shaft?.kind !== 'shaft') return undefined
  const rawIn = accepted(arrow, 'rawLength')?.reading.value ?? shaft.rawLengthIn
  const stations = SPIN_STATIONS.flatMap((station): readonly Station[] => {
    const read = stationRead(arrow, station)
    return read === undefined ? [] : [{ ...read, at: inches(placeOf(station, rawIn)) }]
  })
  if (stations.length === 0) return undefined
  return straightestWindow({
    spun: {
      rawLength: inches(rawIn),
      rearSupport: inches(ROLLERS_IN_FROM_ENDS),
      frontSupport: inches(rawIn - ROLLERS_IN_FROM_ENDS),
      stations,
    },
    c2c: inches(plan.c2cIn),
    worthwhile: WORTHWHILE,
  })
}

/** For each arrow of the set that was spun and not cut yet: where its shaft is straightest at the sheet's C2C. */
export const windowsToCut = (bench: Bench, sheet: Sheet) =>
  building(bench).flatMap((arrow) => {
    const window = accepted(arrow, 'c2c') === undefined ? windowOf(arrow, sheet) : undefined
    return window === undefined ? [] : [{ arrow, window }]
  })

/** What insert and head add to the shaft's own run-out at the point. */
export function insertShare(whole: RunOut, shaft: RunOut): RunOut {
  const [all, own] = [sidesOf(whole), sidesOf(shaft)]
  return runOutOf({ up: all.up - own.up, across: all.across - own.across })
}
