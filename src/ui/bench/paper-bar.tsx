/** Readings off the paper route card: from when they are is said once, and each then counts as taken at that time. */
import { useState } from 'react'
import { parseClock } from '../../domain/entry/parse-clock'
import { useApp } from '../app/use-app'
import { Button } from '../controls/button'
import { DayField } from '../controls/day-field'
import { TextField } from '../controls/text-field'
import { dayOfMoment, momentAt, showMoment } from '../words/dates'
import { paperTimeWords } from '../words/paper-time-words'
import look from './tools.module.css'

interface PaperBarProps {
  /** Since when the entries count; null while it is being said. */
  at: string | null
  onAt: (at: string) => void
  onStop: () => void
}

export default function PaperBar({ at, onAt, onStop }: PaperBarProps) {
  const now = useApp((s) => s.now)
  const today = dayOfMoment(now())
  const [day, setDay] = useState(today)
  const [clock, setClock] = useState('')
  const [said, setSaid] = useState('')
  function begin() {
    const entry = parseClock(clock)
    if (entry.kind === 'problem') return setSaid(paperTimeWords(entry.problem, clock))
    const moment = momentAt(day, entry.hour, entry.minute)
    if (moment > now()) return setSaid(paperTimeWords('to come', showMoment(moment)))
    setSaid('')
    return onAt(moment)
  }
  if (at !== null)
    return (
      <fieldset className={look.paper}>
        <legend className="unseen">From paper</legend>
        <span data-label="">
          <b>From paper:</b> what is entered now counts as read {showMoment(at)}.
        </span>
        <Button kind="text" onClick={onStop}>
          Back to the bench
        </Button>
      </fieldset>
    )
  return (
    <form
      className={look.paper}
      aria-label="From paper"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        begin()
      }}
    >
      <DayField label="Read on" name="paperDay" today={today} value={day} onCommit={setDay} />
      <TextField
        label="At"
        name="paperClock"
        value={clock}
        hint="as the card says, 14:05"
        onText={setClock}
        onCommit={setClock}
      />
      <Button type="submit">Enter from paper</Button>
      <Button kind="text" onClick={onStop}>
        Never mind
      </Button>
      <p role="alert" data-label="">
        {said}
      </p>
    </form>
  )
}
