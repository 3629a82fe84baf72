/** The certificate: the set as it was signed off, and every data point of every arrow, a page each. Complete without the app. */
import { useMemo } from 'react'
import { building, accepted } from '../../domain/bench/bench'
import { countsOf } from '../../domain/bench/sign-off'
import { inspection } from '../../domain/send/inspection'
import { sheetFigures } from '../../domain/sheet/sheet-figures'
import { repairsBuilt } from '../../domain/send/repair-built'
import type { OpenJob } from '../../state/open-job'
import { useApp } from '../app/use-app'
import { DataTable } from '../controls/data-table'
import { Figure, FigureList } from '../figures/figure'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { Value } from '../figures/value'
import { stepWords } from '../words/bench-words'
import { showMoment } from '../words/dates'
import { CERTIFICATE_NOTE } from '../words/paper-words'
import { ArrowRecord } from './arrow-record'
import { jobFacts } from './facts-of'
import look from './papers.module.css'
import { PrintSheet } from './print-sheet'

export function CertificatePrint({ open }: { open: OpenJob }) {
  const rules = useApp((s) => s.shelf.rules)
  const { job } = open
  const { bench } = job
  const sheet = open.sheets.get(bench?.sheet ?? '')
  const worked = useMemo(() => (sheet === undefined ? undefined : sheetFigures(sheet)), [sheet])
  const facts = jobFacts(job, rules.shopName)
  const last = job.signedOff.at(-1)
  if (bench === null || sheet === undefined || worked === undefined || last === undefined) {
    const none = <p key="none">The set is not signed off yet: there is nothing to certify.</p>
    return <PrintSheet paper="a4" title="Certificate" facts={facts} sheets={[none]} />
  }
  const { arrows, statistics } = inspection(bench, sheet, worked)
  const client = open.client?.['name'] ?? ''
  const counts = countsOf(bench)
  const of = <K extends 'mean' | 'spread'>(key: K) =>
    statistics?.ok ? { ...statistics, value: statistics.value[key] } : undefined
  const first = (
    <>
      <h1>Certificate</h1>
      <p>
        <Label>
          {client === '' ? '' : `${client}. `}Job {job.code}, signed off {showMoment(last.at)} by {last.by} as version{' '}
          {last.version}. Ordered {sheet.plan.quantity}, started {counts.started}, scrapped {counts.scrapped}, accepted{' '}
          {counts.accepted}.
        </Label>
      </p>
      <DataTable
        caption="Each arrow as it left"
        columns={[
          { head: 'Arrow' },
          { head: 'Target, gr', figures: true },
          { head: 'Finished, gr', figures: true },
          { head: 'Off by, gr', figures: true },
          { head: 'Less head, gr', figures: true },
          { head: 'FOC, %', figures: true },
        ]}
        rows={arrows.map(({ arrow, target, finished, off, lessHead, foc }) => {
          const at = `certificate.${arrow.no}`
          const read = accepted(arrow, 'finishedWeight')?.reading.value
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
                <Read key="f" name={`${at}.finished`} value={read!} unit="gr" decimals={1} bare />
              ),
              off === undefined ? '–' : <Value key="o" name={`${at}.off`} of={off} unit="gr" decimals={1} bare />,
              lessHead === undefined ? (
                '–'
              ) : (
                <Value key="l" name={`${at}.less`} of={lessHead} unit="gr" decimals={1} bare />
              ),
              foc?.ok ? <Value key="foc" name={`${at}.foc`} of={foc.value.value} unit="%" decimals={1} bare /> : '–',
            ],
          }
        })}
      />
      <FigureList columns={2}>
        <Figure name="certificate.mean" label="Mean less head" of={of('mean')} unit="gr" decimals={1} />
        <Figure name="certificate.spread" label="Spread of the set" of={of('spread')} unit="gr" decimals={1} />
      </FigureList>
      {bench.deviations.length === 0 ? (
        <p>No deviation was opened.</p>
      ) : (
        <ul className={look.bullets}>
          {bench.deviations.map((each) => (
            <li key={each.id}>
              <Label>
                {stepWords(each.step).title}: required {each.required}, found {each.found};{' '}
                {each.decision === null
                  ? 'not decided'
                  : `${each.decision.disposition}, ${each.decision.decidedBy}: ${each.decision.reason}`}
              </Label>
            </li>
          ))}
        </ul>
      )}
      <p>{CERTIFICATE_NOTE}</p>
    </>
  )
  const pages = building(bench).map((arrow) => (
    <ArrowRecord
      key={arrow.id}
      arrow={arrow}
      bench={bench}
      sheet={sheet}
      repairs={repairsBuilt(job, arrow.id).repairs ?? []}
    />
  ))
  return <PrintSheet paper="a4" title="Certificate" facts={facts} sheets={[first, ...pages]} />
}
