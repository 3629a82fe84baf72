/**
 * The bow as the call's figures take it: what was told, and a typical value in place of what was not. Each typical value
 * is common practice, no source [CP], and is marked as assumed wherever it enters a figure.
 */
import type { KnownBow } from '../../core/bow/known-bow'
import type { OriginNote } from '../../core/outcome'
import { type Force, type Length, feetPerSecond, grains, inches, poundsForce } from '../../core/quantity'
import type { Answers } from './answers'
import type { Bow } from './bow'
import type { Origins } from './follows'
import { toldNumber, toldPairs, toldText } from './told'

interface Typical {
  readonly drawLengthIn: number
  readonly braceHeightIn: number
  /** As the standard rates a bow: 350 gr from 70 lb at 30 in. */
  readonly ratedSpeedFps: number
}
const TYPICAL: Readonly<Record<Bow['kind'], Typical>> = {
  compound: { drawLengthIn: 29, braceHeightIn: 6.5, ratedSpeedFps: 325 },
  recurve: { drawLengthIn: 28, braceHeightIn: 8, ratedSpeedFps: 230 },
  longbow: { drawLengthIn: 28, braceHeightIn: 7, ratedSpeedFps: 205 },
}

export interface CallBow {
  readonly kind: Bow['kind']
  /** Absent: neither measured nor on the label. */
  readonly peak?: Force
  readonly drawLength: Length
  readonly known: KnownBow
  readonly origins: Origins
}

const ASSUMED: OriginNote = { origin: 'assumed', ref: 'CP' }
const TOLD: OriginNote = { origin: 'answered' }

export function callBow(answers: Answers): CallBow {
  const kind = (toldText(answers, 'bowKind') as Bow['kind'] | undefined) ?? 'compound'
  const typical = TYPICAL[kind]
  const measured = toldNumber(answers, 'peakDrawWeightLb')
  const label = toldNumber(answers, 'labelDrawWeightLb')
  const peakLb = measured ?? label
  const draw = toldNumber(answers, 'drawLengthIn')
  const brace = toldNumber(answers, 'braceHeightIn')
  const rated = toldNumber(answers, 'ratedSpeedFps')
  const readings = toldPairs(answers, 'chronograph')
  const curve = toldPairs(answers, 'forceDraw')
  const drawLength = inches(draw ?? typical.drawLengthIn)
  const known: KnownBow = {
    kind,
    chronograph: readings.map(([gr, fps]) => ({ mass: grains(gr), speed: feetPerSecond(fps) })),
    forceDraw: curve.map(([at, lb]) => ({ draw: inches(at), force: poundsForce(lb) })),
    ratedSpeed: feetPerSecond(rated ?? typical.ratedSpeedFps),
    drawLength,
    braceHeight: inches(brace ?? typical.braceHeightIn),
    ...(peakLb === undefined ? {} : { peakDrawWeight: poundsForce(peakLb) }),
  }
  const read = [...readings, ...curve].flatMap((_, i) =>
    ['arrow weight', 'arrow speed', 'draw', 'force'].map((name) => [`${name} ${i + 1}`, TOLD] as const),
  )
  return {
    kind,
    ...(peakLb === undefined ? {} : { peak: poundsForce(peakLb) }),
    drawLength,
    known,
    origins: {
      ...Object.fromEntries(read),
      'peak draw weight': measured === undefined ? { origin: 'assumed', ref: 'label' } : TOLD,
      'draw length': draw === undefined ? ASSUMED : TOLD,
      'brace height': brace === undefined ? ASSUMED : TOLD,
      'rated speed': rated === undefined ? ASSUMED : TOLD,
      'peak draw weight of the rating': { origin: 'constant', ref: 'F1544' },
      'draw length of the rating': { origin: 'constant', ref: 'F1544' },
      'arrow weight of the rating': { origin: 'constant', ref: 'F1544' },
      'error of one reading': ASSUMED,
    },
  }
}
