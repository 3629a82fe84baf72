/** The arrows found, or the nearest misses, side by side: what each gives up or breaks, and the way to take one. */
import { useMemo } from 'react'
import type { FoundParts } from '../../../domain/search/find-parts'
import type { FoundArrow } from '../../../domain/search/found-arrow'
import { foundSheet } from '../../../domain/search/found-sheet'
import type { SearchProblem } from '../../../domain/search/wishes'
import type { Sheet } from '../../../domain/sheet/sheet'
import type { Shelf } from '../../../domain/stock/shelf'
import { Button } from '../../controls/button'
import { Label } from '../../figures/label'
import { givesUpWords, spareWords } from '../../words/find-words'
import { brokenWishWords } from '../../words/findings/search-findings'
import type { Candidate } from '../compare/candidate'
import { CandidateTable } from '../compare/candidate-table'

/** What was asked when the answer came: sheet and shelf may have moved on since. */
export interface Asked {
  readonly sheet: Sheet
  readonly shelf: Shelf
  readonly problem: SearchProblem
}

interface FoundTableProps {
  answer: FoundParts
  asked: Asked
  onTake: (arrow: FoundArrow) => void
  onKeep: (candidate: Candidate) => void
}

export function FoundTable({ answer, asked, onTake, onKeep }: FoundTableProps) {
  const isFound = answer.found.length > 0
  const arrows = isFound ? answer.found : answer.misses
  const candidates = useMemo(() => {
    const { targetGr, quantity } = asked.problem.wishes
    return arrows.map((arrow, at) => ({
      key: `find.${at + 1}`,
      title: isFound ? `Found ${at + 1}` : `Miss ${at + 1}`,
      sheet: foundSheet(asked.sheet, asked.shelf, arrow, { targetGr, quantity }),
    }))
  }, [arrows, isFound, asked])
  if (candidates.length === 0) return null
  return (
    <CandidateTable
      caption={isFound ? 'Arrows found' : 'Nearest misses'}
      candidates={candidates}
      actions={(candidate, at) => (
        <>
          <Button onClick={() => onTake(arrows[at]!)}>
            Take it
            <span className="unseen" data-label="">
              {`: ${candidate.title}`}
            </span>
          </Button>
          <Button kind="text" onClick={() => onKeep(candidate)}>
            Keep to compare
          </Button>
        </>
      )}
      rows={[
        {
          key: 'gives up',
          label: isFound ? 'Gives up' : 'Breaks',
          cell: (at) =>
            isFound ? (
              <Label>{givesUpWords(arrows[at]!, arrows)}</Label>
            ) : (
              arrows[at]!.breaks.map((broken) => (
                <Label key={broken.wish}>
                  {brokenWishWords(broken)}
                  <br />
                </Label>
              ))
            ),
        },
        {
          key: 'spare',
          label: 'Left on the shelf for',
          cell: (at) => <Label>{spareWords(arrows[at]!.figures.spare)}</Label>,
        },
      ]}
    />
  )
}
