/** A timer for any step, and the glues' own times by the temperature of the room. */
import { useState } from 'react'
import type { Bench } from '../../domain/bench/bench'
import { GLUED_AT, JOINT_WORD } from '../../domain/bench/cure-state'
import {
  cureTimer,
  gluesJoint,
  momentAfter,
  roomTemperature,
  running,
  USUAL_ROOM_C,
} from '../../domain/bench/cure-timer'
import type { GluedJoint } from '../../domain/bench/cure-timer'
import { parseDuration } from '../../domain/entry/parse-duration'
import type { Job } from '../../domain/job/job'
import type { Sheet } from '../../domain/sheet/sheet'
import { endTimer, setAnew, setTimer } from '../../state/timer-actions'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { QuantityField } from '../controls/quantity-field'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import { findingWords } from '../words/finding-words'
import { clockWords, durationWords } from '../words/timer-words'
import look from './tools.module.css'

interface TimerFormProps {
  job: Job
  bench: Bench
  sheet: Sheet
  step: string
}

const ROOM = { unit: '°C', min: -20, max: 60, decimals: 0 } as const
const JOINTS = Object.entries(GLUED_AT)

export function TimerForm({ job, bench, sheet, step }: TimerFormProps) {
  const store = useAppStore()
  const read = roomTemperature(bench)
  const [what, setWhat] = useState('')
  const [long, setLong] = useState('')
  const [room, setRoom] = useState(read)
  const [said, setSaid] = useState('')
  const app = store.getState()
  const begun = (name: string, dueAt: string) => setSaid(`${name}: ready ${clockWords(dueAt, app.now())}.`)

  async function start() {
    const entry = parseDuration(long)
    if (entry.kind === 'problem') return setSaid(durationWords(entry.problem, long))
    const startedAt = app.now()
    const name = what.trim() === '' ? 'timer' : what.trim()
    const dueAt = momentAfter(startedAt, entry.seconds)
    if (!(await setTimer(app, job.id, { step, what: name, startedAt, dueAt, temperatureC: null }))) return undefined
    setWhat('')
    setLong('')
    return begun(name, dueAt)
  }

  /** A glue's time from now, or, where it runs already, from when it was glued. */
  async function byGlue(key: string, joint: GluedJoint) {
    const open = running(bench, app.now()).find((timer) => timer.step === key)
    const timer = cureTimer(sheet, joint, open?.startedAt ?? app.now(), room ?? USUAL_ROOM_C)
    if (timer === undefined) return
    if (timer.kind === 'no cure') return setSaid(timer.findings.map(findingWords).join(' '))
    const { kind: _, ...times } = timer
    const saved =
      open === undefined
        ? await setTimer(app, job.id, { step: key, what: JOINT_WORD[joint], ...times })
        : await setAnew(app, job.id, open, times.dueAt, times.temperatureC)
    if (saved) begun(JOINT_WORD[joint], times.dueAt)
    return undefined
  }

  const own = running(bench, app.now()).filter((timer) => GLUED_AT[timer.step] === undefined)
  return (
    <details className={look.tool}>
      <summary>Timers</summary>
      <TextField label="What for" name="timerWhat" value={what} onText={setWhat} onCommit={setWhat} />
      <TextField
        label="How long"
        name="timerLong"
        value={long}
        hint="20 min, 1 h 30, 24 h"
        onText={setLong}
        onCommit={setLong}
      />
      <p className={look.row}>
        <Button onClick={() => void start()}>Start the timer</Button>
        {own.map((timer) => (
          <Button key={timer.id} onClick={() => void endTimer(app, job.id, timer)}>
            <Label>End {timer.what}</Label>
          </Button>
        ))}
      </p>
      <QuantityField
        label="The room is at"
        name="timerRoom"
        asked={ROOM}
        value={room}
        hint={<Label>{read === undefined ? `not read yet; ${USUAL_ROOM_C} °C is assumed` : 'as last read'}</Label>}
        onCommit={({ value }) => setRoom(value)}
        onClear={() => setRoom(undefined)}
      />
      <p className={look.row}>
        {JOINTS.filter(([, joint]) => gluesJoint(sheet, joint)).map(([key, joint]) => (
          <Button key={key} onClick={() => void byGlue(key, joint)}>
            Time the {JOINT_WORD[joint]} by this room
          </Button>
        ))}
      </p>
      <p role="alert" data-label="">
        {said}
      </p>
    </details>
  )
}
