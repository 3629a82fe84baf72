/** The shop's scales: what each reads to, how much it bears, how far it may be off, and the weight it is checked with. */
import type { Rules } from '../../domain/shop/rules'
import { Button } from '../controls/button'
import { Panel } from '../controls/panel'
import { QuantityField } from '../controls/quantity-field'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import look from './shop.module.css'

type Scale = Rules['scales'][number]

interface ScalesPanelProps {
  scales: readonly Scale[]
  onScales: (scales: Scale[]) => void
}

const MOST = 10
const gr = (min: number, max: number, decimals: number) => ({ unit: 'gr', min, max, decimals }) as const

export function ScalesPanel({ scales, onScales }: ScalesPanelProps) {
  const put = (at: number, change: Partial<Scale>) =>
    onScales(scales.map((each, i) => (i === at ? { ...each, ...change } : each)))
  const freeName = () => {
    let n = scales.length + 1
    while (scales.some(({ name }) => name === `Scale ${n}`)) n += 1
    return `Scale ${n}`
  }
  return (
    <Panel title="Scales" quiet>
      <p>Its resolution and calibration are part of every band; a weight over its capacity is refused at the bench.</p>
      {scales.map((scale, at) => (
        // A scale keeps its place while its name is changed.
        <fieldset key={at} className={look.group}>
          <legend>
            <Label>{scale.name}</Label>
          </legend>
          <TextField
            label="Name"
            value={scale.name}
            hint="written with each reading"
            onCommit={(name) => {
              if (name !== '') put(at, { name })
            }}
          />
          <QuantityField
            label="Reads to"
            asked={gr(0.001, 10, 2)}
            value={scale.resolutionGr}
            hint="the step of its last digit"
            onCommit={({ value }) => put(at, { resolutionGr: value })}
          />
          <QuantityField
            label="Bears"
            asked={gr(10, 200_000, 0)}
            value={scale.capacityGr}
            hint="arrow and cradle together have to fit"
            onCommit={({ value }) => put(at, { capacityGr: value })}
          />
          <QuantityField
            label="Calibration, ±"
            asked={gr(0, 10, 2)}
            value={scale.calibrationGr}
            hint="shared by all that is weighed on it"
            onCommit={({ value }) => put(at, { calibrationGr: value })}
          />
          <QuantityField
            label="Check weight"
            asked={gr(1, 200_000, 2)}
            value={scale.checkWeightGr}
            hint="as it is stamped or certified"
            onCommit={({ value }) => put(at, { checkWeightGr: value })}
            onClear={() => onScales(scales.map((each, i) => (i === at ? withoutCheck(each) : each)))}
          />
          {scales.length === 1 ? null : (
            <p className={look.actions}>
              <Button kind="text" onClick={() => onScales(scales.filter((_, i) => i !== at))}>
                Take this scale off
              </Button>
            </p>
          )}
        </fieldset>
      ))}
      {scales.length >= MOST ? null : (
        <p className={look.actions}>
          <Button
            onClick={() =>
              onScales([...scales, { name: freeName(), resolutionGr: 0.1, capacityGr: 1500, calibrationGr: 0.1 }])
            }
          >
            Add a scale
          </Button>
        </p>
      )}
    </Panel>
  )
}

function withoutCheck({ checkWeightGr: _, ...scale }: Scale): Scale {
  return scale
}
