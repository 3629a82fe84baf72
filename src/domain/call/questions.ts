/**
 * What a careful builder asks, as data: each question with its topic, what an answer looks like, and when it is pointless.
 * A question's id is the name its answer has in the records, with the unit in it.
 */
import type { Unit } from '../../core/quantity'
import { BEVELS, THREADS } from '../stock/part'

export const TOPICS = ['hunt', 'bow', 'now', 'wishes', 'client'] as const
export type Topic = (typeof TOPICS)[number]

type Shape =
  | {
      readonly kind: 'number'
      readonly unit: Unit
      readonly min: number
      readonly max: number
      readonly decimals: number
    }
  | { readonly kind: 'count'; readonly min: number; readonly max: number }
  | { readonly kind: 'choice'; readonly options: readonly string[] }
  | { readonly kind: 'yes or no' }
  | { readonly kind: 'day' }
  /** A short plain text that says nothing of a person. */
  | { readonly kind: 'line' }
  /** Free text: kept apart with the personal data. */
  | { readonly kind: 'note' }
  /** The answer stands in the client's own record; the call knows only that it is owed. */
  | { readonly kind: 'apart' }
  | { readonly kind: 'speeds' } // pairs of arrow weight, gr, and speed, ft/s
  | { readonly kind: 'force curve' } // pairs of draw, in, and force, lb

export interface Question {
  readonly id: string
  readonly topic: Topic
  readonly shape: Shape
  /** Not asked for these kinds of bow. */
  readonly notFor?: readonly ('compound' | 'recurve' | 'longbow')[]
  /** The drawing on the measuring sheet that shows how to take it. */
  readonly measure?: 'draw weight' | 'draw length' | 'marks' | 'brace height' | 'module mark' | 'nock' | 'chronograph'
}

const number = (unit: Unit, min: number, max: number, decimals: number): Shape => ({
  kind: 'number',
  unit,
  min,
  max,
  decimals,
})
const choice = (...options: readonly string[]): Shape => ({ kind: 'choice', options })

export const QUESTIONS = [
  { id: 'quarry', topic: 'hunt', shape: { kind: 'line' } },
  { id: 'place', topic: 'hunt', shape: { kind: 'line' } },
  { id: 'travelOn', topic: 'hunt', shape: { kind: 'day' } },
  { id: 'shotDistanceYd', topic: 'hunt', shape: number('yd', 1, 100, 0) },
  { id: 'guideLeastGr', topic: 'hunt', shape: number('gr', 100, 1500, 0) },
  { id: 'guideDemands', topic: 'hunt', shape: { kind: 'note' } },

  { id: 'bowKind', topic: 'bow', shape: choice('compound', 'recurve', 'longbow') },
  { id: 'bowName', topic: 'bow', shape: { kind: 'line' } },
  { id: 'peakDrawWeightLb', topic: 'bow', shape: number('lbf', 10, 150, 1), measure: 'draw weight' },
  { id: 'labelDrawWeightLb', topic: 'bow', shape: number('lbf', 10, 150, 0) },
  { id: 'drawLengthIn', topic: 'bow', shape: number('in', 18, 36, 2), measure: 'draw length' },
  { id: 'drawLengthHow', topic: 'bow', shape: choice('measured', 'module mark', 'guess') },
  { id: 'moduleMark', topic: 'bow', shape: { kind: 'line' }, notFor: ['recurve', 'longbow'], measure: 'module mark' },
  { id: 'markAtRestIn', topic: 'bow', shape: number('in', 15, 36, 2), measure: 'marks' },
  { id: 'markAtRiserIn', topic: 'bow', shape: number('in', 15, 36, 2), measure: 'marks' },
  { id: 'braceHeightIn', topic: 'bow', shape: number('in', 3, 12, 2), measure: 'brace height' },
  { id: 'letOffPercent', topic: 'bow', shape: number('%', 10, 99, 0), notFor: ['recurve', 'longbow'] },
  { id: 'ratedSpeedFps', topic: 'bow', shape: number('ft/s', 100, 450, 0), notFor: ['longbow'] },
  { id: 'chronograph', topic: 'bow', shape: { kind: 'speeds' }, measure: 'chronograph' },
  { id: 'forceDraw', topic: 'bow', shape: { kind: 'force curve' } },
  { id: 'restKind', topic: 'bow', shape: choice('drop-away', 'containment', 'shelf', 'other') },
  { id: 'restAheadOfPivotIn', topic: 'bow', shape: number('in', -4, 6, 2) },
  { id: 'riserFrontAheadOfPivotIn', topic: 'bow', shape: number('in', -2, 8, 2) },
  { id: 'riserWindowIn', topic: 'bow', shape: number('in', 1, 12, 2), notFor: ['longbow'] },
  { id: 'cableSide', topic: 'bow', shape: choice('right', 'left', 'none'), notFor: ['recurve', 'longbow'] },
  { id: 'arrowToCableIn', topic: 'bow', shape: number('in', 0.1, 4, 2), notFor: ['recurve', 'longbow'] },
  { id: 'servingDiameterIn', topic: 'bow', shape: number('in', 0.05, 0.2, 3) },
  { id: 'nockSnap', topic: 'bow', shape: choice('loose', 'right', 'tight'), measure: 'nock' },
  { id: 'centreShot', topic: 'bow', shape: choice('centre', 'short of centre') },
  { id: 'looseWith', topic: 'bow', shape: choice('release aid', 'fingers') },
  { id: 'hand', topic: 'bow', shape: choice('right', 'left') },

  { id: 'presentWeightGr', topic: 'now', shape: number('gr', 150, 1500, 1) },
  { id: 'presentLengthIn', topic: 'now', shape: number('in', 18, 36, 2) },
  { id: 'presentSpineIn', topic: 'now', shape: number('in', 0.1, 1.2, 3) },
  { id: 'presentFrontGr', topic: 'now', shape: number('gr', 50, 900, 0) },
  { id: 'presentTune', topic: 'now', shape: choice('well', 'fishtails', 'porpoises', 'not known') },
  { id: 'wentWrong', topic: 'now', shape: { kind: 'note' } },

  { id: 'wishWeightGr', topic: 'wishes', shape: number('gr', 300, 1500, 0) },
  { id: 'wishFocPercent', topic: 'wishes', shape: number('%', 5, 45, 1) },
  { id: 'wishSpeedFps', topic: 'wishes', shape: number('ft/s', 100, 400, 0) },
  { id: 'headKind', topic: 'wishes', shape: choice('broadhead', 'field point', 'both') },
  { id: 'headWeightGr', topic: 'wishes', shape: number('gr', 50, 600, 0) },
  { id: 'headBlades', topic: 'wishes', shape: { kind: 'count', min: 2, max: 4 } },
  { id: 'cuttingWidthIn', topic: 'wishes', shape: number('in', 0.5, 3, 3) },
  { id: 'headThread', topic: 'wishes', shape: choice(...THREADS) },
  { id: 'bevelHand', topic: 'wishes', shape: choice(...BEVELS) },
  { id: 'sharpening', topic: 'wishes', shape: choice('shop', 'client') },
  { id: 'fieldPoints', topic: 'wishes', shape: { kind: 'yes or no' } },
  { id: 'fletching', topic: 'wishes', shape: choice('vanes', 'feathers') },
  { id: 'fletchSide', topic: 'wishes', shape: choice('right', 'left', 'straight') },
  { id: 'colour', topic: 'wishes', shape: { kind: 'line' } },
  { id: 'indexing', topic: 'wishes', shape: choice('none', 'spine mark', 'cock vane') },
  { id: 'quantity', topic: 'wishes', shape: { kind: 'count', min: 1, max: 12 } },
  { id: 'spares', topic: 'wishes', shape: { kind: 'count', min: 0, max: 6 } },
  { id: 'testKit', topic: 'wishes', shape: { kind: 'yes or no' } },
  { id: 'rush', topic: 'wishes', shape: { kind: 'yes or no' } },
  { id: 'otherWishes', topic: 'wishes', shape: { kind: 'note' } },

  { id: 'clientPhone', topic: 'client', shape: { kind: 'apart' } },
  { id: 'clientEmail', topic: 'client', shape: { kind: 'apart' } },
  { id: 'clientAddress', topic: 'client', shape: { kind: 'apart' } },
  { id: 'clientConsent', topic: 'client', shape: { kind: 'apart' } },
] as const satisfies readonly Question[]

export type QuestionId = (typeof QUESTIONS)[number]['id']
export const QUESTION_IDS = QUESTIONS.map((q) => q.id) as unknown as readonly [QuestionId, ...QuestionId[]]
export const questionOf = (id: QuestionId): Question => QUESTIONS.find((q) => q.id === id)!
