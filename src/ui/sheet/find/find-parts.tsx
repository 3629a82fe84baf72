/** Searches the shelf for the whole arrow, or for what the sheet leaves open; the best few side by side. */
import { useMemo, useState } from 'react'
import { grains } from '../../../core/quantity'
import type { Asking } from '../../../domain/search/asking'
import { heaviestAtSpeed, usualAsking, wishesOf } from '../../../domain/search/asking'
import type { FoundArrow } from '../../../domain/search/found-arrow'
import { searchProblem } from '../../../domain/search/search-problem'
import { takeFound } from '../../../state/search-actions'
import { useApp, useAppStore } from '../../app/use-app'
import { Button } from '../../controls/button'
import { Notice } from '../../controls/notice'
import { Status } from '../../controls/status'
import { Label } from '../../figures/label'
import { Value } from '../../figures/value'
import { endWords, progressWords, RANKED } from '../../words/find-words'
import type { ToolProps } from '../tools/tool'
import { AskingForm } from './asking-form'
import look from './find.module.css'
import type { Asked } from './found-table'
import { FoundTable } from './found-table'
import { isLeftOut, LeftOut, SearchFindings } from './search-notices'
import { useFind } from './use-find'

export function FindParts({ open, sheet, onKeep }: ToolProps) {
  const store = useAppStore()
  const shelf = useApp((s) => s.shelf)
  const [asking, setAsking] = useState<Asking>(() => usualAsking(sheet, open.job.answers))
  const [asked, setAsked] = useState<Asked>()
  const [said, setSaid] = useState('')
  const { state, find, stop } = useFind()
  const onShelf = useMemo(() => [...new Set([...shelf.parts.values()].map(({ body }) => body.kind))], [shelf])
  const { leastSpeedFps, targetGr } = asking.numbers
  const heaviest = leastSpeedFps === undefined ? undefined : heaviestAtSpeed(sheet, leastSpeedFps)

  function search() {
    const problem = searchProblem(sheet, shelf, wishesOf(sheet, asking))
    setAsked({ sheet, shelf, problem })
    setSaid('')
    void find(problem)
  }
  async function take(arrow: FoundArrow) {
    if (asked === undefined) return
    const { targetGr: target, quantity } = asked.problem.wishes
    if (await takeFound(store.getState(), sheet, arrow, { targetGr: target, quantity })) {
      setSaid('On the sheet. The lines it replaced are gone; glue stays as it was.')
    }
  }
  const answer = state.kind === 'ended' && state.end.kind === 'found' ? state.end.answer : undefined
  const partName = (id: string) => shelf.parts.get(id)?.body.name ?? 'a part'
  return (
    <>
      <AskingForm sheet={sheet} asking={asking} onShelf={onShelf} onAsk={setAsking} />
      {heaviest !== undefined && targetGr !== undefined && heaviest < targetGr ? (
        <Notice level="look">
          So fast this bow throws at most <Value name="find.heaviest" of={grains(heaviest)} unit="gr" decimals={0} />.
          The weight decides the speed, not the parts: lower one of the two.
        </Notice>
      ) : null}
      <div className={look.run}>
        <Button kind="primary" onClick={search}>
          {state.kind === 'searching' ? 'Search again' : 'Search the shelf'}
        </Button>
        {state.kind === 'searching' ? (
          <>
            <Button onClick={stop}>Stop</Button>
            <progress max={1} value={state.progress?.done ?? 0} aria-label="How far the search has come" />
          </>
        ) : null}
        <Status>
          <Label>
            {said !== ''
              ? said
              : state.kind === 'ended'
                ? endWords(state.end)
                : state.kind === 'searching' && state.progress !== undefined
                  ? progressWords(state.progress.done, state.progress.counts.visited)
                  : ''}
          </Label>
        </Status>
      </div>
      {answer === undefined || asked === undefined ? null : (
        <>
          <SearchFindings findings={answer.findings.filter((each) => !isLeftOut(each))} partName={partName} />
          <FoundTable answer={answer} asked={asked} onTake={(arrow) => void take(arrow)} onKeep={onKeep} />
          <p className={look.ranked}>{RANKED}</p>
          <LeftOut findings={answer.findings.filter(isLeftOut)} partName={partName} />
        </>
      )}
    </>
  )
}
