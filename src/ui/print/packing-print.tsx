/** The packing list: every arrow and head by number, what goes along, who packed it; and the flex card to cut out. */
import { accepted, building } from '../../domain/bench/bench'
import { PACKING } from '../../domain/send/inspection'
import type { OpenJob } from '../../state/open-job'
import { useApp } from '../app/use-app'
import { DataTable } from '../controls/data-table'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { CARE } from '../words/paper-words'
import { jobFacts } from './facts-of'
import look from './papers.module.css'
import { PrintSheet } from './print-sheet'

export function PackingPrint({ open }: { open: OpenJob }) {
  const rules = useApp((s) => s.shelf.rules)
  const { job } = open
  const sheet = open.sheets.get(job.bench?.sheet ?? '')
  const arrows = job.bench === null ? [] : building(job.bench)
  const headLine = sheet?.plan.lines.find((line) => {
    const kind = sheet.parts.find(({ id }) => id === line.part)?.part.kind
    return kind === 'broadhead' || kind === 'field point'
  })
  const head = sheet?.parts.find(({ id }) => id === headLine?.part)?.part.name ?? 'no head'
  const client = open.client?.['name'] ?? ''
  const page = (
    <>
      <h1>Packing list</h1>
      {client === '' ? null : (
        <p>
          <Label>For {client}</Label>
        </p>
      )}
      {arrows.length === 0 ? (
        <p>No arrow is on the bench yet.</p>
      ) : (
        <div className={look.tight}>
          <DataTable
            caption="Arrows and their heads, by number"
            columns={[
              { head: 'In the box' },
              { head: 'Arrow' },
              { head: 'Finished, gr', figures: true },
              { head: 'Head' },
              { head: 'Head, gr', figures: true },
            ]}
            rows={arrows.map((arrow) => {
              const own = arrow.fitted.find(({ line }) => line === headLine?.id)
              const weight = (point: 'finishedWeight' | 'headWeight') => {
                const kept = accepted(arrow, point)
                return kept === undefined ? (
                  '–'
                ) : (
                  <Read
                    key={point}
                    name={`packing.${arrow.no}.${point}`}
                    value={kept.reading.value}
                    unit="gr"
                    decimals={1}
                    bare
                  />
                )
              }
              return {
                key: arrow.id,
                cells: [
                  <span key="box" className={look.tick} />,
                  <Label key="no">
                    no. {arrow.no}, {arrow.code}
                  </Label>,
                  weight('finishedWeight'),
                  <Label key="head">
                    {[own?.copy?.part.name ?? head, own?.no ?? ''].filter((word) => word !== '').join(', ')}
                  </Label>,
                  weight('headWeight'),
                ],
              }
            })}
          />
        </div>
      )}
      <ul className={look.list}>
        {PACKING.map((item) => (
          <li key={item}>
            <span className={`${look.tick} ${job.packed.includes(item) ? look.ticked : ''}`} />
            {item}
          </li>
        ))}
      </ul>
      <p className={look.write}>Packed by, on which day</p>
      <section className={look.card} aria-label="Flex card">
        <h2>Flex card: before the first shot, and after every hit</h2>
        <p>{CARE[0]}</p>
        <p>{CARE[1]}</p>
      </section>
    </>
  )
  return <PrintSheet paper="a4" title="Packing list" facts={jobFacts(job, rules.shopName)} sheets={[page]} />
}
