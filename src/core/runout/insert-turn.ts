import { bounds, known, noAnswer, type Outcome, term } from '../outcome'
import { type Angle, radians, ratio } from '../quantity'
import { outside, refusal } from '../refusal'
import { type RunOut, RUN_OUT_BOUNDS, runOutOf, sidesOf } from './run-out'

export interface InsertTurn {
  /** How far to turn the insert from where it was read, the way the angles run, from 0 up to a full turn. */
  readonly turn: Angle
  readonly remaining: RunOut
}

/** How many places an index may have: 1 is no choice, 360 a degree each. */
export const INDEX_BOUNDS = bounds(ratio(1), ratio(3600))
const FULL_TURN = 2 * Math.PI

/**
 * The turn of the insert, in the shaft, that cancels most of the point's run-out: what the shaft does there and what insert
 * and head do there add as vectors, and only the second turns with the insert.
 *
 *   remaining = |shaft + insert·e^(iφ)|, least at φ = angle of shaft + 180° − angle of insert
 *
 * @param shaft run-out at the point that is the shaft's own
 * @param insert run-out at the point that is the insert's and the head's own, as it sits now
 * @param places evenly spaced places it may be turned to, one of them as it sits; absent: any
 * @returns turn and what remains, or `outside-model`, or `places-not-whole`
 *
 * Source: [OWN], sum of vectors; exact for small run-outs.
 */
export function insertTurn(shaft: RunOut, insert: RunOut, places?: number): Outcome<InsertTurn> {
  const refused = refusal([
    ...outside('run-out of the shaft', shaft.tir, RUN_OUT_BOUNDS.tir, 'in'),
    ...outside('angle of the shaft', shaft.angle, RUN_OUT_BOUNDS.angle, '°'),
    ...outside('run-out of the insert', insert.tir, RUN_OUT_BOUNDS.tir, 'in'),
    ...outside('angle of the insert', insert.angle, RUN_OUT_BOUNDS.angle, '°'),
    ...outside('places to turn to', ratio(places ?? 1), INDEX_BOUNDS, '1'),
  ])
  if (refused) return refused
  if (places !== undefined && !Number.isInteger(places)) {
    return noAnswer({ code: 'places-not-whole', places })
  }
  const best = withinTurn(shaft.angle + Math.PI - insert.angle)
  const step = places === undefined ? undefined : FULL_TURN / places
  const turn = step === undefined ? best : withinTurn(Math.round(best / step) * step)
  const own = sidesOf(shaft)
  const turned = sidesOf({ tir: insert.tir, angle: radians(insert.angle + turn) })
  const remaining = runOutOf({ up: own.up + turned.up, across: own.across + turned.across })
  return known(
    { turn: radians(turn), remaining },
    {
      equation:
        'remaining = |shaft + insert·e^(iφ)|; φ = angle of shaft + 180° − angle of insert, at the nearest place',
      inputs: [
        term('run-out of the shaft', shaft.tir, 'in'),
        term('angle of the shaft', shaft.angle, '°'),
        term('run-out of the insert', insert.tir, 'in'),
        term('angle of the insert', insert.angle, '°'),
        ...(places === undefined ? [] : [term('places to turn to', ratio(places), '1')]),
      ],
      result: [
        term('turn', radians(turn), '°'),
        term('remaining run-out', remaining.tir, 'in'),
        term('angle of what remains', remaining.angle, '°'),
      ],
      source: ['OWN'],
    },
  )
}

const withinTurn = (angle: number) => ((angle % FULL_TURN) + FULL_TURN) % FULL_TURN
