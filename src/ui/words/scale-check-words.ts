/** Words of a scale's check against its check weight. */
import type { Bench } from '../../domain/bench/bench'
import { driftGr } from '../../domain/bench/scale-check'
import { showMoment } from './dates'
import { showPlain } from './format'

/** After a check that its calibration and step do not explain. */
export const OFF_WORDS =
  ' That is more than its step and its calibration allow: zero it, calibrate it, check it again before anything is weighed.'

/** A check of the day, as the record of an arrow says it. */
export const checkRecordWords = (check: Bench['scaleChecks'][number]): string =>
  `${check.scale}, ${showMoment(check.at)}: ${showPlain(check.readGr)} for ${showPlain(check.checkWeightGr)} gr, off by ${showPlain(driftGr(check))}.`
