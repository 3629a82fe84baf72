/** The build sheet: the arrow drawn, its lines, its figures, and what each arrow was read to, on one page for a set of six. */
import { useMemo } from 'react'
import { building } from '../../domain/bench/bench'
import type { FactOf } from '../../domain/records/read-fact'
import { lineWeights } from '../../domain/sheet/line-weights'
import { sheetFigures } from '../../domain/sheet/sheet-figures'
import { difference, inches, inInches } from '../../core/quantity'
import type { OpenJob } from '../../state/open-job'
import { DataTable } from '../controls/data-table'
import { piecesOf } from '../figures/elevation/pieces-of'
import { Figure, FigureList } from '../figures/figure'
import { Label } from '../figures/label'
import { SideView } from '../figures/side-view/side-view'
import { Value } from '../figures/value'
import { partKindWord } from '../words/part-kind-words'
import { lineKnownWords } from '../words/sheet-words'
import { BuildSheetReadings } from './build-sheet-readings'
import look from './build-sheet.module.css'
import { sheetFacts } from './facts-of'
import { PrintSheet } from './print-sheet'

export function BuildSheetPrint({ fact, open }: { fact: FactOf<'sheet'>; open: OpenJob }) {
  const sheet = fact.body
  const worked = useMemo(() => sheetFigures(sheet), [sheet])
  const { bench } = open.job
  const arrows = bench?.sheet === fact.hash ? building(bench) : []
  if (worked === undefined) return null
  const weights = lineWeights(worked.items)
  const { geometry, figures, forecast, trim, landing } = worked
  const balance = figures?.balance.ok ? figures.balance.value : undefined
  const balanceAt = balance === undefined ? undefined : typeof balance === 'number' ? balance : balance.value
  const rear = inches(geometry.shaftRearIn)
  const front = inches(geometry.shaftFrontIn)
  const spans = [
    {
      key: 'c2c',
      label: 'C2C',
      fromIn: geometry.shaftRearIn,
      toIn: geometry.shaftFrontIn,
      of: difference(front, rear),
    },
    ...(balanceAt === undefined
      ? []
      : [{ key: 'balance', label: 'balance point', fromIn: 0, toIn: inInches(balanceAt), of: balanceAt }]),
    { key: 'length', label: 'throat to shaft front', fromIn: 0, toIn: geometry.shaftFrontIn, of: front },
  ]
  const page = (
    <div className={look.page}>
      <SideView name="print.side" pieces={piecesOf(geometry)} spans={spans} />
      <DataTable
        caption="The arrow, line by line"
        columns={[
          { head: 'Part' },
          { head: 'Which' },
          { head: 'Lot' },
          { head: 'Weight, gr', figures: true },
          { head: '±', figures: true },
          { head: 'Known from' },
        ]}
        rows={sheet.plan.lines.map((line) => {
          const part = sheet.parts.find(({ id }) => id === line.part)?.part
          const lot = sheet.lots.find(({ id }) => id === line.lot)?.lot
          const weight = weights.get(line.id)
          return {
            key: line.id,
            cells: [
              part === undefined ? '' : partKindWord(part.kind),
              <Label key="n">
                {line.count > 1 ? `${line.count} × ` : ''}
                {part?.name}
              </Label>,
              <Label key="l">{lot?.code ?? 'unknown'}</Label>,
              weight === undefined ? (
                ''
              ) : (
                <Value key="w" name={`print.line.${line.id}`} of={weight.value} unit="gr" decimals={1} bare />
              ),
              weight === undefined ? (
                ''
              ) : (
                <Value key="h" name={`print.line.${line.id}.band`} of={weight.half} unit="gr" decimals={1} bare />
              ),
              weight === undefined ? '' : lineKnownWords(weight),
            ],
          }
        })}
      />
      <FigureList columns={2}>
        <Figure name="print.finished" label="Finished" of={figures?.finished} unit="gr" decimals={1} />
        <Figure
          name="print.lessHead"
          label="Target less head"
          of={
            figures === undefined || landing === undefined || !figures.finished.ok
              ? undefined
              : { ...figures.finished, value: difference(landing.target, worked.expectedHead) }
          }
          unit="gr"
          decimals={1}
        />
        <Figure
          name="print.forecast"
          label="Before trim"
          of={forecast.ok ? { ...forecast, value: forecast.value.total } : forecast}
          unit="gr"
          decimals={1}
        />
        <Figure name="print.trim" label="To trim" of={trim} unit="gr" decimals={1} />
        <Figure name="print.foc" label="FOC" of={figures?.foc} unit="%" decimals={1} />
        <Figure name="print.reserve" label="Column reserve" of={figures?.columnReserve} unit="1" decimals={2} />
        <Figure name="print.speed" label="Speed" of={figures?.speed} unit="ft/s" decimals={1} />
        <Figure name="print.momentum" label="Momentum" of={figures?.momentum} unit="slug·ft/s" decimals={3} />
      </FigureList>
      <p>
        <Label>
          Fletch {sheet.plan.fletchSide} {sheet.plan.fletchDegrees}°, tail {sheet.plan.vaneTailIn} in from the throat,
          cock vane {sheet.plan.cockVaneDeg}°, head indexed to: {sheet.plan.indexPlane}. Tolerance ±{' '}
          {sheet.rules.toleranceGr} gr.
        </Label>
      </p>
      <BuildSheetReadings arrows={arrows} planned={sheet.plan.quantity + sheet.plan.spares} />
    </div>
  )
  return <PrintSheet paper="a4" title="Build sheet" facts={sheetFacts(fact)} sheets={[page]} />
}
