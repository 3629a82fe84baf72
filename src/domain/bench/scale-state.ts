/** The scale at the bench as a page sees it, and whether what it shows may be taken. */
import type { Readout, ScaleFeed } from './scale-feed'
import type { ScaleRefusal, SerialSettings } from './scale-source'

export interface ScaleOn {
  readonly kind: 'on'
  readonly source: 'serial' | 'demo'
  /** By the shop's own name. */
  readonly name: string
  readonly settings: SerialSettings
  readonly readout: Readout
  /** When this weight came to rest on it; what was taken once is not taken again. */
  readonly since: number
  readonly taken: number | null
  /** Whether it was empty since the last weight was taken. */
  readonly cleared: boolean
  /** Takes by itself what has settled on it. */
  readonly auto: boolean
  /** While it shows nothing: a line it sent that was not understood; else empty. */
  readonly notUnderstood: string
}
export type ScaleState =
  | { readonly kind: 'off' }
  | { readonly kind: 'refused'; readonly why: ScaleRefusal | 'lost' }
  | ScaleOn

export type ScaleAnswer =
  | { readonly kind: 'weight'; readonly text: string; readonly raw: string }
  | { readonly kind: 'no'; readonly why: 'silent' | 'moving' | 'overload' | 'no unit' | 'other unit' | 'taken before' }

const EMPTY_GR = 2 // below this the pan counts as cleared

/** What pressing *Take* would take off the scale, or why nothing. */
export function scaleAnswer({ readout, settings, since, taken }: ScaleOn): ScaleAnswer {
  if (readout.kind !== 'settled') return { kind: 'no', why: readout.kind }
  if (readout.unit === undefined && !settings.sendsGrains) return { kind: 'no', why: 'no unit' }
  if (readout.unit !== undefined && readout.unit !== 'gr') return { kind: 'no', why: 'other unit' }
  if (taken === since) return { kind: 'no', why: 'taken before' }
  return { kind: 'weight', text: `${readout.value}`, raw: readout.raw }
}

/** Whether it is to be taken without being asked for: a weight in place of an empty pan. */
export const takesItself = (scale: ScaleOn): boolean => {
  const answer = scaleAnswer(scale)
  return scale.auto && scale.cleared && answer.kind === 'weight' && Number(answer.text) >= EMPTY_GR
}

/** The same object where nothing that shows has changed. */
export function scaleAfter(scale: ScaleOn, feed: ScaleFeed): ScaleOn {
  const { readout, since } = feed
  const isEmpty = 'value' in readout && Math.abs(readout.value) < EMPTY_GR
  const cleared = scale.cleared || isEmpty
  const notUnderstood = readout.kind === 'silent' ? feed.notUnderstood : ''
  const isSame =
    sameReadout(scale.readout, readout) &&
    scale.since === since &&
    scale.cleared === cleared &&
    scale.notUnderstood === notUnderstood
  return isSame ? scale : { ...scale, readout, since, cleared, notUnderstood }
}

const sameReadout = (a: Readout, b: Readout) =>
  a.kind === b.kind && ('raw' in a ? a.raw : '') === ('raw' in b ? b.raw : '')
