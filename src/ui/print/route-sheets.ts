/** The route card cut into sheets of paper: a step is never torn from its readings where it fits on a sheet of its own. */
import type { Sheet } from '../../domain/sheet/sheet'
import { pointsOf } from '../../domain/bench/points-of'
import type { DataPoint } from '../../domain/bench/data-points'
import type { Step } from '../../domain/bench/route'
import { stepWords } from '../words/bench-words'

/** Fewest mm of height that a hand writes in. */
export const TO_WRITE_MM = 8
const ROOM_MM = 216 // for steps on the shorter paper, Letter, under the heads of the table
const TITLE_MM = 6.5
const LINE_MM = 4.6
const LINE_LETTERS = 95 // over the whole width, at least
const PASSES = 3 // at the grinder, that have a line each

export interface RouteRow {
  readonly key: string
  readonly point: DataPoint
  readonly required: boolean
  readonly again: boolean
}
export interface RouteStep {
  readonly step: Step
  /** Its place on the route, from 1. */
  readonly at: number
  /** The caution, and what the shop wants done its own way. */
  readonly said: readonly (readonly [string, string])[]
  readonly rows: readonly RouteRow[]
}

export const routeSteps = (sheet: Sheet): readonly RouteStep[] =>
  sheet.route.map((step, at) => {
    const { caution } = stepWords(step.key)
    return {
      step,
      at: at + 1,
      said: [
        ...(caution === undefined ? [] : [caution]),
        ...(step.instruction === undefined ? [] : [['', step.instruction] as const]),
      ],
      rows: pointsOf(step, sheet).flatMap((point) =>
        Array.from({ length: point === 'trimWeight' ? PASSES : 1 }, (_, pass) => ({
          key: `${point}.${pass}`,
          point,
          required: !step.optional.includes(point),
          again: pass > 0,
        })),
      ),
    }
  })

const heightMm = ({ step, said, rows }: RouteStep) =>
  (step.confirm === 'none' ? TITLE_MM : TO_WRITE_MM) +
  said.reduce((mm, words) => mm + LINE_MM * Math.ceil(words.join(': ').length / LINE_LETTERS), 0) +
  TO_WRITE_MM * rows.length

/** @returns one entry a sheet of paper */
export function routeSheets(steps: readonly RouteStep[]): readonly (readonly RouteStep[])[] {
  const sheets: RouteStep[][] = []
  let left = 0
  for (const each of steps) {
    const high = heightMm(each)
    if (high > left || sheets.length === 0) {
      sheets.push([])
      left = ROOM_MM
    }
    sheets.at(-1)!.push(each)
    left -= high
  }
  return sheets
}
