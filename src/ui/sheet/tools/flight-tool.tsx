/** The arrow on its way: what it keeps at each distance, drop and time, and whether the vanes can steer the head. */
import { useMemo } from 'react'
import { flightOf, steeringOf } from '../../../domain/sheet/flight-figures'
import { DataTable } from '../../controls/data-table'
import { FindingList } from '../../controls/finding-list'
import { LineChart } from '../../figures/charts/line-chart'
import { Figure, FigureList } from '../../figures/figure'
import { partOf } from '../../figures/part-of'
import { Value } from '../../figures/value'
import { ShowWorking } from '../../figures/working/show-working'
import { FLIGHT_WORDS } from '../../words/tool-words'
import type { ToolProps } from './tool'

export function FlightTool({ sheet, worked }: ToolProps) {
  const flight = useMemo(() => (worked === undefined ? undefined : flightOf(sheet, worked)), [sheet, worked])
  const steered = useMemo(() => (worked === undefined ? undefined : steeringOf(sheet, worked)), [sheet, worked])
  if (flight === undefined) {
    const hasShaft = worked?.geometry.placed.some(({ part }) => part.kind === 'shaft')
    return <p>{hasShaft ? FLIGHT_WORDS.noSpeed : FLIGHT_WORDS.noShaft}</p>
  }
  if (!flight.ok) return <FindingList findings={flight.findings} />
  return (
    <>
      <ShowWorking name="sheet.flight" label="From launch, level, in standard air" derivation={flight.derivation} />
      <DataTable
        caption="Flight, by distance"
        captionUnseen
        columns={['Distance', 'Speed', 'Energy', 'Momentum', 'Drop', 'Time', 'Energy kept'].map((head) => ({
          head,
          figures: true,
        }))}
        rows={flight.value.map((row, at) => {
          const name = `sheet.flight.${at}`
          return {
            key: String(at),
            cells: [
              <Value key="range" name={`${name}.range`} of={row.range} unit="yd" decimals={0} />,
              <Value key="speed" name={`${name}.speed`} of={row.speed.value} unit="ft/s" decimals={0} />,
              <Value key="energy" name={`${name}.energy`} of={row.energy.value} unit="ft·lbf" decimals={1} />,
              <Value key="momentum" name={`${name}.momentum`} of={row.momentum.value} unit="slug·ft/s" decimals={3} />,
              <Value key="drop" name={`${name}.drop`} of={row.drop.value} unit="in" decimals={1} />,
              <Value key="time" name={`${name}.time`} of={row.time.value} unit="s" decimals={2} />,
              <Value key="kept" name={`${name}.kept`} of={row.energyKept} unit="%" decimals={0} />,
            ],
          }
        })}
      />
      <FindingList findings={flight.findings} />
      <LineChart
        name="sheet.flight.chart"
        sentence={FLIGHT_WORDS.chart}
        x={{ label: 'Distance', unit: 'yd', decimals: 0 }}
        y={{ label: 'Drop', unit: 'in', decimals: 1 }}
        series={[
          {
            key: 'drop',
            label: 'Drop',
            points: flight.value.map(({ range, drop }) => ({
              x: range,
              y: drop.value,
              low: drop.low,
              high: drop.high,
            })),
          },
        ]}
      />
      <FigureList columns={2}>
        <Figure
          name="sheet.steering.centre"
          label="Centre of pressure, askew 1 to 5°"
          of={steered && partOf(steered, ({ centre }) => centre)}
          unit="in"
          decimals={1}
          note={FLIGHT_WORDS.centre}
          missing={FLIGHT_WORDS.noVanes}
        />
        <Figure
          name="sheet.steering.margin"
          label="Least steering margin"
          of={steered && partOf(steered, ({ least }) => least.margin)}
          unit="in"
          decimals={1}
          note={FLIGHT_WORDS.margin}
          missing={FLIGHT_WORDS.noVanes}
        />
      </FigureList>
    </>
  )
}
