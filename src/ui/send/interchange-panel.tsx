/** Any head on any arrow: the worst that can be screwed together, field points included, and which goes best on which. */
import { useMemo } from 'react'
import { grains, percent } from '../../core/quantity'
import type { Bench } from '../../domain/bench/bench'
import type { LooseHead } from '../../domain/search/pairing/interchange'
import { bestHeads, interchange } from '../../domain/search/pairing/interchange'
import { headsOnArrows } from '../../domain/send/heads-on-arrows'
import { sheetFigures } from '../../domain/sheet/sheet-figures'
import type { Sheet } from '../../domain/sheet/sheet'
import { useApp } from '../app/use-app'
import { DataTable } from '../controls/data-table'
import { Label } from '../figures/label'
import { Value } from '../figures/value'
import { freelyWords, interchangeWords } from '../words/interchange-words'
import { counted } from '../words/format'

interface Row {
  readonly key: string
  readonly name: string
  readonly heads: readonly LooseHead[]
}

export default function InterchangePanel({ bench, sheet }: { bench: Bench; sheet: Sheet }) {
  const shelf = useApp((s) => s.shelf)
  const told = useMemo(() => {
    const worked = sheetFigures(sheet)
    return worked && headsOnArrows(bench, sheet, worked, shelf)
  }, [bench, sheet, shelf])
  if (told === undefined) return <p>{interchangeWords({ code: 'no-arrows' })}</p>
  const { arrows, ordered, points, targetGr } = told
  const rows: readonly Row[] = [
    { key: 'order', name: `the heads of this order, ${counted(ordered.length, 'head')}`, heads: ordered },
    ...points.map((point) => ({ key: point.id, name: point.name, heads: [point] })),
  ]
  const { best, findings } = bestHeads(arrows, ordered, targetGr)
  const nameOf = new Map(ordered.map(({ id, name }) => [id, name]))
  const noOf = new Map(arrows.map(({ id, no }) => [id, no]))
  return (
    <>
      <DataTable
        caption={
          <Label>Finished weight and FOC with any of these heads on any of {counted(arrows.length, 'arrow')}</Label>
        }
        columns={[
          { head: 'Heads' },
          { head: 'Lightest, gr', figures: true },
          { head: 'Heaviest, gr', figures: true },
          { head: 'Least FOC, %', figures: true },
          { head: 'Most FOC, %', figures: true },
          { head: 'Off the number' },
        ]}
        rows={rows.map(({ key, name, heads }, i) => {
          const { worst } = interchange(arrows, heads, targetGr)
          const at = `send.interchange.${i}`
          return {
            key,
            cells: [
              <Label key="n">{name}</Label>,
              ...(worst === undefined
                ? ['–', '–', '–', '–', interchangeWords({ code: 'not-usable', id: key })]
                : [
                    <Value
                      key="l"
                      name={`${at}.lightest`}
                      of={grains(worst.lightest.gr)}
                      unit="gr"
                      decimals={1}
                      bare
                    />,
                    <Value
                      key="h"
                      name={`${at}.heaviest`}
                      of={grains(worst.heaviest.gr)}
                      unit="gr"
                      decimals={1}
                      bare
                    />,
                    <Value
                      key="f"
                      name={`${at}.leastFoc`}
                      of={percent(worst.leastFoc.focPercent)}
                      unit="%"
                      decimals={1}
                      bare
                    />,
                    <Value
                      key="m"
                      name={`${at}.mostFoc`}
                      of={percent(worst.mostFoc.focPercent)}
                      unit="%"
                      decimals={1}
                      bare
                    />,
                    <Label key="w">{freelyWords(worst, targetGr, sheet.rules.toleranceGr)}</Label>,
                  ]),
            ],
          }
        })}
      />
      {best === undefined ? (
        findings.map((finding) => (
          <p key={finding.code}>
            <Label>{interchangeWords(finding)}</Label>
          </p>
        ))
      ) : (
        <DataTable
          caption="Which head on which arrow comes nearest to the number"
          columns={[
            { head: 'Arrow' },
            { head: 'Head' },
            { head: 'Finishes at, gr', figures: true },
            { head: 'FOC, %', figures: true },
          ]}
          rows={best.map(({ arrow, head, gr, focPercent }) => ({
            key: arrow.id,
            cells: [
              <Label key="a">no. {noOf.get(arrow.id)}</Label>,
              <Label key="h">{nameOf.get(head.id)}</Label>,
              <Value key="g" name={`send.best.${noOf.get(arrow.id)}.gr`} of={grains(gr)} unit="gr" decimals={1} bare />,
              <Value
                key="f"
                name={`send.best.${noOf.get(arrow.id)}.foc`}
                of={percent(focPercent)}
                unit="%"
                decimals={1}
                bare
              />,
            ],
          }))}
        />
      )}
    </>
  )
}
