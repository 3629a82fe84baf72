/** The spin of one raw shaft: what the dial shows at each station, and a clock to tap for where. A tap takes both. */
import { useEffect, useState } from 'react'
import type { BenchArrow } from '../../domain/bench/bench'
import { standing } from '../../domain/bench/bench'
import type { SpinStation } from '../../domain/bench/spun-shaft'
import { SPIN_STATIONS, stationPoints, stationRead } from '../../domain/bench/spun-shaft'
import { takeReading } from '../../domain/bench/take-reading'
import { inDegrees, inInches } from '../../core/quantity'
import type { Job } from '../../domain/job/job'
import type { Sheet } from '../../domain/sheet/sheet'
import { takeTogether } from '../../state/run-out-actions'
import { useAppStore } from '../app/use-app'
import { Notice } from '../controls/notice'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { pointInLine, refusedWords } from '../words/bench-words'
import { STATIONS_STAND, stationWords, takenWords } from '../words/run-out-words'
import { ClockDial } from './clock-dial'
import look from './run-out.module.css'
import { WindowFigures } from './window-figures'

interface SpinPanelProps {
  job: Job
  arrow: BenchArrow
  sheet: Sheet
  step: string
  onSaid: (words: string) => void
  /** What stands in its field: a run-out that no place on the clock was tapped for yet. */
  onTyped: (text: string) => void
}

export default function SpinPanel({ job, arrow, sheet, step, onSaid, onTyped }: SpinPanelProps) {
  const store = useAppStore()
  const unread = SPIN_STATIONS.find((each) => stationRead(arrow, each) === undefined)
  const [chosen, setChosen] = useState<SpinStation>()
  const [text, setText] = useState('')
  const [problem, setProblem] = useState('')
  useEffect(() => onTyped(text), [onTyped, text])
  useEffect(() => () => onTyped(''), [onTyped])
  const station = chosen ?? unread ?? 1
  const points = stationPoints(station)
  const read = stationRead(arrow, station)

  async function take(angle: number) {
    const app = store.getState()
    const at = (point: typeof points.tir, raw: string) =>
      takeReading(
        raw,
        {
          point,
          source: 'typed',
          scale: '',
          stable: true,
          attempt: standing(arrow, point).length + 1,
          takenAt: app.now(),
        },
        true,
      )
    const tir = at(points.tir, text)
    if (tir.kind !== 'taken') {
      setProblem(refusedWords(`No. ${arrow.no}, ${pointInLine(points.tir)}`, tir, points.tir))
      return
    }
    const turn = at(points.angle, `${angle}`)
    if (turn.kind !== 'taken') throw new Error('a place of the clock is an angle')
    setProblem('')
    setText('') // it is taken from here on; what cannot be saved stands at the foot of the screen
    if (!(await takeTogether(app, { job: job.id, arrow: arrow.id, step }, [tir.reading, turn.reading], sheet))) return
    onSaid(takenWords(arrow.no, station, tir.reading.value, angle))
    setChosen(undefined)
  }

  return (
    <section className={look.panel} aria-labelledby="spin">
      <h2 id="spin">Run-out along the shaft</h2>
      <ul className={look.stations}>
        {SPIN_STATIONS.map((each) => {
          const own = stationRead(arrow, each)
          return (
            <li key={each}>
              <button type="button" aria-pressed={each === station} onClick={() => setChosen(each)}>
                <Label>Station {each}</Label>
                <br />
                {own === undefined ? (
                  '–'
                ) : (
                  <>
                    <Read
                      name={`bench.${arrow.no}.runOut${each}`}
                      value={inInches(own.tir)}
                      unit="in"
                      decimals={4}
                      bare
                    />{' '}
                    <Read
                      name={`bench.${arrow.no}.runOutAngle${each}`}
                      value={inDegrees(own.angle)}
                      unit="°"
                      decimals={0}
                    />
                  </>
                )}
              </button>
            </li>
          )
        })}
      </ul>
      <div className={look.spin}>
        <div>
          <label className={look.field}>
            <span data-label="">{stationWords(station)}: total run-out, in</span>
            <input
              name="runOut"
              type="text"
              inputMode="decimal"
              autoComplete="off"
              value={text}
              placeholder={read === undefined ? undefined : 'again'}
              aria-invalid={problem !== ''}
              onChange={(event) => setText(event.target.value)}
            />
          </label>
          <p>{text.trim() === '' ? 'Then tap where on the clock its high side came round.' : 'Now tap the clock.'}</p>
          {problem === '' ? null : (
            <div role="alert">
              <Notice level="stop">{problem}</Notice>
            </div>
          )}
          <p>{STATIONS_STAND}</p>
        </div>
        <ClockDial
          at={read === undefined ? undefined : Math.round(inDegrees(read.angle))}
          label={`Angle of the high side, ${stationWords(station)}`}
          onPick={(angle) => void take(angle)}
        />
      </div>
      <WindowFigures arrow={arrow} sheet={sheet} />
    </section>
  )
}
