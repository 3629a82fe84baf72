/** The shop's rows for the place, each demand beside what the call knows, with source, date and caution. */
import type { LawRow } from '../../domain/call/law-rows'
import { showDayAndYear } from '../words/dates'
import { lawCheckWords } from '../words/call/follows-words'
import { LAW_CAUTION } from '../words/law-caution'
import look from './call.module.css'

export const LawList = ({ rows }: { rows: readonly LawRow[] }) =>
  rows.length === 0 ? null : (
    <section className={look.law} aria-label="What the place asks for">
      {rows.map(({ rule, checks }) => (
        <div key={`${rule.place} ${rule.game} ${rule.instrument}`} className={look.lawRow} data-label="">
          <h3>
            {rule.place}, {rule.game}
          </h3>
          <ul>
            {checks.map((check) => (
              <li key={check.what} className={check.meets === 'does not meet' ? look.fails : undefined}>
                {lawCheckWords(check)}
              </li>
            ))}
            {rule.note === undefined ? null : <li>{rule.note}</li>}
          </ul>
          <p className={look.lineNote}>
            {rule.instrument}, read {showDayAndYear(rule.readOn)}
          </p>
        </div>
      ))}
      <p className={look.lineNote}>{LAW_CAUTION}</p>
    </section>
  )
