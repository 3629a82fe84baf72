/** Which finished weight the shop holds sensible for which quarry: what the call starts from when the quarry is named. */
import { useState } from 'react'
import type { Rules } from '../../domain/shop/rules'
import { Button } from '../controls/button'
import { Panel } from '../controls/panel'
import { QuantityField } from '../controls/quantity-field'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import look from './shop.module.css'

type Quarry = Rules['quarry'][number]

interface QuarryPanelProps {
  quarry: readonly Quarry[]
  onQuarry: (quarry: Quarry[]) => void
}

const MOST = 60
const weight = (min: number, max: number) => ({ unit: 'gr', min, max, decimals: 0 }) as const
const LEAST_GR = 100
const MOST_GR = 2000
/** What a new row starts from: the span of arrows this shop is for, until it is narrowed. */
const START = { minGr: 600, maxGr: 1200 }

export function QuarryPanel({ quarry, onQuarry }: QuarryPanelProps) {
  const [name, setName] = useState('')
  const [said, setSaid] = useState('')
  const put = (at: number, change: Partial<Quarry>) =>
    onQuarry(quarry.map((each, i) => (i === at ? { ...each, ...change } : each)))
  function add() {
    const wanted = name.trim()
    if (wanted === '') return setSaid('Give the quarry its name first.')
    if (quarry.some((each) => each.name.toLowerCase() === wanted.toLowerCase()))
      return setSaid('That quarry is there already.')
    if (quarry.length >= MOST) return setSaid('The list is full; take one off first.')
    setSaid('')
    setName('')
    return onQuarry([...quarry, { name: wanted, ...START }])
  }
  return (
    <Panel title="Sensible weights by quarry" quiet>
      <p>
        The call shows them as soon as the quarry is named, raised by what the guide, the place and the bow ask. The
        shop’s own judgement: no weight is a guarantee.
      </p>
      {quarry.map((each, at) => (
        <fieldset key={each.name} className={look.group}>
          <legend>
            <Label>{each.name}</Label>
          </legend>
          <QuantityField
            label="From"
            hint="sensible weight on the call"
            asked={weight(LEAST_GR, each.maxGr)}
            value={each.minGr}
            onCommit={({ value }) => put(at, { minGr: value })}
          />
          <QuantityField
            label="To"
            hint="sensible weight on the call"
            asked={weight(each.minGr, MOST_GR)}
            value={each.maxGr}
            onCommit={({ value }) => put(at, { maxGr: value })}
          />
          <p className={look.actions}>
            <Button kind="text" onClick={() => onQuarry(quarry.filter((_, i) => i !== at))}>
              Take off
              <span className="unseen" data-label="">
                {' '}
                {each.name}
              </span>
            </Button>
          </p>
        </fieldset>
      ))}
      <TextField label="Add a quarry" name="quarry" value={name} onText={setName} onCommit={setName} />
      <p className={look.actions}>
        <Button onClick={add}>Add</Button>
        <Status>{said}</Status>
      </p>
    </Panel>
  )
}
