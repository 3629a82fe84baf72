/** docs/compute.md and docs/inputs.schema.json, written from the schema of the open inputs and from what the command answers. */
import * as z from 'zod/mini'
import { computeFigures } from '@/headless/compute-figures'
import { openInputs } from '@/headless/open-inputs'
import { OPEN_EXAMPLE } from './open-example'

interface Node {
  readonly type?: string
  readonly const?: string
  readonly enum?: readonly string[]
  readonly description?: string
  readonly properties?: Readonly<Record<string, Node>>
  readonly required?: readonly string[]
  readonly items?: Node
  readonly exclusiveMinimum?: number
  readonly minimum?: number
}

export const inputsSchema = (): object => ({
  title: 'grainwright.inputs/1',
  ...z.toJSONSchema(openInputs, { io: 'input' }),
})
export const inputsSchemaText = (): string => `${JSON.stringify(inputsSchema(), null, 2)}\n`

const kindOf = ({ type, const: only, enum: words, exclusiveMinimum, minimum }: Node): string =>
  only !== undefined
    ? `"${only}"`
    : words !== undefined
      ? words.map((word) => `"${word}"`).join(', ')
      : `${type}${exclusiveMinimum === 0 ? ' above 0' : minimum === 0 ? ', 0 or more' : ''}`

function fields(node: Node, path: string): readonly string[] {
  const { properties = {}, required = [] } = node
  return Object.entries(properties).flatMap(([name, field]) => {
    const at = path === '' ? name : `${path}.${name}`
    const inside = field.items ?? field
    const here = `| \`${at}${field.items ? '[]' : ''}\` | ${kindOf(field)} | ${required.includes(name) ? 'yes' : ''} | ${field.description ?? ''} |`
    return [here, ...fields(inside, field.items ? `${at}[]` : at)]
  })
}

const OUTPUTS = {
  finishedGr: 'weight of everything told, gr',
  balanceIn: 'balance point ahead of the throat, in',
  focPercent: 'front of centre, %',
  grainsPerPound: 'finished weight per pound of peak draw weight, gr/lb',
  bowEnergyFtLbf: 'energy the bow gives to arrow and virtual mass together, ft·lbf',
  virtualMassGr: 'virtual mass of the bow, gr: fitted, told, or assumed for its kind, in this order',
  speedFps: 'launch speed, ft/s',
  speedFrom: 'what the speed stands on: chronograph, one weight, force-draw curve, rating',
  kineticEnergyFtLbf: 'at launch, ft·lbf',
  momentumSlugFtS: 'at launch, slug·ft/s',
  columnReserve: 'critical force of the column over the force at the nock',
  overTargetGr: 'finished weight less the target, gr',
  flight:
    'a row for each range that is reached: `rangeYd`, `speedFps`, `kineticEnergyFtLbf`, `momentumSlugFtS`, `dropIn` below the level line of launch, `timeS`',
  bands: 'ends of the 95 % band of a figure, by its name, in its unit',
  findings:
    'what the core has to say beside a figure or instead of it: `figure`, `code`, and what was wrong; quantities in SI',
} as const
export const OUTPUT_NAMES: readonly string[] = Object.keys(OUTPUTS)

export function computePage(): string {
  const answer = computeFigures(OPEN_EXAMPLE, false)
  if (!answer.ok) throw new Error(answer.faults.join('\n'))
  return [
    '# The compute command',
    '',
    '```text',
    'npm run -s compute -- FILE [--working]',
    '```',
    '',
    'prints every figure of an arrow as JSON, at full precision. It is built for Node 20 and needs no browser. This page is made',
    'by `npm run docs` from the schema and from what the command answers; a test fails when it is not current.',
    '',
    '`FILE` holds one of:',
    '',
    '- a sheet as the book keeps it: the fact of kind `sheet`, or its body alone;',
    '- the open format `grainwright.inputs/1` below, whose JSON Schema is [inputs.schema.json](inputs.schema.json);',
    '- a JSON array of either, mixed as you like. The answer is then an array in the same order; no entry is left out.',
    '',
    '| exit code | |',
    '| --- | --- |',
    '| 0 | figures on standard output. A figure that cannot be given is `null`, and `findings` says why |',
    '| 2 | nothing on standard output; on standard error a line for each fault, which begins with the path of the field: `[1].parts[0].toIn: lies behind fromIn` |',
    '',
    '`--working` adds `working`: by figure, its equation, its inputs with unit and origin, its result, its sources, and the',
    'workings it stands on. The equations themselves are in [calculations.md](calculations.md).',
    '',
    '## The open format',
    '',
    'Lengths are inches forward from the throat of the nock, weights grains, other units in the field’s name. A name that is not in the',
    'table is a fault.',
    '',
    '| field | | needed | |',
    '| --- | --- | --- | --- |',
    ...fields(inputsSchema() as Node, ''),
    '',
    '## What comes out',
    '',
    '| figure | |',
    '| --- | --- |',
    ...Object.entries(OUTPUTS).map(([name, says]) => `| \`${name}\` | ${says} |`),
    '',
    'Speed comes from the first of these that answers: chronograph readings of two or more arrow weights, readings of one weight,',
    'the force-draw curve (sheets only), the rating. Of a sheet the arrow is the planned one, trimmed to its target, and `flight` is',
    'worked out at 20, 40 and 60 yd in standard air.',
    '',
    '## An example',
    '',
    '```json',
    JSON.stringify(OPEN_EXAMPLE, null, 2),
    '```',
    '',
    'gives',
    '',
    '```json',
    JSON.stringify(
      answer.output,
      (_, value: unknown) => (typeof value === 'number' ? +value.toPrecision(9) : value),
      2,
    ),
    '```',
    '',
    'here cut to nine digits.',
    '',
  ].join('\n')
}
