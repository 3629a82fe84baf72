/** Parts received together become a lot; a glue also says when it was opened and until when it is good. */
import { useState } from 'react'
import { parseQuantity } from '../../domain/entry/parse-quantity'
import type { Part } from '../../domain/stock/part'
import type { Standing } from '../../domain/stock/shelf'
import { receiveLot } from '../../state/lot-actions'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { DayField } from '../controls/day-field'
import { Notice } from '../controls/notice'
import { Panel } from '../controls/panel'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import { entryWords } from '../words/entry-words'
import look from './parts.module.css'

const COUNT = { unit: '1', min: 1, max: 5000, whole: true } as const

export function ReceiveLot({ part }: { part: Standing<Part> }) {
  const store = useAppStore()
  const now = useApp((s) => s.now)
  const [code, setCode] = useState('')
  const [count, setCount] = useState('')
  const [expires, setExpires] = useState<string>()
  const [problem, setProblem] = useState('')
  async function receive() {
    if (code.trim() === '') return setProblem('Lot code: nothing entered. Give the lot the code it is marked with.')
    const entry = parseQuantity(count, COUNT)
    if (entry.kind === 'problem') return setProblem(entryWords('Pieces', entry.problem, count, COUNT))
    setProblem('')
    const lot = {
      code: code.trim(),
      receivedOn: now().slice(0, 10),
      received: entry.value,
      ...(expires === undefined ? {} : { expiresOn: expires }),
    }
    if (await receiveLot(store.getState(), part.id, lot)) {
      setCode('')
      setCount('')
      setExpires(undefined)
    }
    return undefined
  }
  return (
    <Panel title="Receive a lot" quiet>
      <TextField label="Lot code" name="lotCode" value={code} onText={setCode} onCommit={setCode} />
      <TextField label="Pieces" name="lotCount" value={count} onText={setCount} onCommit={setCount} />
      {part.body.kind === 'glue' ? (
        <DayField
          label="Good until"
          name="expiresOn"
          value={expires}
          today={now().slice(0, 10)}
          onCommit={setExpires}
          onClear={() => setExpires(undefined)}
        />
      ) : null}
      {problem === '' ? null : (
        <Notice level="stop">
          <Label>{problem}</Label>
        </Notice>
      )}
      <p className={look.actions}>
        <Button onClick={() => void receive()}>Receive</Button>
      </p>
    </Panel>
  )
}
