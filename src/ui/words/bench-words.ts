/** Words of the bench: what to do at each step, the caution that belongs to it, what an answer says. */
import type { Slip } from '../../domain/bench/slips'
import type { DataPoint } from '../../domain/bench/data-points'
import { DATA_POINTS } from '../../domain/bench/data-points'
import type { TakeAnswer } from '../../domain/bench/take-reading'
import type { ArrowForecast } from '../../domain/bench/set-forecast'
import { inGrains } from '../../core/quantity'
import { entryWords } from './entry-words'
import { showNumber } from './format'
import { unitSuffix } from './unit-words'

export interface StepWords {
  readonly title: string
  readonly what: string
  /** The word it begins with, and the caution itself [docs/cautions.md]. */
  readonly caution?: readonly [string, string]
}

const DUST: readonly [string, string] = [
  'Lungs and skin',
  'cut carbon wet or under extraction, glasses and mask on; keep the dust off your skin.',
]
const EPOXY: readonly [string, string] = [
  'Gloves',
  'uncured epoxy sensitises the skin for good. Nitrile gloves, changed often; air moving.',
]
const FLEX: readonly [string, string] = [
  'Eyes and hands',
  'glasses and gloves on, flex away from you and others, no head fitted. A cracked shaft is scrapped, never shot.',
]
const BLADES: readonly [string, string] = [
  'Blades',
  'handle a broadhead only with its wrench. It travels off the arrow, capped.',
]

const STEPS: Readonly<Record<string, StepWords>> = {
  receive: {
    title: 'Receive',
    what: 'Weigh every raw shaft; where lengths differ, measure them too. The lot stands on the sheet.',
  },
  spin: {
    title: 'Spin and mark',
    what: 'Run-out with its angle at five stations, spine at four quarters. Mark the stiff plane.',
  },
  cut: {
    title: 'Cut',
    what: 'Set one saw stop for the set. Cut both ends, then read the C2C.',
    caution: DUST,
  },
  square: {
    title: 'Square, deburr, flex, spin',
    what: 'Square both ends and deburr. Flex and twist it by your ear: no noise. Then spin it.',
    caution: FLEX,
  },
  'weigh cut': {
    title: 'Weigh the cut shaft',
    what: 'The most telling reading of the build. Scale clear, shaft dry and free of dust.',
  },
  'weigh parts': { title: 'Weigh the parts', what: 'One kind at a time, numbered, before anything is glued.' },
  budget: {
    title: 'Budget and pairing',
    what: 'See where each arrow is heading. Every one should have a little to trim.',
  },
  fletch: {
    title: 'Prepare and fletch',
    what: 'Abrade, degrease, dry. One jig for the whole set; clamp 20 s. Not shot before 24 h.',
    caution: EPOXY,
  },
  'weigh fletched': {
    title: 'Weigh fletched',
    what: 'Shaft, vanes and glue, no nock. What is over the parts is the vane glue.',
  },
  'dry fit': {
    title: 'Dry fit and weigh',
    what: 'Everything assembled without glue, head on. Weigh the whole arrow.',
    caution: BLADES,
  },
  trim: {
    title: 'Trim the post',
    what: 'Grind the rear of the post square. Dry it, let it cool, weigh after each pass: water weighs, a hot post reads light.',
    caution: ['Eyes and lungs', 'side-shield glasses on. Steel sparks never into the carbon dust collector.'],
  },
  edge: {
    title: 'Break the edge',
    what: 'A small chamfer on the rear of the post, so that a flexing shaft is not cut from inside. Weigh.',
    caution: ['Eyes', 'side-shield glasses on.'],
  },
  'prepare bond': {
    title: 'Prepare the bond',
    what: 'Bore and post abraded, degreased, dry. Pull the nock, so that no trapped air pushes the post out.',
  },
  bond: {
    title: 'Bond',
    what: 'Spread on post and bore, turn it in, wipe. At least 25 mm of steel bond. Weigh it wet before it sets.',
    caution: EPOXY,
  },
  index: {
    title: 'Index and spin wet',
    what: 'Turn the head to its plane on a dummy, then spin. Grease the thread.',
    caution: ['Blades', 'on a dummy, never on live blades.'],
  },
  cure: {
    title: 'Cure',
    what: 'Upright and still, warm enough. Handle, shoot and full strength each have their time.',
    caution: ['Heat', 'never over 45 °C; nothing cures below 13 °C.'],
  },
  inspect: {
    title: 'Final inspection',
    what: 'Finished weight, balance point, run-out at the point. Flex and twist once more, head off.',
    caution: FLEX,
  },
  pack: {
    title: 'Label and pack',
    what: 'Heads off and capped. Label, sheet, wrench, flex card, spares. Tick the contents.',
    caution: BLADES,
  },
}

export const stepWords = (key: string): StepWords =>
  STEPS[key] ?? { title: key.replace(/^own:/, ''), what: 'The shop’s own step.' }

const POINTS: Readonly<Record<DataPoint, string>> = {
  rawWeight: 'Raw weight',
  rawLength: 'Raw length',
  runOut1: 'Run-out, station 1',
  runOut2: 'Run-out, station 2',
  runOut3: 'Run-out, station 3',
  runOut4: 'Run-out, station 4',
  runOut5: 'Run-out, station 5',
  runOutAngle1: 'Angle, station 1',
  runOutAngle2: 'Angle, station 2',
  runOutAngle3: 'Angle, station 3',
  runOutAngle4: 'Angle, station 4',
  runOutAngle5: 'Angle, station 5',
  spineQuarter1: 'Spine, quarter 1',
  spineQuarter2: 'Spine, quarter 2',
  spineQuarter3: 'Spine, quarter 3',
  spineQuarter4: 'Spine, quarter 4',
  spineMarkAngle: 'Spine mark at',
  cutNockEnd: 'Cut off the nock end',
  cutPointEnd: 'Cut off the point end',
  c2c: 'C2C',
  squareness: 'End squareness',
  cutRunOut: 'Run-out of the cut shaft',
  cutWeight: 'Cut weight',
  nockWeight: 'Nock',
  vanesWeight: 'Vanes, together',
  wrapWeight: 'Wrap',
  insertWeight: 'Insert',
  collarWeight: 'Collar or sleeve',
  headWeight: 'Head',
  fletchedWeight: 'Fletched weight',
  dryWeight: 'Dry weight, with head',
  dryLessHead: 'Dry weight, less head',
  trimWeight: 'Weight after the pass',
  edgeWeight: 'Weight with the edge broken',
  insertTrimmed: 'Insert as trimmed',
  bondWeight: 'Weight wet, wiped',
  bondLength: 'Bond length',
  bondRunOut: 'Run-out, wet',
  roomTemperature: 'Room temperature',
  indexNock: 'Spine plane at the nock',
  indexPoint: 'Spine plane at the point',
  finishedWeight: 'Finished weight, with head',
  weightLessHead: 'Weight less head',
  balancePoint: 'Balance point, from the throat',
  overallLength: 'Overall length',
  finishedRunOut: 'Run-out at the point',
}
export const pointWord = (point: DataPoint): string => POINTS[point]

/** Inside a sentence: an ordinary word begins small, C2C stays as it is. */
export const pointInLine = (point: DataPoint): string =>
  POINTS[point].replace(/^[A-Z](?=[a-z])/, (first) => first.toLowerCase())

export const readingText = (point: DataPoint, value: number): string => {
  const { unit, decimals } = DATA_POINTS[point]
  return `${showNumber(value, decimals)}${unit === '°C' ? ' °C' : unitSuffix(unit)}`
}

const gr = (n: number) => showNumber(n, 1)

/** The other answer to whether the scale is in grains. */
export const inGramsWords = ({ meant }: Extract<Slip, { code: 'grams-for-grains' }>): string =>
  `No, in grams: take ${gr(meant)} gr`

export function slipWords(slip: Slip): string {
  switch (slip.code) {
    case 'grams-for-grains':
      return `${showNumber(slip.value, 2)} looks like grams: about ${gr(slip.expected)} gr was expected, and ${showNumber(slip.value, 2)} g is ${gr(slip.meant)} gr. Is the scale in grains?`
    case 'decimal-moved':
      return `${showNumber(slip.value, 2)} against ${gr(slip.expected)} expected: is the point in the right place?`
    case 'same-as-last':
      return `The same as no. ${slip.no}, to the last digit. Was the scale cleared?`
    case 'nothing-on-it':
      return `${gr(slip.value)}: is anything on the scale?`
    case 'negative':
      return `${gr(slip.value)} is below zero. Is the tare right?`
    case 'unlike-the-others':
      return `${gr(slip.expected)} gr was expected and this is ${gr(Math.abs(slip.by))} gr ${slip.by > 0 ? 'more' : 'less'}, further off than the others are. Is it the right part, and alone on the scale? Once kept it counts like any other.`
    case 'unlike-its-raw':
      return `By its raw weight and its lot it should come to ${gr(slip.expected)} gr, and this is ${gr(Math.abs(slip.by))} gr ${slip.by > 0 ? 'more' : 'less'}. Is it the shaft with this number, and cut to this length?`
    case 'off-since-wet':
      return `${gr(slip.value)} is off the number, and it weighed ${gr(slip.wet)} wet. Glue loses nothing as it cures: clear the scale, check it with its weight and weigh again.`
    case 'gained':
      return `${gr(slip.value)} is ${gr(slip.by)} gr more than before the pass (${gr(slip.was)}). Is it wet? Water weighs: dry it, let it cool, weigh again.`
    case 'lost-much':
      return `${gr(slip.value)} is ${gr(slip.by)} gr less than before (${gr(slip.was)}), more than passes take. Is it the right arrow, with everything on it, and cool? A hot post lifts the pan.`
    case 'does-not-add-up':
      return `The parts come to ${gr(slip.expected)} gr and this is ${gr(Math.abs(slip.by))} gr ${slip.by > 0 ? 'more' : 'less'}. Is it the right arrow, with everything on it?`
  }
}

export function refusedWords(label: string, answer: TakeAnswer, point: DataPoint): string {
  switch (answer.kind) {
    case 'taken':
    case 'asked':
      return ''
    case 'refused': {
      if (/^\s*[-−]/.test(answer.raw))
        return `${label}: ${answer.raw} is below zero. Is the tare right? Nothing was stored.`
      return entryWords(label, answer.problem, answer.raw, DATA_POINTS[point])
    }
    case 'unstable':
      return `${label}: the scale has not settled. Wait until it stands still.`
    case 'over capacity':
      return `${label}: ${gr(answer.value)} gr is more than this scale weighs (${gr(answer.capacityGr)} gr).`
  }
}

/** What an arrow's tile in the set strip says under its weight. */
export function landingStateWords({ state, over }: ArrowForecast): string {
  const off = gr(Math.abs(inGrains(over)))
  switch (state) {
    case 'on the number':
      return 'on the number'
    case 'heads to':
      return 'heads to'
    case 'light':
      return `light by ${off}`
    case 'heavy':
      return `heavy by ${off}`
  }
}
