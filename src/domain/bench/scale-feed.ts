/**
 * What a scale's lines come to: nothing on it, moving, or a weight that has settled and may be taken once. Settled is what
 * the scale calls so and says twice alike, or says once and falls silent (a scale that sends on a key); one that says
 * nothing of it must stand still for longer.
 */
import type { ScaleLine, ScaleUnit } from './scale-line'

export type Readout =
  | { readonly kind: 'silent' }
  | { readonly kind: 'moving'; readonly raw: string; readonly value: number; readonly unit?: ScaleUnit }
  | { readonly kind: 'settled'; readonly raw: string; readonly value: number; readonly unit?: ScaleUnit }
  | { readonly kind: 'overload'; readonly raw: string }

export interface ScaleFeed {
  readonly readout: Readout
  /** How many lines said the same, and since when. */
  readonly alike: number
  readonly since: number
  readonly heard: number
  readonly digits: string
  readonly told: boolean | undefined
  readonly garbled: number
  /** The last line that said something and was not understood. */
  readonly notUnderstood: string
}

export const NO_FEED: ScaleFeed = {
  readout: { kind: 'silent' },
  alike: 0,
  since: 0,
  heard: 0,
  digits: '',
  told: undefined,
  garbled: 0,
  notUnderstood: '',
}

const STILL_MS = 1000 // without a word of its own, this long and
const STILL_LINES = 4 // this often the same
const QUIET_MS = 600 // a scale that sends on a key says it once
const LOST_MS = 3000 // a scale that sends all the time and has fallen silent shows nothing any more
const KEPT_MS = 20_000 // what was sent on a key is on the pan for so long at most

/** @param at milliseconds of any clock that only goes forward */
export function feedAfter(feed: ScaleFeed, line: ScaleLine, at: number): ScaleFeed {
  if (line.kind === 'noise') {
    if (!/\d/.test(line.raw)) return feed // a heading of a print-out, a row of dashes
    return {
      ...feed,
      garbled: feed.garbled + 1,
      notUnderstood: line.raw,
      alike: 0,
      readout: unsettled(feed.readout),
    }
  }
  if (line.kind === 'overload') return { ...NO_FEED, garbled: feed.garbled, heard: at, readout: line }
  const key = `${line.digits} ${line.unit ?? ''}`
  const isAlike = feed.digits === key && feed.told === line.stable && feed.alike > 0 && at - feed.heard <= LOST_MS
  const alike = isAlike ? feed.alike + 1 : 1
  const since = isAlike ? feed.since : at
  const isSettled =
    line.stable === true ? alike >= 2 : line.stable === undefined && alike >= STILL_LINES && at - since >= STILL_MS
  const { raw, value, unit } = line
  const told = { raw, value, ...(unit === undefined ? {} : { unit }) }
  return {
    readout: { kind: isSettled ? 'settled' : 'moving', ...told },
    alike,
    since,
    heard: at,
    digits: key,
    told: line.stable,
    garbled: feed.garbled,
    notUnderstood: feed.notUnderstood,
  }
}

/** Time has passed without a line. */
export function feedAt(feed: ScaleFeed, at: number): ScaleFeed {
  const { readout } = feed
  if (readout.kind === 'silent') return feed
  const quiet = at - feed.heard
  const isOnKey = feed.told === true && feed.alike === 1
  if (quiet >= (isOnKey ? KEPT_MS : LOST_MS)) return { ...NO_FEED, garbled: feed.garbled }
  if (readout.kind === 'moving' && isOnKey && quiet >= QUIET_MS) {
    return { ...feed, readout: { ...readout, kind: 'settled' } }
  }
  return feed
}

function unsettled(readout: Readout): Readout {
  return readout.kind === 'settled' ? { ...readout, kind: 'moving' } : readout
}
