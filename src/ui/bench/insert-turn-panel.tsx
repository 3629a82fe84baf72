/** Which way to turn an insert while the glue is wet, so that its run-out and the shaft's take from each other. */
import { useState } from 'react'
import { insertShare } from '../../domain/bench/spun-shaft'
import { parseQuantity } from '../../domain/entry/parse-quantity'
import { DATA_POINTS } from '../../domain/bench/data-points'
import { degrees, inches } from '../../core/quantity'
import { insertTurn } from '../../core/runout/insert-turn'
import { FindingList } from '../controls/finding-list'
import { Value } from '../figures/value'
import { ClockDial } from './clock-dial'
import look from './run-out.module.css'

interface Spun {
  text: string
  at: number | undefined
}
const NONE: Spun = { text: '', at: undefined }

const runOutOf = ({ text, at }: Spun) => {
  const entry = parseQuantity(text, DATA_POINTS.bondRunOut)
  return entry.kind === 'number' && at !== undefined ? { tir: inches(entry.value), angle: degrees(at) } : undefined
}

export default function InsertTurnPanel({ no }: { no: number }) {
  const [shaft, setShaft] = useState(NONE)
  const [whole, setWhole] = useState(NONE)
  const [own, all] = [runOutOf(shaft), runOutOf(whole)]
  const turn = own === undefined || all === undefined ? undefined : insertTurn(own, insertShare(all, own))
  return (
    <details className={look.panel}>
      <summary>It runs out: which way to turn the insert</summary>
      <div className={look.spin}>
        <OneSpin label="The bare shaft, at its point end, in" name="shaftOut" of={shaft} onChange={setShaft} />
        <OneSpin label="With insert and dummy, at the point, in" name="wholeOut" of={whole} onChange={setWhole} />
      </div>
      {turn === undefined ? (
        <p>Give both as the dial shows them, and tap where their high sides came round.</p>
      ) : turn.ok ? (
        <p>
          Turn the insert by <Value name={`bench.${no}.turn`} of={turn.value.turn} unit="°" decimals={0} />, the way the
          angles run; the point then runs out by{' '}
          <Value name={`bench.${no}.turnLeaves`} of={turn.value.remaining.tir} unit="in" decimals={4} />.
        </p>
      ) : (
        <FindingList findings={turn.findings} />
      )}
    </details>
  )
}

interface OneSpinProps {
  label: string
  name: string
  of: Spun
  onChange: (of: Spun) => void
}

const OneSpin = ({ label, name, of, onChange }: OneSpinProps) => (
  <div>
    <label className={look.field}>
      {label}
      <input
        name={name}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        value={of.text}
        onChange={(event) => onChange({ ...of, text: event.target.value })}
      />
    </label>
    <ClockDial at={of.at} label={label} onPick={(at) => onChange({ ...of, at })} />
  </div>
)
