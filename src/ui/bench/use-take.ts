/**
 * Taking a reading at the bench: what was typed, else what the scale shows. The domain answers with a reading, a question
 * about a slip, or a sentence; one at a time, so that a second press doubles nothing.
 */
import { useEffect, useEffectEvent, useRef, useState } from 'react'
import { benchScale } from '../../domain/bench/bench-scale'
import type { Bench, BenchArrow } from '../../domain/bench/bench'
import type { DataPoint } from '../../domain/bench/data-points'
import { DATA_POINTS } from '../../domain/bench/data-points'
import type { Reading } from '../../domain/bench/reading'
import type { ScaleAnswer } from '../../domain/bench/scale-state'
import { scaleAnswer, takesItself } from '../../domain/bench/scale-state'
import type { TakeAnswer } from '../../domain/bench/take-reading'
import { takeReading } from '../../domain/bench/take-reading'
import { landedWet, ownLimit, takingAt } from '../../domain/bench/taking-at'
import type { Job } from '../../domain/job/job'
import type { Sheet } from '../../domain/sheet/sheet'
import { takeAtBench } from '../../state/bench-actions'
import { useApp, useAppStore } from '../app/use-app'
import { burstMeter, useBurst } from './use-burst'
import type { BenchWork } from './use-bench'

interface TakeAt {
  job: Job
  bench: Bench
  sheet: Sheet
  work: BenchWork
  step: string
  arrow: BenchArrow | null
  point: DataPoint | null
  /** From the paper route card: when it was read. */
  paperAt: string | null
}
interface Offered {
  readonly text: string
  readonly source: Reading['source']
  readonly raw: string
}

export function useTake(at: TakeAt, onTaken: (reading: Reading) => void) {
  const { job, bench, sheet, work, step, arrow, point, paperAt } = at
  const store = useAppStore()
  const scale = useApp((s) => s.scale)
  const [text, setText] = useState('')
  const [answer, setAnswer] = useState<TakeAnswer>()
  const [refused, setRefused] = useState<Extract<ScaleAnswer, { kind: 'no' }>['why']>()
  const [offered, setOffered] = useState<Offered>()
  const busy = useRef(false)
  const [meter] = useState(burstMeter)
  const onScale = point !== null && DATA_POINTS[point].unit === 'gr' && scale.kind === 'on' ? scale : undefined

  /** What pressing *Take* takes now. */
  function shown(): Offered | undefined {
    if (text.trim() !== '' || onScale === undefined) {
      const source = paperAt === null ? (meter.isBurst() ? 'keyboard' : 'typed') : 'paper'
      return { text, source, raw: text }
    }
    const told = scaleAnswer(onScale)
    setRefused(told.kind === 'no' ? told.why : undefined)
    if (told.kind === 'no') setAnswer(undefined)
    return told.kind === 'no' ? undefined : { text: told.text, source: 'serial', raw: told.raw }
  }

  async function take(what: Offered | undefined, sure = false) {
    if (point === null || arrow === null || what === undefined || busy.current) return
    const app = store.getState()
    const taking = takingAt(point, arrow, {
      bench,
      expected: work.expected(point, arrow),
      heavyGr: sheet.rules.passes.heavyGr,
      scale: benchScale(app.scaleName, app.shelf.rules.scales, sheet.rules.scales),
    })
    const own = work.landing.arrows.get(arrow.id)
    const landed = point === 'finishedWeight' ? landedWet(own, sheet) : undefined
    const how = { source: what.source, takenAt: paperAt ?? app.now(), landed }
    const given = takeReading(what.text, { ...taking, ...how }, sure)
    setOffered(what)
    setAnswer(given)
    setRefused(undefined)
    if (what.source === 'serial') app.setScale({ cleared: false })
    if (given.kind !== 'taken') return
    const reading = { ...given.reading, raw: what.raw }
    busy.current = true
    if (what.source === 'serial' && onScale !== undefined) app.setScale({ taken: onScale.since })
    const limit = ownLimit(point, own, sheet)
    const saved = await takeAtBench(app, { job: job.id, arrow: arrow.id, step }, reading, sheet, limit)
    busy.current = false
    if (!saved) return
    setText('')
    meter.clear()
    setAnswer(undefined)
    setOffered(undefined)
    onTaken(reading)
  }

  const heard = useEffectEvent(() => {
    if (onScale !== undefined && text.trim() === '' && answer === undefined && takesItself(onScale)) void take(shown())
  })
  // What settles on a scale is an event from outside, as a key pressed is; it has no other way in. Heard again when the
  // entry is free: the next arrow may lie there before the one before it is saved.
  // oxlint-disable-next-line react/set-state-in-effect
  useEffect(() => heard(), [scale, text, answer])
  useBurst((burst) => void take({ text: burst, source: 'keyboard', raw: burst }))

  return {
    text,
    answer,
    refused,
    onScale,
    /** What a question about a slip is asked of. */
    offeredText: offered?.text ?? '',
    type(typed: string, timeStamp: number) {
      if (typed.length <= 1) meter.clear()
      meter.key(timeStamp)
      setText(typed)
    },
    take: () => void take(shown()),
    takeAnyway: () => void take(offered, true),
    /** What was typed off a scale in grams; what a scale sent says its own unit. */
    takeInGrams:
      offered === undefined || offered.source === 'serial'
        ? undefined
        : () => void take({ ...offered, text: `${offered.text.trim()} g`, raw: `${offered.raw.trim()} g` }),
    weighAgain() {
      setAnswer(undefined)
      setOffered(undefined)
    },
  }
}
