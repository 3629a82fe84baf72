/** What a reading must come to on this sheet. Outside it the bench opens a deviation; work goes on, signing off waits. */
import type { Sheet } from '../sheet/sheet'
import type { Part } from '../stock/part'
import type { DataPoint } from './data-points'

/** Ends in the point's own unit; a missing end is open. */
export interface Limit {
  readonly min?: number
  readonly max?: number
  /** Over this the shop goes no further with it; the deviation says so. */
  readonly stop?: number
}

const partsOf = (sheet: Sheet): readonly Part[] =>
  sheet.plan.lines.flatMap((line) => sheet.parts.filter((each) => each.id === line.part).map((each) => each.part))

const CUT_SDS = 3 // a cut further off than this many of the shop's usual scatter is no longer the planned length

export function limitOf(point: DataPoint, sheet: Sheet): Limit | null {
  const { rules, plan } = sheet
  const parts = partsOf(sheet)
  switch (point) {
    case 'runOut1':
    case 'runOut2':
    case 'runOut3':
    case 'runOut4':
    case 'runOut5':
      return { max: rules.runOut.shaftIn }
    case 'cutRunOut':
      return { max: rules.runOut.cutIn, stop: rules.runOut.cutStopIn }
    case 'squareness':
      return { max: rules.squarenessIn }
    case 'finishedRunOut':
      return {
        max: parts.some((part) => part.kind === 'broadhead') ? rules.runOut.broadheadIn : rules.runOut.finishedIn,
      }
    case 'c2c': {
      if (plan.c2cIn === undefined) return null
      const slack = CUT_SDS * rules.cutSdIn
      return { min: plan.c2cIn - slack, max: plan.c2cIn + slack }
    }
    case 'bondLength': {
      const posts = parts.filter((part) => part.kind === 'insert' || part.kind === 'half-out')
      return posts.length === 0 ? null : { min: Math.max(...posts.map((part) => part.leastBondMm)) }
    }
    case 'roomTemperature': {
      const glues = parts.filter((part) => part.kind === 'glue')
      if (glues.length === 0) return null
      return { min: Math.max(...glues.map((glue) => glue.leastC)), max: Math.min(...glues.map((glue) => glue.mostC)) }
    }
    default:
      return null
  }
}

/** Room for what rounding in binary does to a number that was typed on the limit itself. */
const HAIR = 1e-9
export const isWithin = (value: number, limit: Limit): boolean =>
  (limit.min === undefined || value >= limit.min - HAIR) && (limit.max === undefined || value <= limit.max + HAIR)
