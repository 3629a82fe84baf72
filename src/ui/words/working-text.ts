/** A working as plain text, for a print, a message or a paste: the same lines that the screen shows. */
import type { Derivation, Term } from '../../core/outcome'
import { originWords, otherValue, sourceWords, termValue } from './working-words'

const both = (term: Term) => [termValue(term), otherValue(term)].filter((said) => said !== undefined).join(' = ')

function lines({ equation, inputs, result, source, note, steps = [] }: Derivation, indent: string): string[] {
  return [
    `${indent}${equation}`,
    ...inputs.map((term) => `${indent}  ${term.name}: ${both(term)} (${originWords(term)})`),
    ...result.map((term) => `${indent}  gives ${term.name}: ${both(term)}`),
    ...(note === undefined ? [] : [`${indent}  ${note}`]),
    ...sourceWords(source).map((title) => `${indent}  Source: ${title}`),
    ...steps.flatMap((step) => [`${indent}  where`, ...lines(step, `${indent}    `)]),
  ]
}

export const workingText = (label: string, derivation: Derivation): string =>
  [label, ...lines(derivation, '')].join('\n')
