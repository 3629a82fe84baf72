/** What each question is called on the page, what stands beside its field, and how its options are said. */
import type { Question, QuestionId, Topic } from '../../../domain/call/questions'
import { writtenUnit } from '../unit-words'

export const TOPIC_WORDS: Readonly<Record<Topic, string>> = {
  hunt: 'Hunt',
  bow: 'Bow',
  now: 'Shooting now',
  wishes: 'Wishes',
  client: 'Client',
}

interface QuestionWords {
  readonly label: string
  readonly hint?: string
}

export const QUESTION_WORDS: Readonly<Record<QuestionId, QuestionWords>> = {
  quarry: { label: 'Quarry', hint: 'bison, moose, buffalo …' },
  place: { label: 'Place', hint: 'state or country, and whose land' },
  travelOn: { label: 'Travels on', hint: 'a day, such as 14 Jan' },
  shotDistanceYd: { label: 'Longest shot' },
  guideLeastGr: { label: 'Guide’s least weight', hint: 'finished arrow, as the guide or outfitter asks' },
  guideDemands: { label: 'Guide’s other demands', hint: 'kept with the client’s own data' },

  bowKind: { label: 'Kind of bow' },
  bowName: { label: 'Name of the bow', hint: 'to tell two of his bows apart' },
  peakDrawWeightLb: { label: 'Peak draw weight', hint: 'measured on a bow scale' },
  labelDrawWeightLb: { label: 'Draw weight on the label', hint: 'a label of 70 commonly peaks at 71 to 74' },
  drawLengthIn: { label: 'Draw length', hint: 'grip pivot to string at full draw, plus 1¾' },
  drawLengthHow: { label: 'Draw length is' },
  moduleMark: { label: 'Module mark', hint: 'the letter or number the cam is set to' },
  markAtRestIn: { label: 'Mark at the rest, full draw', hint: 'throat to the mark on a nocked arrow' },
  markAtRiserIn: { label: 'Mark at the riser front', hint: 'throat to the mark on the same arrow' },
  braceHeightIn: { label: 'Brace height', hint: 'string at rest to the grip pivot' },
  letOffPercent: { label: 'Let-off' },
  ratedSpeedFps: { label: 'Rated speed', hint: '350 gr from 70 lb at 30 in' },
  chronograph: { label: 'Chronograph readings', hint: 'two arrow weights far apart say most' },
  forceDraw: { label: 'Force-draw points', hint: 'string to pivot, force; if there are any' },
  restKind: { label: 'Kind of rest' },
  restAheadOfPivotIn: { label: 'Rest, ahead of the pivot', hint: 'behind it: a minus' },
  riserFrontAheadOfPivotIn: { label: 'Riser front, ahead of the pivot' },
  riserWindowIn: { label: 'Riser window', hint: 'height the blades must pass' },
  cableSide: { label: 'Cables on the' },
  arrowToCableIn: { label: 'Arrow to the cables', hint: 'sideways from its middle, where the vanes pass' },
  servingDiameterIn: { label: 'Serving diameter' },
  nockSnap: { label: 'Nock on the serving snaps' },
  centreShot: { label: 'Cut to centre' },
  looseWith: { label: 'Looses with' },
  hand: { label: 'Draws with the' },

  presentWeightGr: { label: 'Finished weight now' },
  presentLengthIn: { label: 'C2C now', hint: 'carbon to carbon, without nock and head' },
  presentSpineIn: { label: 'Static spine now', hint: '340 or 0.340' },
  presentFrontGr: { label: 'Weight in front now', hint: 'head, insert and all else in front' },
  presentTune: { label: 'It tunes' },
  wentWrong: { label: 'What went wrong', hint: 'kept with the client’s own data' },

  wishWeightGr: { label: 'Finished weight' },
  wishFocPercent: { label: 'FOC' },
  wishSpeedFps: { label: 'Speed, at least' },
  headKind: { label: 'Head' },
  headWeightGr: { label: 'Head weight' },
  headBlades: { label: 'Blades' },
  cuttingWidthIn: { label: 'Cutting width' },
  headThread: { label: 'Thread' },
  bevelHand: { label: 'Bevel' },
  sharpening: { label: 'Sharpened by' },
  fieldPoints: { label: 'Field points to match', hint: 'same weight, for practice' },
  fletching: { label: 'Vanes or feathers' },
  fletchSide: { label: 'Fletch side' },
  colour: { label: 'Colour' },
  indexing: { label: 'Indexed to' },
  quantity: { label: 'Arrows' },
  spares: { label: 'Spares' },
  testKit: { label: 'Test kit first' },
  rush: { label: 'Rush' },
  otherWishes: { label: 'Anything else', hint: 'kept with the client’s own data' },

  clientPhone: { label: 'Phone' },
  clientEmail: { label: 'Email' },
  clientAddress: { label: 'Send to' },
  clientConsent: { label: 'May we keep it', hint: 'for the next order; forgotten on request' },
}

/** The unit an answer is given in, as it is written. */
export const unitOfQuestion = ({ shape }: Pick<Question, 'shape'>): string =>
  shape.kind === 'number' ? writtenUnit(shape.unit) : ''

const YES = 'yes'
/** A choice as it is said; a yes or no as the word. */
export const optionWords = (value: string | boolean): string => (value === true ? YES : value === false ? 'no' : value)

/** How a topic stands: `complete`, `2 open`, `12 to ask`. */
export function topicStateWords(state: {
  readonly open: number
  readonly notAsked: number
  readonly answered: number
}): string {
  const parts = [
    ...(state.open > 0 ? [`${state.open} open`] : []),
    ...(state.notAsked > 0 ? [`${state.notAsked} to ask`] : []),
  ]
  return parts.length === 0 ? 'complete' : parts.join(', ')
}

/** What stands in a field and could not be read, where the answers are gone through. */
export const notTakenWords = (id: QuestionId, text: string): string =>
  `${QUESTION_WORDS[id].label}: “${text.trim().slice(0, 40)}” was not understood and is not kept.`
