/**
 * The one entry of a step: a reading with its broad action, or a confirmation. Unfinished text is local; Enter offers it,
 * and an empty entry offers what the scale shows. Nothing typed is lost.
 */
import { lazy, Suspense, useRef, useState } from 'react'
import type { Bench } from '../../domain/bench/bench'
import type { DataPoint } from '../../domain/bench/data-points'
import { DATA_POINTS } from '../../domain/bench/data-points'
import { ownSheet } from '../../domain/bench/own-sheet'
import { pointsOf } from '../../domain/bench/points-of'
import type { NextThing } from '../../domain/bench/progress'
import type { Slip } from '../../domain/bench/slips'
import type { Job } from '../../domain/job/job'
import type { Sheet } from '../../domain/sheet/sheet'
import { Button } from '../controls/button'
import { Notice } from '../controls/notice'
import { inGramsWords, pointInLine, pointWord, readingText, refusedWords, slipWords } from '../words/bench-words'
import { untakenWords } from '../words/done-words'
import { scaleRefusedWords, takeWords } from '../words/scale-words'
import { writtenUnit } from '../words/unit-words'
import look from './bench.module.css'
import type { BenchWork } from './use-bench'
import { useFinish } from './use-finish'
import type { LastOnPage } from './use-finish'
import { useTake } from './use-take'

const NoteDialog = lazy(() => import('./note-dialog'))

interface EntryProps extends LastOnPage {
  job: Job
  bench: Bench
  sheet: Sheet
  work: BenchWork
  thing: NextThing
  /** The reading is there already and is only looked at. */
  isLooking: boolean
  paperAt: string | null
  /** What is typed beside it, in a panel of the step, and not taken. */
  beside: string
  onSaid: (words: string) => void
  onNext: () => void
}

/** A step whose one optional reading is the work itself, taken as often as the coach asks. */
const STAYS: Readonly<Record<string, DataPoint>> = {
  trim: 'trimWeight',
  edge: 'edgeWeight',
  bond: 'bondWeight',
}

const isGrams = (slip: Slip): slip is Extract<Slip, { code: 'grams-for-grains' }> => slip.code === 'grams-for-grains'

export function Entry({ thing, isLooking, paperAt, beside, onSaid, onNext, just, onDid, ...at }: EntryProps) {
  const { job, bench, sheet, work } = at
  const { step, arrow } = thing
  const own = arrow === null ? sheet : ownSheet(arrow, sheet)
  // The clock takes run-out with its angle; one by one they would be a long list.
  const optional = pointsOf(step, own).filter((each) => step.optional.includes(each) && !each.startsWith('runOut'))
  const again = optional.find((each) => each === STAYS[step.key]) ?? null
  const stays = again !== null
  const others = optional.filter((each) => each !== again)
  const [also, setAlso] = useState<DataPoint | null>(again)
  const [isNoting, setNoting] = useState(false)
  const input = useRef<HTMLInputElement>(null)
  const point = thing.point !== null && !isLooking ? thing.point : also
  const entry = useTake({ job, bench, sheet, work, step: step.key, arrow, point, paperAt }, (reading) => {
    onSaid(`No. ${arrow?.no}: ${pointInLine(reading.point)} ${readingText(reading.point, reading.value)} taken.`)
    onDid({ step: step.key, arrow: arrow?.id ?? null })
    if (stays) setAlso(again)
    if (stays || also !== null) input.current?.focus()
    else onNext()
  })
  const finish = useFinish({ job, bench, sheet, thing, onSaid, onNext, just, onDid })

  const shown = entry.text.trim()
  const { answer, onScale } = entry
  const label = point === null || arrow === null ? '' : `No. ${arrow.no}, ${pointInLine(point)}`
  const problem =
    point === null
      ? ''
      : entry.refused !== undefined
        ? scaleRefusedWords(label, entry.refused)
        : answer === undefined
          ? ''
          : refusedWords(label, answer, point)
  const grams = answer?.kind === 'asked' ? answer.slips.find(isGrams) : undefined
  /** What is typed and not taken would go with the step. */
  function unlessTyped(go: () => void) {
    const untaken = shown || beside.trim()
    if (untaken === '') return go()
    onSaid(untakenWords(untaken))
    if (shown !== '') input.current?.focus()
  }
  const leave = () => unlessTyped(finish.done)
  const canConfirm = step.confirm !== 'none' && (thing.point === null || isLooking)
  return (
    <form
      className={look.entry}
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        if (point === null || (shown === '' && onScale === undefined && stays && canConfirm)) leave()
        else entry.take()
      }}
    >
      {point === null ? null : (
        <label className={look.field}>
          <span data-label="">{label}</span>
          <span className={look.inputRow}>
            <input
              ref={input}
              name="reading"
              type="text"
              inputMode="decimal"
              autoComplete="off"
              // The bench is one entry: whoever arrives at a step is there to type or to weigh.
              // oxlint-disable-next-line jsx-a11y/no-autofocus
              autoFocus
              value={entry.text}
              aria-invalid={problem !== ''}
              aria-describedby="bench-answer"
              onChange={(event) => entry.type(event.target.value, event.timeStamp)}
            />
            <span aria-hidden="true" data-label="">
              {writtenUnit(DATA_POINTS[point].unit)}
            </span>
          </span>
        </label>
      )}
      <div id="bench-answer" role="alert" data-label="">
        {problem === '' ? null : <Notice level="stop">{problem}</Notice>}
        {answer?.kind === 'asked' ? (
          <Notice level="look">
            {answer.slips.map(slipWords).join(' ')}{' '}
            <Button onClick={entry.takeAnyway}>Yes, take {entry.offeredText}</Button>{' '}
            {grams === undefined || entry.takeInGrams === undefined ? null : (
              <Button onClick={entry.takeInGrams}>{inGramsWords(grams)}</Button>
            )}{' '}
            <Button
              onClick={() => {
                entry.weighAgain()
                input.current?.select()
              }}
            >
              Weigh again
            </Button>
          </Notice>
        ) : null}
      </div>
      {others.length === 0 || arrow === null ? null : (
        <p className={look.also}>
          Also to read:{' '}
          {others.map((each) => (
            <Button key={each} kind="text" onClick={() => setAlso(each)}>
              <span data-label="">{pointWord(each)}</span>
            </Button>
          ))}
        </p>
      )}
      <div className={look.actions}>
        <Button broad onClick={finish.undo}>
          Undo
        </Button>
        <Button broad onClick={() => setNoting(true)}>
          Note
        </Button>
        {point === null ? null : (
          <Button broad kind="primary" type="submit">
            <span data-label="">{takeWords(shown, onScale, step.key === 'trim')}</span>
          </Button>
        )}
        {canConfirm ? (
          <Button
            broad
            kind={point === null ? 'primary' : 'plain'}
            // Where nothing is read, Enter confirms.
            // oxlint-disable-next-line jsx-a11y/no-autofocus
            autoFocus={point === null}
            onClick={leave}
          >
            {step.confirm === 'set' ? 'Done, the whole set' : 'Done, next'}
          </Button>
        ) : isLooking ? (
          <Button broad kind={point === null ? 'primary' : 'plain'} onClick={onNext}>
            Go on
          </Button>
        ) : null}
      </div>
      {finish.past === undefined ? null : (
        <p>
          <Button onClick={() => unlessTyped(finish.passHold)}>Go past the hold, as a deviation</Button>
        </p>
      )}
      {finish.early === undefined ? null : (
        <p>
          <Button onClick={() => unlessTyped(finish.endEarly)}>End it early, as a deviation</Button>
        </p>
      )}
      {isNoting ? (
        <Suspense>
          <NoteDialog
            job={job.id}
            arrow={arrow?.id ?? null}
            step={step.key}
            onSaid={onSaid}
            onClose={() => setNoting(false)}
          />
        </Suspense>
      ) : null}
    </form>
  )
}
