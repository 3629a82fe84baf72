/** docs/calculations.md, written from the models themselves: what they say of an example, and of numbers that are none. */
import { readdirSync, readFileSync } from 'node:fs'
import type { Derivation, Outcome, Term } from '@/core/outcome'
import { showSignificant } from '@/ui/words/format'
import { originWords, termValue } from '@/ui/words/working-words'
import { unitSuffix } from '@/ui/words/unit-words'
import { ALL_EXAMPLES } from './all'
import { rangesOf } from './ranges'
import type { Take, WorkedExamples } from './worked-example'

export type Topic = keyof typeof ALL_EXAMPLES

const TITLES: Readonly<Record<Topic, string>> = {
  weight: 'Weights and forecast',
  balance: 'Balance and FOC',
  energy: 'Energy',
  bow: 'The bow',
  stiffness: 'Stiffness',
  cut: 'Cut and clearance',
  runout: 'Run-out',
  trim: 'Trim and mends',
  air: 'Air',
  flight: 'Flight',
  envelope: 'Envelope',
  statistics: 'Statistics of a set',
  cure: 'Cure',
  law: 'Law and game',
}
export const TOPICS = Object.keys(TITLES) as readonly Topic[]

export interface Source {
  readonly path: string
  readonly text: string
}
/** The files of one topic of the core. */
export const filesOf = (topic: Topic): readonly Source[] =>
  readdirSync(`src/core/${topic}`)
    .toSorted()
    .map((name) => `src/core/${topic}/${name}`)
    .map((path) => ({ path, text: readFileSync(path, 'utf8') }))

/** The docstring above an exported function, by paragraphs. */
function docstringOf(model: string, { text }: Source): readonly string[] {
  const before = text.slice(0, text.search(new RegExp(`^export function ${model}\\b`, 'm')))
  const comment = before.slice(before.lastIndexOf('/**') + 3, before.lastIndexOf('*/'))
  const lines = comment.split('\n').map((line) => line.replace(/^ *\* ?/, '').trimEnd())
  return lines
    .join('\n')
    .split(/\n\s*\n|\n(?=@|Source:|Error:)/)
    .map((paragraph) => paragraph.trim())
}

const plainWords = (text: string) => text.replaceAll(/\{@link ([\w.]+)\}/g, '`$1`').replaceAll(/\s*\n\s*/g, ' ')
const cell = (text: string) => text.replaceAll('|', '\\|')
const from = (term: Term) => (term.origin === 'given' ? '' : originWords(term))

function stepsOf({ steps = [] }: Derivation, depth = 0): readonly string[] {
  return steps.flatMap((step) => [
    `${'  '.repeat(depth)}- \`${step.equation}\` gives ${step.result.map((each) => `${each.name} ${termValue(each)}`).join(', ') || 'it'}`,
    ...stepsOf(step, depth + 1),
  ])
}

const usual: Take = (n) => n

export function derivationOf(outcome: Outcome<unknown>): Derivation {
  if (!outcome.ok) throw new Error(`an example without an answer: ${JSON.stringify(outcome.findings)}`)
  return outcome.derivation
}

function entry(model: string, work: (n: Take) => Outcome<unknown>, file: Source): readonly string[] {
  const derivation = derivationOf(work(usual))
  const { equation, inputs, result, source, note } = derivation
  const paragraphs = docstringOf(model, file)
  const error = paragraphs.find((paragraph) => paragraph.startsWith('Error:'))
  const steps = stepsOf(derivation)
  const ranges = rangesOf(work)
  return [
    `### ${model}`,
    '',
    plainWords(paragraphs[0]!),
    '',
    '```text',
    equation,
    '```',
    '',
    '| | example | |',
    '| --- | --- | --- |',
    ...inputs.map((term) => `| ${cell(term.name)} | ${termValue(term)} | ${from(term)} |`),
    ...result.map((term) => `| **${cell(term.name)}** | **${termValue(term)}** | result |`),
    '',
    ...(steps.length === 0 ? [] : ['Stands on:', '', ...steps, '']),
    ...(ranges.length === 0
      ? []
      : [
          `Holds for ${ranges.map(({ input, from: low, to, unit }) => `${input} ${showSignificant(low)} to ${showSignificant(to)}${unitSuffix(unit)}`).join('; ')}.`,
          '',
        ]),
    ...(error === undefined ? [] : [plainWords(error), '']),
    ...(note === undefined ? [] : [note, '']),
    `Source: ${source.map((key) => `[${key}](sources.md)`).join(', ')}. In \`${file.path}\`.`,
    '',
  ]
}

/** One topic of the page: every model that it has, in the order of the examples. */
export function section(topic: Topic): string {
  const files = filesOf(topic)
  const examples: WorkedExamples = ALL_EXAMPLES[topic]
  const entries = Object.entries(examples).flatMap(([model, work]) => {
    const file = files.find(({ text }) => new RegExp(`^export function ${model}\\b`, 'm').test(text))
    if (file === undefined) throw new Error(`src/core/${topic} has no model named ${model}`)
    return entry(model, work, file)
  })
  return [`## ${TITLES[topic]}`, '', ...entries].join('\n')
}

export const calculationsPage = (): string =>
  [
    '# Calculations',
    '',
    'Every model of the core: its equation, its inputs with units, the range where it holds, an example, its source. The page',
    'is made from the models by `npm run docs`: the numbers are what they answer, the ranges what they refuse beyond. A test',
    'works every example again and fails when the page is not current.',
    '',
    'A source named OWN is an equation derived here from the cited ones, and this page is where it stands.',
    '',
    ...TOPICS.map((topic) => `- [${TITLES[topic]}](#${TITLES[topic].toLowerCase().replaceAll(' ', '-')})`),
    '',
    TOPICS.map(section).join('\n'),
  ].join('\n')
