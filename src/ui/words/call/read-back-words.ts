/** Every answer as a sentence to read aloud to the client. */
import type { AnswerValue } from '../../../domain/call/answer'
import type { QuestionId } from '../../../domain/call/questions'
import { showLongDay } from '../dates'
import { answerWords } from './answer-words'

type Sentence = (said: string, value: AnswerValue) => string

const either =
  (yes: string, no: string): Sentence =>
  (_, value) =>
    value === true ? yes : no

const SENTENCES: Readonly<Record<QuestionId, Sentence>> = {
  quarry: (said) => `You hunt ${said}.`,
  place: (said) => `The hunt is in ${said}.`,
  travelOn: (_, value) => `You travel on ${showLongDay(typeof value === 'string' ? value : '')}.`,
  shotDistanceYd: (said) => `Your longest shot is ${said}.`,
  guideLeastGr: (said) => `Your guide asks for ${said} at least.`,
  guideDemands: () => 'Your guide’s other demands are noted.',

  bowKind: (said) => `You shoot a ${said}.`,
  bowName: (said) => `We call this bow “${said}”.`,
  peakDrawWeightLb: (said) => `It peaks at ${said}, measured.`,
  labelDrawWeightLb: (said) => `Its label says ${said}.`,
  drawLengthIn: (said) => `Your draw length is ${said}, from the grip pivot to the string plus 1¾.`,
  drawLengthHow: (said) =>
    said === 'guess'
      ? 'The draw length is a guess.'
      : said === 'measured'
        ? 'It was measured.'
        : 'It is read off the module mark.',
  moduleMark: (said) => `The module stands at ${said}.`,
  markAtRestIn: (said) => `At full draw the rest touches your arrow ${said} from the throat of the nock.`,
  markAtRiserIn: (said) => `The front of the riser stands ${said} from the throat.`,
  braceHeightIn: (said) => `Brace height is ${said}.`,
  letOffPercent: (said) => `Let-off is ${said}.`,
  ratedSpeedFps: (said) => `The bow is rated at ${said}.`,
  chronograph: (said) => `Your chronograph read ${said}.`,
  forceDraw: (said) => `Your force-draw points are ${said}.`,
  restKind: (said) => (said === 'shelf' ? 'You shoot off the shelf.' : `Your rest is a ${said} rest.`),
  restAheadOfPivotIn: (said) => `The rest stands ${said} ahead of the grip pivot.`,
  riserFrontAheadOfPivotIn: (said) => `The front of the riser stands ${said} ahead of the pivot.`,
  riserWindowIn: (said) => `The riser’s window is ${said} high.`,
  cableSide: (said) => (said === 'none' ? 'There are no cables beside the arrow.' : `The cables run on the ${said}.`),
  arrowToCableIn: (said) => `The cables pass ${said} beside the middle of the arrow.`,
  servingDiameterIn: (said) => `The serving is ${said} across.`,
  nockSnap: (said) => `Your nock snaps on ${said === 'right' ? 'just right' : said}.`,
  centreShot: (said) => (said === 'centre' ? 'The bow is cut to centre.' : 'The bow is cut short of centre.'),
  looseWith: (said) => (said === 'fingers' ? 'You loose with the fingers.' : `You loose with a ${said}.`),
  hand: (said) => `You draw with the ${said} hand.`,

  presentWeightGr: (said) => `Your arrow now weighs ${said}.`,
  presentLengthIn: (said) => `It is ${said} carbon to carbon.`,
  presentSpineIn: (said) => `Its static spine is ${said}.`,
  presentFrontGr: (said) => `It has ${said} in front.`,
  presentTune: (said) =>
    said === 'not known' ? 'How it tunes is not known.' : said === 'well' ? 'It tunes well.' : `It ${said}.`,
  wentWrong: () => 'What went wrong with it is noted.',

  wishWeightGr: (said) => `You wish for ${said} finished.`,
  wishFocPercent: (said) => `You wish for ${said} front of centre.`,
  wishSpeedFps: (said) => `You wish for ${said} at least.`,
  headKind: (said) => (said === 'both' ? 'You want broadheads and field points.' : `You want ${said}s.`),
  headWeightGr: (said) => `The head weighs ${said}.`,
  headBlades: (said) => `It has ${said} blades.`,
  cuttingWidthIn: (said) => `It cuts ${said} wide.`,
  headThread: (said) => (said === 'glue-on' ? 'It is glued on.' : `Its thread is ${said}.`),
  bevelHand: (said) => (said === 'none' ? 'The blades have no bevel to one side.' : `Its bevel is ${said}.`),
  sharpening: (said) => (said === 'shop' ? 'We sharpen them.' : 'You sharpen them yourself.'),
  fieldPoints: either('Field points of the same weight come with them.', 'No field points.'),
  fletching: (said) => `They are fletched with ${said}.`,
  fletchSide: (said) => (said === 'straight' ? 'The fletch is straight.' : `The fletch turns ${said}.`),
  colour: (said) => `Colour: ${said}.`,
  indexing: (said) => (said === 'none' ? 'They are not indexed.' : `They are indexed to the ${said}.`),
  quantity: (said) => (said === '1' ? 'One arrow.' : `${said} arrows.`),
  spares: (said) => (said === '0' ? 'No spares.' : said === '1' ? 'One spare.' : `${said} spares.`),
  testKit: either('A test kit goes out first.', 'No test kit.'),
  rush: either('The order is let past the others.', 'No rush.'),
  otherWishes: () => 'Your other wishes are noted.',

  clientPhone: () => 'Your phone number is noted.',
  clientEmail: () => 'Your email address is noted.',
  clientAddress: () => 'Where to send them is noted.',
  clientConsent: () => 'Whether we may keep it is noted.',
}

export const readBackSentence = (id: QuestionId, value: AnswerValue): string =>
  SENTENCES[id](answerWords(id, value), value)

export const NOTHING_CUT = 'Nothing is ordered or cut until you agree.'
