/** What changed from one version to another, in the builder's words: what it is of, and how each side is said. */
import { DATA_POINTS } from '../../domain/bench/data-points'
import type { DataPoint } from '../../domain/bench/data-points'
import type { Plain, VersionChange } from '../../domain/book/compared-versions'
import { questionOf } from '../../domain/call/questions'
import type { QuestionId } from '../../domain/call/questions'
import { PART_KINDS } from '../../domain/stock/part'
import type { PartKind } from '../../domain/stock/part'
import { pointInLine, readingText, stepWords } from './bench-words'
import { QUESTION_WORDS, unitOfQuestion } from './call/question-words'
import { showDayAndYear, showMoment } from './dates'
import { counted, showPlain } from './format'
import { partKindWord } from './part-kind-words'

const PLAN: Readonly<Record<string, string>> = {
  targetGr: 'Finished weight, gr',
  quantity: 'Arrows in the set',
  spares: 'Spares built with it',
  c2cIn: 'C2C, in',
  vaneTailIn: 'Vane tail to throat, in',
  fletchSide: 'Side of the fletch',
  fletchDegrees: 'Offset of the fletch, °',
  cockVaneDeg: 'Cock vane, from up, °',
  indexPlane: 'Index the head to',
  jig: 'Jig',
  frontPoint: 'Front point of the FOC',
}
const LINE: Readonly<Record<string, string>> = { part: '', lot: 'lot', count: 'how many', no: 'piece' }
const SET: Readonly<Record<string, string>> = {
  sheet: 'Built on sheet version',
  started: 'Started',
  accepted: 'Accepted',
  scrapped: 'Scrapped',
  sent: 'Sent',
  builders: 'Builders',
  signedOffBy: 'Signed off by',
  scaleChecks: 'Scale checks',
}

const UNITS: Readonly<Record<string, string>> = {
  Gr: 'gr',
  In: 'in',
  Mm: 'mm',
  Lb: 'lb',
  Fps: 'ft/s',
  Yd: 'yd',
  Percent: '%',
  Points: 'points',
  Cents: 'cents',
  H: 'h',
  C: '°C',
}

/** A field without a word of its own, taken apart: `frontAheadOfRestIn` is *front ahead of rest, in*. */
function plainName(field: string): string {
  const words = field.split(/(?=[A-Z])/)
  const unit = words.length > 1 ? UNITS[words.at(-1)!] : undefined
  const name = (unit === undefined ? words : words.slice(0, -1)).join(' ').toLowerCase()
  return unit === undefined ? name : `${name}, ${unit}`
}
const plainPath = (field: readonly string[]) => field.map(plainName).join(', ')

const isKind = (word: string): word is PartKind => (PART_KINDS as readonly string[]).includes(word)
const isPoint = (word: string): word is DataPoint => Object.hasOwn(DATA_POINTS, word)
const isQuestion = (word: string): word is QuestionId => Object.hasOwn(QUESTION_WORDS, word)
const sentence = (text: string) => text.slice(0, 1).toUpperCase() + text.slice(1)

const asked = (id: QuestionId) => {
  const unit = unitOfQuestion(questionOf(id))
  return unit === '' ? QUESTION_WORDS[id].label : `${QUESTION_WORDS[id].label}, ${unit}`
}

/** `broadhead 2` is *Head 2*. */
function placeWord(of: string): string {
  const [, kind, nth] = /^(.*?)( \d+)?$/.exec(of)!
  return (isKind(kind!) ? partKindWord(kind) : kind!) + (nth ?? '')
}

/** What changed: *Finished weight, gr*; *Head, lot*; *No. 2, finished weight*. */
export function changedWord({ area, of, field }: VersionChange): string {
  const [first = '', ...more] = field
  const within = (...words: readonly string[]) => words.filter((word) => word !== '').join(', ')
  switch (area) {
    case 'plan':
      return PLAN[first] ?? sentence(plainPath(field))
    case 'line':
      return within(placeWord(of), LINE[first] ?? plainPath(field))
    case 'hunt':
    case 'bow':
      return isQuestion(first) ? asked(first) : sentence(plainPath(field))
    case 'rules':
      return `Shop rule: ${plainPath(field)}`
    case 'part':
      return within(of, plainPath(field))
    case 'lot':
      return within(`Lot ${of}`, plainPath(field))
    case 'learned':
      return `Weighings of ${of.replace(/ weight$/, '')}`
    case 'step':
      return within(`Step ${stepWords(of).title}`, plainPath(field))
    case 'record':
      return first === 'client' ? 'The client’s record' : sentence(plainPath(field))
    case 'set':
      return SET[first] ?? sentence(plainPath(field))
    case 'arrow': {
      const [inner = ''] = more
      const point = first === 'read' && isPoint(inner) ? pointInLine(inner) : undefined
      const part = first === 'fitted' ? `${placeWord(inner).toLowerCase()} fitted` : undefined
      return within(`No. ${of}`, point ?? part ?? plainPath(field))
    }
  }
}

/** One side of a change; *none* where the field was not there. */
export function sideWords({ area, field }: VersionChange, side: Plain | undefined): string {
  if (side === undefined || side === '') return 'none'
  if (area === 'record' && field[0] === 'client') return side.toString().slice(0, CLIENT_LETTERS)
  const inner = field.at(-1) ?? ''
  if (area === 'arrow' && typeof side === 'number' && isPoint(inner)) return readingText(inner, side)
  if (typeof side === 'boolean') return side ? 'yes' : 'no'
  if (typeof side === 'number') return showPlain(side)
  return /^\d{4}-\d\d-\d\d$/.test(side) ? showDayAndYear(side) : side
}
const CLIENT_LETTERS = 8 // of the record's hash, enough to tell two apart

interface Version {
  readonly kind: string
  readonly at: string
  readonly by: string
  readonly reason?: string
  readonly body: { readonly version: number }
}

/** `sheet 2`, `as built 1`. */
export const versionName = ({ kind, body }: Pick<Version, 'kind' | 'body'>): string =>
  `${kind === 'sheet' ? 'sheet' : 'as built'} ${body.version}`

/** Who made a version, when and why. */
export const madeWords = ({ at, by, reason }: Version): string =>
  `${showMoment(at)}, ${by}${reason === undefined ? '' : `: ${reason}`}`

export const versionWords = (version: Version): string => `${versionName(version)}, ${madeWords(version)}`

export const changesWords = (count: number): string =>
  count === 0
    ? 'Nothing differs between these two.'
    : `${counted(count, 'field')} ${count === 1 ? 'differs' : 'differ'}.`
