/** A working laid open: the equation, what went in and where from, what came out, the source, and the steps it stands on. */
import type { Derivation, Term } from '../../../core/outcome'
import { originWords, otherValue, sourceWords, termValue } from '../../words/working-words'
import look from './working.module.css'

/** One number of a working; marked by its name, so that a check can hold it against the derivation. */
const TermValue = ({ term }: { term: Term }) => (
  <span data-label="" data-term={term.name} data-value={term.value} data-unit={term.unit}>
    {termValue(term)}
    <span className={look.other}>{otherValue(term)}</span>
  </span>
)

export const Working = ({ derivation }: { derivation: Derivation }) => (
  <div className={look.working}>
    <p className={look.equation} data-label="">
      {derivation.equation}
    </p>
    <table className={look.terms}>
      <thead className="unseen">
        <tr>
          <th scope="col">Name</th>
          <th scope="col">Value</th>
          <th scope="col">From</th>
        </tr>
      </thead>
      <tbody>
        {derivation.inputs.map((term, at) => (
          <tr key={`${term.name}.${at}`}>
            <th scope="row" data-label="">
              {term.name}
            </th>
            <td>
              <TermValue term={term} />
            </td>
            <td className={look.origin} data-label="">
              {originWords(term)}
            </td>
          </tr>
        ))}
        {derivation.result.map((term, at) => (
          <tr key={`result.${term.name}.${at}`} className={look.result}>
            <th scope="row" data-label="">
              {term.name}
            </th>
            <td>
              <TermValue term={term} />
            </td>
            <td className={look.origin}>result</td>
          </tr>
        ))}
      </tbody>
    </table>
    {derivation.note === undefined ? null : <p data-label="">{derivation.note}</p>}
    {sourceWords(derivation.source).map((title) => (
      <p key={title} className={look.source} data-label="">
        {title}
      </p>
    ))}
    {derivation.steps?.map((step, at) => (
      <details key={`${step.equation}.${at}`} className={look.step}>
        <summary data-label="">{step.result.map(({ name }) => name).join(', ') || step.equation}</summary>
        <Working derivation={step} />
      </details>
    ))}
  </div>
)
