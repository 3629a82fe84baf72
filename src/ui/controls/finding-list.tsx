/** What the core has to say, each finding as a notice in words. The sentences come when the first of them is needed. */
import { lazy, Suspense } from 'react'
import type { Finding } from '../../core/finding'
import { findingLevel } from '../words/finding-level'
import look from './finding-list.module.css'
import { Notice } from './notice'

const FindingText = lazy(async () => {
  const { findingWords } = await import('../words/finding-words')
  return { default: ({ finding }: { finding: Finding }) => findingWords(finding) }
})

export const FindingList = ({ findings }: { findings: readonly Finding[] }) => (
  <ul className={look.findings}>
    {findings.map((finding, at) => (
      // A finding is known by its place: the same code may come twice, of two inputs.
      <li key={`${finding.code}.${at}`} data-finding={finding.code}>
        <Notice level={findingLevel(finding)}>
          <Suspense fallback="…">
            <FindingText finding={finding} />
          </Suspense>
        </Notice>
      </li>
    ))}
  </ul>
)
