/** What helps a book that stopped: the rescue after a failed write, or going on without what is lost. */
import { useState } from 'react'
import type { Recovered } from '../../domain/ports'
import { useApp } from '../app/use-app'
import { Button } from '../controls/button'
import { Notice } from '../controls/notice'
import { Panel } from '../controls/panel'
import { Status } from '../controls/status'
import { Label } from '../figures/label'
import { recoveredWords } from '../words/archive-words'
import { repositoryWords } from '../words/repository-words'
import { download } from './download'
import look from './shop.module.css'

export function Rescue() {
  const repository = useApp((s) => s.repository)
  const state = useApp((s) => s.repositoryState)
  const saveAgain = useApp((s) => s.saveAgain)
  const [recovered, setRecovered] = useState<Recovered>()
  if (repository === null) return null
  const isStopped = state.kind === 'failed' || state.kind === 'missing'
  if (!isStopped && recovered === undefined) return null

  async function rescue() {
    if (repository === null) return
    const ended = await repository.archive.recover()
    setRecovered(ended)
    if (ended.kind !== 'recovered' && ended.file !== undefined) download(ended.file, 'grainwright-rescue.jsonl')
    if (ended.kind === 'recovered') await saveAgain()
  }
  return (
    <Panel title="Rescue" quiet>
      {isStopped ? <Notice level="stop">{repositoryWords(state)}</Notice> : null}
      {state.kind === 'failed' ? (
        <p className={look.actions}>
          <Button kind="primary" onClick={() => void rescue()}>
            Rescue the book
          </Button>
          <span>Everything is written out, checked, founded anew and compared. Do not close this page meanwhile.</span>
        </p>
      ) : null}
      {state.kind === 'missing' ? (
        <p className={look.actions}>
          <span>Add the last backup below. Only when there is none:</span>
          <Button onClick={() => void repository.acceptLoss()}>Go on without the missing records</Button>
        </p>
      ) : null}
      <Status>
        <Label>{recovered === undefined ? '' : recoveredWords(recovered)}</Label>
      </Status>
    </Panel>
  )
}
