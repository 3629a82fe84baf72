/** Freezing the sheet, with a reason from version 2 on; and starting the set on a frozen one. */
import { useLayoutEffect, useRef, useState } from 'react'
import { useLocation } from 'wouter'
import type { PlanProblem } from '../../domain/sheet/plan-problem'
import type { OpenJob } from '../../state/open-job'
import { beginSet, freezeSheet } from '../../state/sheet-actions'
import type { Sheet } from '../../domain/sheet/sheet'
import { codeOf } from '../../domain/records/code'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Status } from '../controls/status'
import { Notice } from '../controls/notice'
import { Panel } from '../controls/panel'
import { TextField } from '../controls/text-field'
import { planProblemWords } from '../words/plan-problem-words'
import { showMoment } from '../words/dates'
import { Label } from '../figures/label'
import { Link } from 'wouter'
import look from './freeze-panel.module.css'

interface FreezePanelProps {
  open: OpenJob
  sheet: Sheet
  problems: readonly PlanProblem[]
}

export function FreezePanel({ open, sheet, problems }: FreezePanelProps) {
  const store = useAppStore()
  const [, go] = useLocation()
  const [reason, setReason] = useState('')
  const [said, setSaid] = useState<string>()
  const { job } = open
  const last = job.frozen.at(-1)
  const stops = problems.filter(({ level }) => level === 'stop')

  async function freezeNow() {
    const [first] = stops
    if (first !== undefined) return setSaid(`Not frozen. ${planProblemWords(first)}`)
    if (last !== undefined && reason.trim() === '') {
      return setSaid('Not frozen. A later version needs a reason: what changed, and why.')
    }
    if (await freezeSheet(store.getState(), job, sheet, last === undefined ? undefined : reason.trim())) {
      setSaid(`Frozen as version ${sheet.version}.`)
      setReason('')
    }
  }
  const latest = useRef(freezeNow)
  useLayoutEffect(() => {
    latest.current = freezeNow
  })
  /** What was chosen a moment ago may still be on its way to the disk: it belongs to what is frozen. */
  async function freeze() {
    await store.getState().whenSaved()
    await latest.current()
  }
  async function start() {
    const frozen = last === undefined ? undefined : open.sheets.get(last.sheet)
    if (frozen === undefined) return setSaid('Nothing to build on yet: freeze the sheet first.')
    if (job.bench !== null) return go(`/job/${job.id}/bench`)
    if (await beginSet(store.getState(), job, frozen)) go(`/job/${job.id}/bench`)
    return undefined
  }

  return (
    <Panel title="Freeze" quiet>
      {problems.map((problem, at) => (
        // The same code may come twice, of two parts.
        <Notice key={`${problem.code}.${at}`} level={problem.level}>
          <span data-label="">{planProblemWords(problem)}</span>
        </Notice>
      ))}
      {last === undefined ? null : (
        <>
          <p>
            <Label>
              Version {last.version} frozen {showMoment(last.at)} by {last.by}, record {codeOf(last.sheet)}.
            </Label>
          </p>
          <p className={look.prints}>
            <Link to={`/print/build-sheet/${last.sheet}`}>Print the build sheet</Link>
            <Link to={`/print/route-card/${last.sheet}`}>Print the route card</Link>
            <Link to={`/print/client-sheet/${job.id}`}>Print the client’s sheet</Link>
          </p>
          <TextField
            label="Reason for the next version"
            name="reason"
            value={reason}
            onText={setReason}
            onCommit={setReason}
          />
        </>
      )}
      <Status>
        <Label>{said}</Label>
      </Status>
      <p className={look.actions}>
        <Button kind={last === undefined ? 'primary' : 'plain'} onClick={() => void freeze()}>
          <Label>Freeze version {sheet.version}</Label>
        </Button>{' '}
        <Button kind={last === undefined ? 'plain' : 'primary'} onClick={() => void start()}>
          {job.bench === null ? 'Start the set' : 'Go to the bench'}
        </Button>
      </p>
    </Panel>
  )
}
