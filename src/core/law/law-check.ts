import type { Finding } from '../finding'
import { bounds, known, type Outcome, type Term, term } from '../outcome'
import {
  type Force,
  grains,
  inches,
  kilogramsPerNewton,
  type Length,
  type Mass,
  type MassPerForce,
  poundsForce,
} from '../quantity'
import { outside, refusal } from '../refusal'
import type { Demand, FigureDemand, PlaceRule } from './place-rule'

/** What a sheet knows of the figures that rules name. */
export interface LawFigures {
  readonly game?: string
  readonly drawWeight?: Force
  readonly arrowWeight?: Mass
  readonly arrowLength?: Length
  /** Rows about heads speak of broadheads only. */
  readonly head?: { readonly kind: 'broadhead' | 'field point'; readonly width?: Length }
}

/** A demand whose figure is known, with both. */
export interface ComparedRow {
  readonly verdict: 'meets' | 'does not meet'
  readonly demand: Demand
  readonly least: Term
  readonly at: Term
}
export type LawRow =
  | ComparedRow
  | { readonly verdict: 'not known'; readonly demand: Demand; readonly least: Term; readonly at?: undefined }
  | {
      readonly verdict: 'to confirm' | 'not for this head'
      readonly demand: Demand
      readonly least?: undefined
      readonly at?: undefined
    }

export interface LawCheck {
  readonly rule: PlaceRule
  readonly rows: readonly LawRow[]
  /** Of the figures alone; `incomplete` while one is missing, to confirm, or depends on game that is not named. */
  readonly verdict: 'meets the figures' | 'does not meet the figures' | 'incomplete'
}

export const LAW_BOUNDS = Object.freeze({
  drawWeight: bounds(poundsForce(1), poundsForce(500)),
  arrowWeight: bounds(grains(1), grains(100_000)),
  arrowLength: bounds(inches(1), inches(100)),
  headWidth: bounds(inches(0.01), inches(20)),
})

/** A figure that is exactly the least one meets it, whatever the last bit of a conversion says. */
const ROUNDING = 1e-9

const isFigure = (demand: Demand): demand is Demand & FigureDemand => 'least' in demand

/** The figure that a demand is about and its least, in the instrument's usual unit. */
function compared(demand: FigureDemand, figures: LawFigures): { least: Term; at?: Term; meets: boolean } {
  const { drawWeight, arrowWeight, arrowLength, head } = figures
  const told = <Q extends number>(least: Q, at: Q | undefined, as: (q: Q) => Term) => ({
    least: as(least),
    ...(at === undefined ? {} : { at: as(at) }),
    meets: at !== undefined && at >= least * (1 - ROUNDING),
  })
  switch (demand.what) {
    case 'peak draw weight':
      return told(demand.least, drawWeight, (q) => term(demand.what, q, 'lbf'))
    case 'arrow weight':
      return told(demand.least, arrowWeight, (q) => term(demand.what, q, 'gr'))
    case 'arrow weight per draw weight': {
      const ratio: MassPerForce | undefined =
        drawWeight === undefined || arrowWeight === undefined ? undefined : kilogramsPerNewton(arrowWeight / drawWeight)
      return told(demand.least, ratio, (q) => term(demand.what, q, 'gr/lb'))
    }
    case 'arrow length':
      return told(demand.least, arrowLength, (q) => term(demand.what, q, 'in'))
    case 'broadhead width':
      return told(demand.least, head?.width, (q) => term(demand.what, q, 'in'))
  }
}

function rowOf(demand: Demand, figures: LawFigures): LawRow {
  if (demand.what === 'broadhead width' && figures.head?.kind === 'field point') {
    return { demand, verdict: 'not for this head' }
  }
  if (!isFigure(demand)) return { demand, verdict: 'to confirm' }
  const { least, at, meets } = compared(demand, figures)
  if (at === undefined) return { demand, verdict: 'not known', least }
  return { demand, verdict: meets ? 'meets' : 'does not meet', least, at }
}

/**
 * A sheet's figures against one place's rule. It never says that anything is lawful: only whether the figures that the
 * instrument names are met, and always to check with the authority.
 *
 * @returns the rows that are about the game, or all of them while no game is named; findings `legal-figure-not-met`,
 *   `rule-silent-on-game` and, always, `check-with-authority`; `outside-model`
 *
 * Source: the rule's own instrument.
 */
export function lawCheck(rule: PlaceRule, figures: LawFigures): Outcome<LawCheck> {
  const { game, drawWeight, arrowWeight, arrowLength, head } = figures
  const refused = refusal([
    ...(drawWeight === undefined ? [] : outside('draw weight', drawWeight, LAW_BOUNDS.drawWeight, 'lbf')),
    ...(arrowWeight === undefined ? [] : outside('arrow weight', arrowWeight, LAW_BOUNDS.arrowWeight, 'gr')),
    ...(arrowLength === undefined ? [] : outside('arrow length', arrowLength, LAW_BOUNDS.arrowLength, 'in')),
    ...(head?.width === undefined ? [] : outside('broadhead width', head.width, LAW_BOUNDS.headWidth, 'in')),
  ])
  if (refused) return refused
  const { place, instrument, dated, standing } = rule
  const of = { place, instrument, ...(dated === undefined ? {} : { dated }) }
  const named = game?.trim().toLowerCase()
  const concerns = ({ game: only }: Demand) => named === undefined || only === undefined || only.includes(named)
  const rows = rule.demands.filter(concerns).map((demand) => rowOf(demand, figures))
  const silent = rows.length === 0
  const failed = rows.filter((row): row is ComparedRow => row.verdict === 'does not meet')
  const sure = rows.filter(({ demand }) => named !== undefined || demand.game === undefined)
  const open =
    silent ||
    sure.length < rows.length ||
    rows.some(({ verdict }) => verdict === 'not known' || verdict === 'to confirm')
  const verdict = failed.some((row) => sure.includes(row))
    ? 'does not meet the figures'
    : open
      ? 'incomplete'
      : 'meets the figures'
  const findings: readonly Finding[] = [
    ...failed.map(
      ({ demand, at, least }) => ({ code: 'legal-figure-not-met', ...of, what: demand.what, at, least }) as const,
    ),
    ...(silent && game !== undefined ? [{ code: 'rule-silent-on-game', ...of, game } as const] : []),
    { code: 'check-with-authority', ...of, standing },
  ]
  return known(
    { rule, rows, verdict },
    {
      equation: 'figure ≥ least',
      inputs: rows.flatMap(({ least, at }) => [
        ...(at ? [at] : []),
        ...(least ? [{ ...least, name: `least ${least.name}`, ref: instrument }] : []),
      ]),
      result: [],
      source: rule.source ? [rule.source] : [],
      note: 'Whether the figures of the instrument are met, never whether a hunt is lawful.',
    },
    findings,
  )
}
