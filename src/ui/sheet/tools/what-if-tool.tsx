/** One thing varied: the figures as they would be, and over a range, without the plan being touched. */
import { useMemo, useState } from 'react'
import { quantity } from '../../../core/quantity'
import type { Quantity } from '../../../core/quantity'
import type { SheetFigures } from '../../../domain/sheet/sheet-figures'
import type { Varied } from '../../../domain/sheet/what-if'
import type { Sheet } from '../../../domain/sheet/sheet'
import { reserveBandOf } from '../../../domain/sheet/sheet-figures'
import { frontAheadOfRest, VARIED, VARIED_UNITS, valuesAbout, variedNow, whatIf } from '../../../domain/sheet/what-if'
import { ChoiceField } from '../../controls/choice-field'
import { QuantityField } from '../../controls/quantity-field'
import { LineChart } from '../../figures/charts/line-chart'
import { variedWord, WHAT_IF_WORDS } from '../../words/tool-words'
import type { Candidate } from '../compare/candidate'
import { CandidateTable } from '../compare/candidate-table'
import { useWorked } from '../compare/use-worked'
import type { ToolProps } from './tool'
import look from './what-if.module.css'

export function WhatIfTool({ sheet }: ToolProps) {
  const [what, setWhat] = useState<Varied>('C2C')
  const [tried, setTried] = useState<Partial<Record<Varied, number>>>({})
  const now = variedNow(sheet, what)
  const value = tried[what] ?? now
  const unit = VARIED_UNITS[what]
  const candidates = useMemo((): readonly Candidate[] => {
    const other = value === undefined ? undefined : whatIf(sheet, what, value)
    return [
      { key: 'whatIf.now', title: 'As planned', sheet },
      ...(other === undefined ? [] : [{ key: 'whatIf.then', title: 'What if', sheet: other }]),
    ]
  }, [sheet, what, value])
  const over = useMemo(
    () =>
      (now === undefined ? [] : valuesAbout(now, what)).flatMap((at) => {
        const own = whatIf(sheet, what, at)
        return own === undefined ? [] : [{ at, own }]
      }),
    [sheet, what, now],
  )
  const worked = useWorked(over.map(({ own }) => own))
  const points = <D extends 'ratio' | 'speed' | 'length'>(
    of: (figures: SheetFigures, sheet: Sheet) => Quantity<D> | undefined,
  ) =>
    over.flatMap(({ at, own: varied }, i) => {
      const own = worked[i]
      const y = own ? of(own, varied) : undefined
      return y === undefined ? [] : [{ x: quantity(at, unit), y }]
    })
  const charts = [
    { key: 'reserve', label: 'Column reserve', unit: '1', decimals: 2, points: points<'ratio'>(reserveOf) },
    { key: 'foc', label: 'FOC', unit: '%', decimals: 1, points: points<'ratio'>(focOf) },
  ] as const
  const speeds = points<'speed'>(speedOf)
  const clearances = what === 'C2C' ? points<'length'>((figures, own) => frontAheadOfRest(own, figures)) : []
  const band = reserveBandOf(sheet)
  const planned = now === undefined ? {} : { at: quantity(now, unit) }
  const x = { label: variedWord(what), unit, decimals: unit === 'in' ? 2 : 0 }
  return (
    <>
      <ChoiceField
        label="What is varied"
        name="varied"
        choices={VARIED.map((each) => ({ value: each, label: variedWord(each) }))}
        value={what}
        onChoose={setWhat}
      />
      {value === undefined ? (
        <p>{WHAT_IF_WORDS.nothing}</p>
      ) : (
        <>
          <QuantityField
            key={what}
            label={`${variedWord(what)} instead`}
            name="whatIf"
            asked={{ unit, min: 0.1, max: 5000, decimals: unit === 'in' ? 2 : 1 }}
            value={value}
            onCommit={(entry) => setTried({ ...tried, [what]: entry.value })}
          />
          <CandidateTable caption="As planned, and what if" candidates={candidates} />
          <div className={look.charts}>
            {charts.map((chart) => (
              <LineChart
                key={chart.key}
                name={`whatIf.${chart.key}`}
                sentence={`${chart.label} against ${variedWord(what)}`}
                x={x}
                y={chart}
                {...planned}
                {...(chart.key === 'reserve' ? { wash: { low: band.min, high: band.max } } : {})}
                series={[{ key: chart.key, label: chart.label, points: chart.points }]}
              />
            ))}
            <LineChart
              name="whatIf.speed"
              sentence={`Speed against ${variedWord(what)}`}
              x={x}
              y={{ label: 'Speed', unit: 'ft/s', decimals: 1 }}
              {...planned}
              series={[{ key: 'speed', label: 'Speed', points: speeds }]}
            />
            {clearances.length === 0 ? null : (
              <LineChart
                name="whatIf.clearance"
                sentence={`Shaft front ahead of the rest against ${variedWord(what)}`}
                x={x}
                y={{ label: 'Ahead of the rest', unit: 'in', decimals: 2 }}
                {...planned}
                series={[{ key: 'clearance', label: 'Ahead of the rest', points: clearances }]}
              />
            )}
          </div>
          <p>{WHAT_IF_WORDS.untouched}</p>
        </>
      )}
    </>
  )
}

function reserveOf({ figures }: SheetFigures) {
  const reserve = figures?.columnReserve
  if (reserve?.ok !== true) return undefined
  return typeof reserve.value === 'number' ? reserve.value : reserve.value.value
}
const focOf = ({ figures }: SheetFigures) => (figures?.foc.ok ? figures.foc.value : undefined)
const speedOf = ({ figures }: SheetFigures) => (figures?.speed?.ok ? figures.speed.value.value : undefined)
