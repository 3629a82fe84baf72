import { difference, type Temperature } from '../quantity'

const HALVING = 10 // K: a glue cures about twice as fast, common practice, no source [CP]

/** How many times as fast a glue cures at one temperature as at the one its times are stated for. */
export const cureRate = (statedAt: Temperature, at: Temperature): number => 2 ** (difference(at, statedAt) / HALVING)
