import type { Finding } from '../finding'
import { bounds } from '../outcome'
import { celsius, quantity } from '../quantity'
import { outside } from '../refusal'
import type { CuringGlue } from './glue'

export const CURE_BOUNDS = Object.freeze({
  time: bounds(quantity(1, 's'), quantity(1000, 'day')),
  temperature: bounds(celsius(-60), celsius(200)),
  already: bounds(quantity(0, 's'), quantity(100_000, 'day')),
})

/** What keeps a glue's figures from being used. */
export const glueProblems = ({ handle, shoot, full, at, least, most }: CuringGlue): readonly Finding[] => [
  ...outside('time to handle', handle, CURE_BOUNDS.time, 'h'),
  ...outside('time to shoot', shoot, CURE_BOUNDS.time, 'h'),
  ...outside('time to full cure', full, CURE_BOUNDS.time, 'h'),
  ...outside('temperature of the stated times', at, CURE_BOUNDS.temperature, 'K'),
  ...outside('lowest curing temperature', least, CURE_BOUNDS.temperature, 'K'),
  ...outside('highest curing temperature', most, CURE_BOUNDS.temperature, 'K'),
  ...(handle > shoot || shoot > full ? [{ code: 'cure-times-reversed', handle, shoot, full } as const] : []),
]
