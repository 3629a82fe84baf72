/** How a scale on a serial port sends: speed, line, unit, and a pattern of the shop's own where its lines are like no other. */
import { useState } from 'react'
import { patternProblem, patternReader } from '../../domain/bench/scale-pattern'
import { readScaleLine } from '../../domain/bench/scale-line'
import type { SerialSettings } from '../../domain/bench/scale-source'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import { lineReadWords, patternWords } from '../words/pattern-words'
import look from './scale.module.css'

const BAUDS = [1200, 2400, 4800, 9600, 19_200, 38_400, 57_600, 115_200]
const FRAMES = [
  { name: '8 bits, no parity, 1 stop', dataBits: 8, parity: 'none', stopBits: 1 },
  { name: '7 bits, even parity, 1 stop', dataBits: 7, parity: 'even', stopBits: 1 },
  { name: '7 bits, odd parity, 1 stop', dataBits: 7, parity: 'odd', stopBits: 1 },
  { name: '7 bits, no parity, 2 stops', dataBits: 7, parity: 'none', stopBits: 2 },
  { name: '8 bits, even parity, 1 stop', dataBits: 8, parity: 'even', stopBits: 1 },
] as const

interface SerialFieldsProps {
  settings: SerialSettings
  onSettings: (settings: SerialSettings) => void
}

export function SerialFields({ settings, onSettings }: SerialFieldsProps) {
  return (
    <>
      <p className={look.row}>
        <label>
          Speed{' '}
          <select
            value={settings.baudRate}
            onChange={(event) => onSettings({ ...settings, baudRate: Number(event.target.value) })}
          >
            {BAUDS.map((baud) => (
              <option key={baud}>{baud}</option>
            ))}
          </select>
        </label>
        <label>
          Line{' '}
          <select
            value={FRAMES.findIndex(
              (each) =>
                each.dataBits === settings.dataBits &&
                each.parity === settings.parity &&
                each.stopBits === settings.stopBits,
            )}
            onChange={(event) => {
              const { name: _, ...frame } = FRAMES[Number(event.target.value)]!
              onSettings({ ...settings, ...frame })
            }}
          >
            {FRAMES.map((frame, i) => (
              <option key={frame.name} value={i}>
                {frame.name}
              </option>
            ))}
          </select>
        </label>
        <label>
          <input
            type="checkbox"
            checked={settings.sendsGrains}
            onChange={(event) => onSettings({ ...settings, sendsGrains: event.target.checked })}
          />{' '}
          it sends no unit and stands in grains
        </label>
      </p>
      <PatternFields settings={settings} onSettings={onSettings} />
    </>
  )
}

const USUAL_PATTERN = { line: '{state} {weight} {unit}', settled: 'ST', grains: 'gr' }

function PatternFields({ settings, onSettings }: SerialFieldsProps) {
  const { pattern } = settings
  const [tried, setTried] = useState('')
  const set = (change: Partial<typeof USUAL_PATTERN>) =>
    onSettings({ ...settings, pattern: { ...USUAL_PATTERN, ...pattern, ...change } })
  const problem = pattern && patternProblem(pattern)
  const read =
    tried === '' || problem !== undefined ? undefined : (pattern ? patternReader(pattern) : readScaleLine)(tried)
  return (
    <details className={look.check} open={pattern !== undefined}>
      <summary>Its lines are not understood</summary>
      <label>
        <input
          type="checkbox"
          checked={pattern !== undefined}
          onChange={(event) => {
            const { pattern: _, ...plain } = settings
            onSettings(event.target.checked ? { ...plain, pattern: USUAL_PATTERN } : plain)
          }}
        />{' '}
        read them by a pattern of our own
      </label>
      {pattern === undefined ? null : (
        <>
          <p>
            Write one line as it comes, with {'{weight}'} for the digits, {'{state}'} and {'{unit}'} where they are
            sent, and {'{any}'} for what changes and says nothing.
          </p>
          <TextField
            label="A line"
            wide
            name="pattern"
            value={pattern.line}
            {...(problem === undefined ? {} : { error: patternWords(problem, pattern.line) })}
            onText={(line) => set({ line })}
            onCommit={(line) => set({ line })}
          />
          <TextField
            label="Once settled, {state} says"
            name="settled"
            value={pattern.settled}
            hint="empty where nothing stands there then"
            onText={(settled) => set({ settled })}
            onCommit={(settled) => set({ settled })}
          />
          <TextField
            label="In grains, {unit} says"
            name="grains"
            value={pattern.grains}
            onText={(grains) => set({ grains })}
            onCommit={(grains) => set({ grains })}
          />
        </>
      )}
      <TextField
        label="Try a line the scale sent"
        wide
        name="tried"
        value={tried}
        hint={
          read === undefined ? (
            'as its display or its manual shows it'
          ) : (
            <Label>{lineReadWords(read, settings.sendsGrains)}</Label>
          )
        }
        onText={setTried}
        onCommit={setTried}
      />
    </details>
  )
}
