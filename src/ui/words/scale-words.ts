/** Words of the scale at the bench. */
import type { ScaleAnswer, ScaleOn, ScaleState } from '../../domain/bench/scale-state'
import { showClock } from './dates'
import { showNumber, showPlain } from './format'

const gr = (n: number) => showNumber(n, 1)

export function scaleRefusedWords(label: string, why: Extract<ScaleAnswer, { kind: 'no' }>['why']): string {
  switch (why) {
    case 'silent':
      return `${label}: the scale sends nothing. Is it on, and set to send? It can be typed as well.`
    case 'moving':
      return `${label}: the scale has not settled. Wait until it stands still.`
    case 'overload':
      return `${label}: more than this scale can weigh.`
    case 'no unit':
      return `${label}: the scale sends no unit. Set it to send grains, or say under Scale that it stands in grains.`
    case 'other unit':
      return `${label}: the scale is not in grains. Switch it over; nothing was taken.`
    case 'taken before':
      return `${label}: this weight was taken already and nothing has moved since. Lay the next one on.`
  }
}

/** What the broad action takes, in its own words. */
export function takeWords(typed: string, scale: ScaleOn | undefined, stays: boolean): string {
  const keep = stays ? ', keep trimming' : ''
  if (typed !== '') return `Take ${typed}${keep}`
  if (scale === undefined) return 'Take the reading'
  const { readout } = scale
  return readout.kind === 'settled' && scale.taken !== scale.since
    ? `Take ${gr(readout.value)}${keep}`
    : 'Take from the scale'
}

/** The scale in the bar of the bench. */
export function scaleShortWords(scale: ScaleState): string {
  switch (scale.kind) {
    case 'off':
      return 'Scale'
    case 'refused':
      return 'Scale: not connected'
    case 'on':
      return scale.auto ? 'Scale: on, takes by itself' : 'Scale: on'
  }
}

export const UNCHECKED = 'not checked today'

export const checkedWords = (at: string, driftGr: number, off: boolean): string =>
  `checked ${showClock(at)}${driftGr === 0 ? '' : `, ${off ? 'off' : 'within its step'} by ${showPlain(driftGr)} gr`}`

export function scaleWhyWords(scale: Extract<ScaleState, { kind: 'refused' }>): string {
  switch (scale.why) {
    case 'no serial ports here':
      return 'This browser gives a page no serial port: it takes a browser that has Web Serial, and the app opened over https. A scale that types like a keyboard works everywhere.'
    case 'none chosen':
      return 'No port was chosen.'
    case 'could not be opened':
      return 'The port could not be opened. Another program may hold it.'
    case 'lost':
      return 'The scale is gone: unplugged or switched off. Connect it again; meanwhile readings can be typed.'
  }
}

export const readoutWords = (scale: ScaleOn): string => {
  const { readout } = scale
  switch (readout.kind) {
    case 'silent':
      return 'nothing sent'
    case 'moving':
      return 'moving'
    case 'overload':
      return 'overload'
    case 'settled':
      return 'settled'
  }
}
