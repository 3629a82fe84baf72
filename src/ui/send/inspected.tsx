/** The finished set against its frozen sheet: each arrow about its own target, and the set as a whole. */
import { useMemo } from 'react'
import type { Bench } from '../../domain/bench/bench'
import { accepted } from '../../domain/bench/bench'
import { inspection } from '../../domain/send/inspection'
import { sheetFigures } from '../../domain/sheet/sheet-figures'
import type { Sheet } from '../../domain/sheet/sheet'
import { grains } from '../../core/quantity'
import { DataTable } from '../controls/data-table'
import { Panel } from '../controls/panel'
import { Figure, FigureList } from '../figures/figure'
import { Label } from '../figures/label'
import { Landing } from '../figures/landing/landing'
import type { LandingRow } from '../figures/landing/landing'
import { Read } from '../figures/read'
import { Value } from '../figures/value'

export function Inspected({ bench, sheet }: { bench: Bench; sheet: Sheet }) {
  const worked = useMemo(() => sheetFigures(sheet), [sheet])
  if (worked === undefined) return null
  const { arrows, lessHeadTarget, statistics } = inspection(bench, sheet, worked)
  const spread = statistics?.ok ? { ...statistics, value: statistics.value.spread } : statistics
  // What there is to say of the set is said once, beside its spread.
  const mean = statistics?.ok ? { ...statistics, value: statistics.value.mean, findings: [] } : undefined
  const sd =
    statistics?.ok && statistics.value.sd !== undefined
      ? { ...statistics, value: statistics.value.sd, findings: [] }
      : undefined
  const landed = arrows.flatMap(({ arrow, lessHead }): readonly LandingRow[] =>
    lessHead === undefined
      ? []
      : [{ key: `${arrow.no}`, label: `no. ${arrow.no}`, weight: { kind: 'read', value: lessHead } }],
  )
  return (
    <Panel title="Final inspection" quiet>
      {lessHeadTarget === undefined || landed.length === 0 ? null : (
        <>
          <h3>Weight less head</h3>
          <Landing
            name="send.landing"
            rows={landed}
            target={lessHeadTarget}
            tolerance={grains(sheet.rules.toleranceGr)}
          />
        </>
      )}
      <DataTable
        caption="Each arrow against its own target: the set’s weight less head, and its own head"
        columns={[
          { head: 'Arrow' },
          { head: 'Target, gr', figures: true },
          { head: 'Finished, gr', figures: true },
          { head: 'Off by, gr', figures: true },
          { head: 'Balance, in', figures: true },
          { head: 'FOC, %', figures: true },
          { head: 'Run-out, in', figures: true },
        ]}
        rows={arrows.map(({ arrow, target, finished, off, foc }) => {
          const balance = accepted(arrow, 'balancePoint')?.reading
          const tir = accepted(arrow, 'finishedRunOut')?.reading
          const at = `send.${arrow.no}`
          return {
            key: arrow.id,
            cells: [
              <Label key="no">
                no. {arrow.no}, {arrow.code}
              </Label>,
              <Value key="t" name={`${at}.target`} of={target} unit="gr" decimals={1} bare />,
              finished === undefined ? (
                '–'
              ) : (
                <Read
                  key="f"
                  name={`${at}.finished`}
                  value={accepted(arrow, 'finishedWeight')!.reading.value}
                  unit="gr"
                  decimals={1}
                  bare
                />
              ),
              off === undefined ? '–' : <Value key="o" name={`${at}.off`} of={off} unit="gr" decimals={1} bare />,
              balance === undefined ? (
                '–'
              ) : (
                <Read key="b" name={`${at}.balance`} value={balance.value} unit="in" decimals={2} bare />
              ),
              foc?.ok ? <Value key="foc" name={`${at}.foc`} of={foc.value.value} unit="%" decimals={1} bare /> : '–',
              tir === undefined ? (
                '–'
              ) : (
                <Read key="r" name={`${at}.tir`} value={tir.value} unit="in" decimals={4} bare />
              ),
            ],
          }
        })}
      />
      <FigureList columns={2}>
        <Figure
          name="send.mean"
          label="Mean less head"
          of={mean}
          unit="gr"
          decimals={1}
          missing="needs finished weights"
        />
        <Figure
          name="send.spread"
          label="Spread of the set"
          of={spread}
          unit="gr"
          decimals={1}
          missing="needs finished weights"
        />
        <Figure
          name="send.sd"
          label="Standard deviation"
          of={sd}
          unit="gr"
          decimals={2}
          missing="needs two finished weights"
        />
        <Figure name="send.focPlanned" label="FOC as planned" of={worked.figures?.foc} unit="%" decimals={1} />
      </FigureList>
    </Panel>
  )
}
