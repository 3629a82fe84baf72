import type { LawFinding } from '../../../core/law/findings'
import type { LawCheck } from '../../../core/law/law-check'
import type { RuleStanding } from '../../../core/law/place-rule'
import type { Term } from '../../../core/outcome'
import { showIn } from '../format'

const STANDING: Readonly<Record<RuleStanding, string>> = {
  read: '',
  'since replaced': ', since replaced',
  'from press': ', known from press only',
}

interface Named {
  readonly place: string
  readonly instrument: string
  readonly dated?: string
}

const named = ({ place, instrument, dated }: Named) =>
  `${place}, ${instrument} (${dated === undefined ? 'date not noted' : `dated ${dated}`})`
const said = ({ value, unit }: Term) => showIn(value, unit, unit === 'in' ? 3 : 1)

/** What the check against a place's rule has to say, in a sentence. */
export function lawWords(finding: LawFinding): string {
  switch (finding.code) {
    case 'legal-figure-not-met':
      return `The ${finding.what} of ${said(finding.at)} does not meet the ${said(finding.least)} of ${named(finding)}.`
    case 'rule-silent-on-game':
      return `${named(finding)} names no figure for ${finding.game} here. Ask the authority whether it may be hunted with the bow at all.`
    case 'check-with-authority':
      return `Figures of ${named(finding)}${STANDING[finding.standing]}, as guidance. Check with the authority, the outfitter and the licensed guide.`
  }
}

const VERDICT: Readonly<Record<LawCheck['verdict'], string>> = {
  'meets the figures': 'Meets the figures of',
  'does not meet the figures': 'Does not meet the figures of',
  incomplete: 'Not everything is known or confirmed for',
}

/** The most that is ever said of a rule. */
export const lawVerdictWords = ({ rule, verdict }: LawCheck): string =>
  `${VERDICT[verdict]} ${named(rule)}${STANDING[rule.standing]}; check with the authority.`
