/** The scale against a check weight: kept with how far it was off, and listed by time. */
import { useState } from 'react'
import type { Bench } from '../../domain/bench/bench'
import type { ShopScale } from '../../domain/bench/bench-scale'
import { driftGr, isOff } from '../../domain/bench/scale-check'
import { scaleAnswer } from '../../domain/bench/scale-state'
import { parseQuantity } from '../../domain/entry/parse-quantity'
import type { Job } from '../../domain/job/job'
import { keepScaleCheck } from '../../state/scale-actions'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import { entryWords } from '../words/entry-words'
import { showPlain } from '../words/format'
import { checkRecordWords, OFF_WORDS } from '../words/scale-check-words'
import { scaleRefusedWords } from '../words/scale-words'
import look from './scale.module.css'

const WEIGHT = { unit: 'gr', min: 1, max: 5000 } as const

interface ScaleCheckProps {
  job: Job
  bench: Bench
  own: ShopScale
}

export function ScaleCheck({ job, bench, own }: ScaleCheckProps) {
  const store = useAppStore()
  const scale = useApp((s) => s.scale)
  const last = bench.scaleChecks.findLast((each) => each.scale === own.name)
  const known = own.checkWeightGr ?? last?.checkWeightGr
  const [weight, setWeight] = useState(known === undefined ? '' : showPlain(known))
  const [read, setRead] = useState('')
  const [said, setSaid] = useState('')
  async function keep() {
    const fromScale = read.trim() === '' && scale.kind === 'on' ? scaleAnswer(scale) : undefined
    if (fromScale?.kind === 'no') return setSaid(scaleRefusedWords('The scale', fromScale.why))
    const shown = fromScale?.kind === 'weight' ? fromScale.text : read
    const [is, shows] = [parseQuantity(weight, WEIGHT), parseQuantity(shown, WEIGHT)]
    if (is.kind === 'problem') return setSaid(entryWords('Check weight', is.problem, weight, WEIGHT))
    if (shows.kind === 'problem') return setSaid(entryWords('The scale shows', shows.problem, shown, WEIGHT))
    const check = { scale: own.name, checkWeightGr: is.value, readGr: shows.value }
    if (await keepScaleCheck(store.getState(), job.id, check)) {
      setRead('')
      setSaid(
        `Kept: ${own!.name} shows ${showPlain(shows.value)} gr for ${showPlain(is.value)} gr, off by ${showPlain(driftGr(check))}.${isOff(check, own) ? OFF_WORDS : ''}`,
      )
    }
    return undefined
  }
  return (
    <section aria-labelledby="scale-check" className={look.check}>
      <h3 id="scale-check" data-label="">
        Check {own.name} with a check weight
      </h3>
      <p>At the start of the day, and when in doubt. Empty, zeroed, then the weight.</p>
      <TextField label="The weight is, gr" name="checkWeight" value={weight} onText={setWeight} onCommit={setWeight} />
      <TextField
        label={scale.kind === 'on' ? 'It shows, gr (empty: as it shows now)' : 'It shows, gr'}
        name="checkRead"
        value={read}
        onText={setRead}
        onCommit={setRead}
      />
      <p className={look.row}>
        <Button onClick={() => void keep()}>Keep the check</Button>
      </p>
      <Status>
        <Label>{said}</Label>
      </Status>
      {bench.scaleChecks.length === 0 ? null : (
        <ul className={look.checks}>
          {bench.scaleChecks.toReversed().map((each) => (
            <li key={each.at} data-label="">
              {checkRecordWords(each)}
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}
