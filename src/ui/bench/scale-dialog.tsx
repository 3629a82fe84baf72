/** The scale: which one stands here, connected, set, tried out in the demo shop, and checked against a check weight. */
import { useState } from 'react'
import type { Bench } from '../../domain/bench/bench'
import { patternProblem } from '../../domain/bench/scale-pattern'
import type { SerialSettings } from '../../domain/bench/scale-source'
import type { Job } from '../../domain/job/job'
import type { Sheet } from '../../domain/sheet/sheet'
import { settingsOf } from '../../state/scale-memory'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Dialog } from '../controls/dialog'
import { Notice } from '../controls/notice'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { notUnderstoodWords } from '../words/pattern-words'
import { readoutWords, scaleWhyWords } from '../words/scale-words'
import look from './scale.module.css'
import { ScaleCheck } from './scale-check'
import { SerialFields } from './serial-fields'
import { useBenchScale } from './use-bench-scale'

interface ScaleDialogProps {
  job: Job
  bench: Bench
  sheet: Sheet
  onClose: () => void
}

export default function ScaleDialog({ job, bench, sheet, onClose }: ScaleDialogProps) {
  const store = useAppStore()
  const own = useBenchScale(sheet)
  const scale = useApp((s) => s.scale)
  const scales = useApp((s) => s.shelf.rules.scales)
  const app = store.getState()
  const name = own?.name ?? ''
  return (
    <Dialog title="Scale" onClose={onClose}>
      {scales.length > 1 && scale.kind !== 'on' ? (
        <p className={look.row}>
          <label>
            At this bench{' '}
            <select value={name} onChange={(event) => app.setScaleName(event.target.value)}>
              {scales.map((each) => (
                <option key={each.name}>{each.name}</option>
              ))}
            </select>
          </label>
        </p>
      ) : null}
      {scale.kind === 'refused' ? <Notice level="look">{scaleWhyWords(scale)}</Notice> : null}
      {scale.kind === 'on' ? (
        <>
          <p className={look.live}>
            {'value' in scale.readout ? (
              <Read
                name="scale.live"
                value={scale.readout.value}
                unit={scale.readout.unit === 'g' ? 'g' : 'gr'}
                decimals={1}
                bare={scale.readout.unit !== 'g' && scale.readout.unit !== 'gr'}
              />
            ) : (
              '–'
            )}{' '}
            <small>{readoutWords(scale)}</small>
          </p>
          {scale.notUnderstood === '' ? null : (
            <Notice level="look">
              <Label>{notUnderstoodWords(scale.notUnderstood)}</Label>
            </Notice>
          )}
          <p className={look.row}>
            <Button aria-pressed={scale.auto} onClick={() => app.setScale({ auto: !scale.auto })}>
              {scale.auto ? 'It takes by itself: stop that' : 'Let it take by itself'}
            </Button>
            <Button onClick={() => void app.disconnectScale()}>Disconnect</Button>
          </p>
          <p>By itself it takes what settles on a pan that was empty before, and asks as ever about a slip.</p>
        </>
      ) : (
        <Connect key={name} name={name} />
      )}
      {own === undefined ? null : <ScaleCheck key={name} job={job} bench={bench} own={own} />}
    </Dialog>
  )
}

/** The settings of a scale are remembered under its name. */
function Connect({ name }: { name: string }) {
  const store = useAppStore()
  const app = store.getState()
  const isDemo = useApp((s) => s.book === 'demo')
  const [settings, setSettings] = useState<SerialSettings>(() => settingsOf(app.keptScales(), name))
  const { pattern, ...plain } = settings
  const isClear = pattern === undefined || patternProblem(pattern) === undefined
  return (
    <>
      <p>
        A scale on a serial port sends what it shows; only what has settled, in grains, is taken. One that types like a
        keyboard needs nothing set here.
      </p>
      <SerialFields settings={settings} onSettings={setSettings} />
      <p className={look.row}>
        <Button
          kind="primary"
          onClick={() =>
            void app.connectScale({ kind: 'serial', name, settings: isClear ? settings : plain, again: false })
          }
        >
          Connect the scale
        </Button>
        {isDemo ? (
          <Button onClick={() => void app.connectScale({ kind: 'demo', name })}>Use the demo scale</Button>
        ) : null}
      </p>
    </>
  )
}
