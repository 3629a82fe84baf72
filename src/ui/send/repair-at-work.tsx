/** A repair under way: its steps in their order, the time its glue has left, and the weight that closes it. */
import { useState } from 'react'
import type { Finding } from '../../core/finding'
import type { BenchArrow } from '../../domain/bench/bench'
import { JOINT_WORD } from '../../domain/bench/cure-state'
import { cureTimer, glueOf } from '../../domain/bench/cure-timer'
import { closingProblems } from '../../domain/send/repair'
import type { RepairStep } from '../../domain/send/repair-steps'
import { cureOfRepair, jointOf, namedStep, stepLeft } from '../../domain/send/repair-steps'
import type { Repair } from '../../domain/send/repairs'
import type { Sheet } from '../../domain/sheet/sheet'
import { closeRepairOf, doRepairStep, leaveRepair } from '../../state/repair-actions'
import type { OpenJob } from '../../state/open-job'
import { endRepairCureEarly, setAnew } from '../../state/timer-actions'
import { useApp, useAppStore } from '../app/use-app'
import { useNow } from '../bench/use-now'
import { Button } from '../controls/button'
import { QuantityField } from '../controls/quantity-field'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { showMoment } from '../words/dates'
import { repairProblemWords, repairStepWords, repairTitle } from '../words/repair-words'
import { dueWords, NO_ALARM, timerWords } from '../words/timer-words'
import { WEIGHED_ASKED } from './arrow-dialog'
import look from './send.module.css'
import { useWeigh } from './use-weigh'

interface AtWorkProps {
  open: OpenJob
  sheet: Sheet
  repair: Repair
  arrow: BenchArrow
}

const ROOM = { unit: '°C', min: -20, max: 60, decimals: 0 } as const
const STEPS = ['look', 'strip', 'fit', 'weigh'] as const

export function RepairAtWork({ open, sheet, repair, arrow }: AtWorkProps) {
  const store = useAppStore()
  const clock = useApp((s) => s.now)
  const { job } = open
  const dues = cureOfRepair(repair, clock())?.running.map(({ dueAt }) => dueAt)
  const now = useNow(dues?.toSorted()[0])
  const [room, setRoom] = useState<number>()
  const [why, setWhy] = useState('')
  const [said, setSaid] = useState('')
  const { value, setEntry, weigh } = useWeigh({ bench: job.bench!, arrow, sheet, lastGr: repair.before.value })
  const joint = jointOf(repair, sheet)
  const left = stepLeft(repair, sheet)
  const curing = cureOfRepair(repair, now)
  const glue = joint === undefined ? undefined : glueOf(sheet, joint)
  const kind = sheet.parts.find(({ id }) => id === sheet.plan.lines.find((line) => line.id === repair.line)?.part)?.part
    .kind

  /** Read when it is asked for: few repairs meet a room too cold. */
  const whyNot = async (findings: readonly Finding[]) => {
    const { findingWords } = await import('../words/finding-words')
    return findings.map(findingWords).join(' ')
  }
  async function done(step: RepairStep) {
    const app = store.getState()
    if (step !== 'fit' || joint === undefined) {
      if (await doRepairStep(app, job, repair, { step, sheet, cure: null }, '')) setSaid('')
      return undefined
    }
    if (room === undefined)
      return setSaid('Not begun: read the room first, its warmth decides how long the glue takes.')
    const cure = cureTimer(sheet, joint, app.now(), room)
    if (cure === undefined) return undefined
    if (cure.kind === 'no cure') return setSaid(`Not begun. ${await whyNot(cure.findings)}`)
    if (await doRepairStep(app, job, repair, { step, sheet, cure }, `${JOINT_WORD[joint]}, no. ${arrow.no}`))
      setSaid('')
    return undefined
  }
  /** The same start at the room's new warmth. */
  async function again() {
    const [timer] = curing?.running ?? []
    if (timer === undefined || joint === undefined) return undefined
    if (room === undefined) return setSaid('Not set anew: how warm is the room?')
    const cure = cureTimer(sheet, joint, timer.startedAt, room)
    if (cure?.kind === 'no cure') return setSaid(`Not set anew. ${await whyNot(cure.findings)}`)
    if (cure !== undefined && (await setAnew(store.getState(), job.id, timer, cure.dueAt, cure.temperatureC)))
      setSaid('')
    return undefined
  }
  async function endEarly() {
    if (curing === undefined) return undefined
    if (why.trim() === '') return setSaid('Not ended: say why. The reason stands in the record as a deviation.')
    if (await endRepairCureEarly(store.getState(), job.id, curing, why.trim())) setSaid('')
    return undefined
  }
  async function close() {
    const weighed = weigh()
    const at = store.getState().now()
    const reading = weighed.kind === 'taken' ? weighed.reading : undefined
    const [problem] = closingProblems(job, sheet, repair, reading, at)
    if (problem !== undefined && problem.code !== 'not-weighed')
      return setSaid(`Not closed. ${repairProblemWords(problem, at)}`)
    if (weighed.kind === 'said') return setSaid(weighed.said)
    if (reading === undefined) return setSaid(`Not closed. ${repairProblemWords({ code: 'not-weighed' }, at)}`)
    await closeRepairOf(store.getState, sheet, repair, reading, at)
    return undefined
  }
  async function leave() {
    if (why.trim() === '') return setSaid('Not left: say why.')
    await leaveRepair(store.getState, sheet, repair, why.trim())
    return undefined
  }

  const roomField = (
    <QuantityField
      label="The room is at"
      name={`room.${arrow.no}`}
      asked={ROOM}
      value={room}
      hint={glue === undefined ? undefined : <Label>the time is that of {glue.name}</Label>}
      onCommit={(entry) => setRoom(entry.value)}
      onClear={() => setRoom(undefined)}
    />
  )
  const doing = repairStepWords(left, sheet, joint)
  const title = repairTitle(arrow.no, kind)
  return (
    <section className={look.repair} aria-label={title}>
      <h3>
        <Label>{title}</Label>
      </h3>
      <p>
        <Label>
          Reason: {repair.reason}. Begun {showMoment(repair.begunAt)} by {repair.begunBy}, as it came back
        </Label>{' '}
        <Read name={`repair.${arrow.no}.before`} value={repair.before.value} unit="gr" decimals={1} />
      </p>
      <ol>
        {STEPS.map((step) => {
          const words = repairStepWords(step, sheet, joint)
          const confirmed =
            step === 'weigh' ? undefined : repair.done.find((each) => each.step === namedStep(repair, step, sheet))
          const isNow = step === left
          return (
            <li key={step} aria-current={isNow ? 'step' : undefined}>
              <Label>
                {isNow ? <b>{words.title}.</b> : words.title}
                {isNow ? ` ${words.what}` : ''}
                {confirmed === undefined ? '' : `: done ${showMoment(confirmed.at)}, ${confirmed.by}`}
              </Label>
            </li>
          )
        })}
      </ol>
      {left === 'weigh'
        ? repair.timers.map((timer) =>
            timer.endedAt === null ? (
              <p key={timer.id} data-label="" aria-live="polite">
                <b>{timer.what}</b>: {timer.dueAt > now ? timerWords(timer, now, true) : dueWords(timer, now)}.{' '}
                {timer.dueAt > now ? NO_ALARM : ''}
              </p>
            ) : null,
          )
        : null}
      {left === 'fit' && joint !== undefined ? roomField : null}
      {left === 'weigh' ? (
        <QuantityField
          label="Finished weight now, head on"
          name={`repairedWeight.${arrow.no}`}
          asked={WEIGHED_ASKED}
          value={value}
          onCommit={setEntry}
          onClear={() => setEntry(undefined)}
        />
      ) : null}
      <p>
        <Button kind="primary" onClick={() => void (left === 'weigh' ? close() : done(left))}>
          {doing.done}
          <span className="unseen" data-label="">
            {' '}
            no. {arrow.no}
          </span>
        </Button>
      </p>
      <Status>{said}</Status>
      <details>
        <summary>
          {curing === undefined ? 'Leave this repair' : 'Another time for the glue, or leave this repair'}
        </summary>
        {curing === undefined ? null : (
          <>
            {roomField}
            <p>
              <Button onClick={() => void again()}>Set its time anew by this room</Button>
            </p>
          </>
        )}
        <TextField wide label="Why" name={`repairWhy.${arrow.no}`} value={why} onText={setWhy} onCommit={setWhy} />
        <p className={look.leave}>
          {curing === undefined ? null : (
            <Button onClick={() => void endEarly()}>End the cure early, as a deviation</Button>
          )}
          <Button onClick={() => void leave()}>Leave it, the old part stays</Button>
        </p>
      </details>
    </section>
  )
}
