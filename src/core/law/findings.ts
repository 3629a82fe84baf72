import type { Term } from '../outcome'
import type { DemandKind, RuleStanding } from './place-rule'

interface OfRule {
  readonly place: string
  readonly instrument: string
  /** As the instrument is dated; none where that was not noted. */
  readonly dated?: string
}

/** A figure of the sheet is below what the instrument names. */
export interface LegalFigureNotMet extends OfRule {
  readonly code: 'legal-figure-not-met'
  readonly what: DemandKind
  readonly at: Term
  readonly least: Term
}

/** The instrument names no figure for this game. It may be forbidden, or ruled elsewhere. */
export interface RuleSilentOnGame extends OfRule {
  readonly code: 'rule-silent-on-game'
  readonly game: string
}

/** Stands beside every check: only the authority, the outfitter and the licensed guide can say what is lawful. */
export interface CheckWithAuthority extends OfRule {
  readonly code: 'check-with-authority'
  readonly standing: RuleStanding
}

export type LawFinding = LegalFigureNotMet | RuleSilentOnGame | CheckWithAuthority
