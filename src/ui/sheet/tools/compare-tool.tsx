/** This plan beside what was kept from a search, or beside its last frozen version: at most three, differences bold. */
import { useMemo } from 'react'
import type { Candidate } from '../compare/candidate'
import { CandidateTable } from '../compare/candidate-table'
import { COMPARE_WORDS } from '../../words/tool-words'
import type { ToolProps } from './tool'

const MOST = 3

export function CompareTool({ open, sheet, kept }: ToolProps) {
  const candidates = useMemo((): readonly Candidate[] => {
    const own = { key: 'compare.plan', title: 'This plan', sheet }
    const beside = kept.map((each, at) => ({ ...each, key: `compare.kept.${at}`, title: `Kept: ${each.title}` }))
    const frozen = open.job.frozen.toReversed().flatMap(({ sheet: hash, version }) => {
      const body = open.sheets.get(hash)
      return body === undefined
        ? []
        : [{ key: `compare.version.${version}`, title: `Version ${version}, frozen`, sheet: body }]
    })
    return [own, ...beside, ...frozen].slice(0, MOST)
  }, [open, sheet, kept])
  return (
    <>
      {candidates.length === 1 ? <p>{COMPARE_WORDS.alone}</p> : null}
      <CandidateTable caption="Plans compared" candidates={candidates} />
    </>
  )
}
