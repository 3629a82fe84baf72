/** One thing that follows from the answers: a figure with its working, or the answers it still needs. */
import type { Derivation, NoAnswer, OriginNote, Outcome, Term } from '../../core/outcome'
import type { QuestionId } from './questions'

export type Follows<T> =
  | { readonly kind: 'figure'; readonly outcome: Outcome<T> }
  /** One of these would do. `noRuleFor`: what was answered, and the shop has no rule for it. */
  | { readonly kind: 'needs'; readonly anyOf: readonly QuestionId[]; readonly noRuleFor?: string }

export const figure = <T>(outcome: Outcome<T>): Follows<T> => ({ kind: 'figure', outcome })
export const needs = (...anyOf: readonly QuestionId[]): Follows<never> => ({ kind: 'needs', anyOf })

/** What a figure makes of another; what the other lacks, it lacks too. */
export function following<A, B>(one: Follows<A>, make: (value: A, derivation: Derivation) => Outcome<B>): Follows<B> {
  if (one.kind === 'needs') return needs(...one.anyOf)
  return one.outcome.ok
    ? figure(make(one.outcome.value, one.outcome.derivation))
    : figure(one.outcome satisfies NoAnswer)
}

/** The value of a figure that has one. */
export const valueIn = <T>(follows: Follows<T>): T | undefined =>
  follows.kind === 'figure' && follows.outcome.ok ? follows.outcome.value : undefined

export type Origins = Readonly<Partial<Record<string, OriginNote>>>

/** The working with the true origin written on every input, however deep, that no model has named an origin for. */
export function traced(derivation: Derivation, origins: Origins): Derivation {
  const { inputs, steps } = derivation
  const named = (input: Term): Term => (input.origin === 'given' ? { ...input, ...origins[input.name] } : input)
  return {
    ...derivation,
    inputs: inputs.map(named),
    ...(steps === undefined ? {} : { steps: steps.map((step) => traced(step, origins)) }),
  }
}

export const tracedOutcome = <T>(outcome: Outcome<T>, origins: Origins): Outcome<T> =>
  outcome.ok ? { ...outcome, derivation: traced(outcome.derivation, origins) } : outcome

/** What the client can still tell: an assumption under one of these names is worth naming beside the figure. */
const CAN_BE_TOLD: ReadonlySet<string> = new Set([
  'peak draw weight',
  'draw length',
  'brace height',
  'rated speed',
  'virtual mass',
  'rest ahead of the pivot',
  'riser front ahead of the pivot',
  'arrow length',
])

export const openAssumptions = (derivation: Derivation): readonly Term[] =>
  assumedIn(derivation).filter(({ name }) => CAN_BE_TOLD.has(name))

/** The inputs of a working, however deep, that nobody told: each once, by name. */
export function assumedIn({ inputs, steps = [] }: Derivation): readonly Term[] {
  const all = [...inputs.filter((input) => input.origin === 'assumed'), ...steps.flatMap(assumedIn)]
  return all.filter((input, i) => all.findIndex((other) => other.name === input.name) === i)
}
