/** What a search has to say: why there is no answer above the arrows, what was left out folded away beneath them. */
import type { SearchFinding } from '../../../domain/search/findings'
import { Notice } from '../../controls/notice'
import { leftOutWords } from '../../words/find-words'
import { searchWords } from '../../words/findings/search-findings'
import look from './find.module.css'

interface SearchFindingsProps {
  findings: readonly SearchFinding[]
  /** What a part is called in the shop. */
  partName: (part: string) => string
}

const LEFT_OUT: ReadonlySet<SearchFinding['code']> = new Set([
  'short-of-stock',
  'draw-above-shaft-limit',
  'bevel-against-fletch',
  'raw-shaft-too-short',
])
/** Whether it speaks of one part that was not used, or not in every length. */
export const isLeftOut = ({ code }: SearchFinding) => LEFT_OUT.has(code)

export const SearchFindings = ({ findings, partName }: SearchFindingsProps) =>
  findings.map((finding, at) => (
    // The same code may come twice, of two parts.
    <Notice key={`${finding.code}.${at}`} level={finding.code === 'fewer-than-asked' ? 'note' : 'look'}>
      {searchWords(finding, partName)}
    </Notice>
  ))

export const LeftOut = ({ findings, partName }: SearchFindingsProps) =>
  findings.length === 0 ? null : (
    <details className={look.left}>
      <summary data-label="">{leftOutWords(findings.length)}</summary>
      <ul>
        {findings.map((finding, at) => (
          <li key={`${finding.code}.${at}`} data-label="">
            {searchWords(finding, partName)}
          </li>
        ))}
      </ul>
    </details>
  )
