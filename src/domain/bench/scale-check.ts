/** The scale against a check weight, once a day and whenever in doubt; how far it was off stands in the record. */
import type { Rules } from '../shop/rules'
import type { Bench } from './bench'

type ScaleCheck = Bench['scaleChecks'][number]

/** The newest check of this scale on the day of a moment. */
export const checkToday = (bench: Bench, scale: string, now: string): ScaleCheck | undefined =>
  bench.scaleChecks.filter((each) => each.scale === scale && each.at.slice(0, 10) === now.slice(0, 10)).at(-1)

export const driftGr = ({ readGr, checkWeightGr }: Pick<ScaleCheck, 'readGr' | 'checkWeightGr'>) =>
  Math.round((readGr - checkWeightGr) * 100) / 100

/** Whether it is further off than its calibration and its step allow. */
export const isOff = (check: Pick<ScaleCheck, 'readGr' | 'checkWeightGr'>, scale: Rules['scales'][number]): boolean =>
  Math.abs(driftGr(check)) > scale.calibrationGr + scale.resolutionGr + 1e-9
