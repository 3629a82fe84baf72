import { seconds, type Temperature, type Time } from '../quantity'
import { known, noAnswer, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { cureRate } from './cure-rate'
import type { CuringGlue } from './glue'
import { CURE_BOUNDS, glueProblems } from './glue-problems'

export interface CureTimes {
  readonly handle: Time
  readonly shoot: Time
  readonly full: Time
}

/**
 * How long a bond must still lie at a temperature until it can be handled, shot and is fully cured.
 *
 *   time = (stated time − already cured)·2^((stated temperature − temperature)/10 K)
 *
 * @param already the cure behind it, in time at the stated temperature (see cure-progress)
 * @returns the times, 0 for what is reached; `too-cold-to-cure`, `too-hot-to-cure`; what is wrong with the glue's figures
 *
 * Source: common practice, no source [CP]: ten degrees about halve the time. The pack's own table stands above it.
 */
export function cureTimes(glue: CuringGlue, temperature: Temperature, already: Time = seconds(0)): Outcome<CureTimes> {
  const refused = refusal([
    ...glueProblems(glue),
    ...outside('temperature', temperature, CURE_BOUNDS.temperature, 'K'),
    ...outside('cure so far', already, CURE_BOUNDS.already, 'h'),
  ])
  if (refused) return refused
  if (temperature < glue.least) return noAnswer({ code: 'too-cold-to-cure', at: temperature, least: glue.least })
  if (temperature > glue.most) return noAnswer({ code: 'too-hot-to-cure', at: temperature, most: glue.most })
  const rate = cureRate(glue.at, temperature)
  const left = (stated: Time) => seconds(Math.max(0, stated - already) / rate)
  const value = { handle: left(glue.handle), shoot: left(glue.shoot), full: left(glue.full) }
  return known(value, {
    equation: 'time = (stated − already)·2^((stated temperature − temperature)/10 K)',
    inputs: [
      term('stated time to handle', glue.handle, 'h', 'catalogue'),
      term('stated time to shoot', glue.shoot, 'h', 'catalogue'),
      term('stated time to full cure', glue.full, 'h', 'catalogue'),
      term('stated temperature', glue.at, 'K', 'catalogue'),
      term('temperature', temperature, 'K'),
      term('cure so far', already, 'h'),
    ],
    result: [
      term('time to handle', value.handle, 'h'),
      term('time to shoot', value.shoot, 'h'),
      term('time to full cure', value.full, 'h'),
    ],
    source: ['CP'],
  })
}
