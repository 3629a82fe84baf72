/** The client summary after the call, on paper: what can also be pasted into a message, set out as a sheet. */
import { valueIn } from '../../domain/call/follows'
import { implications } from '../../domain/call/implications'
import { priceOf } from '../../domain/call/price-lines'
import type { OpenJob } from '../../state/open-job'
import { useApp } from '../app/use-app'
import { Label } from '../figures/label'
import { dayOfMoment } from '../words/dates'
import { BEFORE_YOU_SHOOT, summarySections } from '../words/call/summary-words'
import { jobFacts } from './facts-of'
import { PrintSheet } from './print-sheet'
import look from './summary.module.css'

const MANY = 8 // lines; more stand in two columns

export function SummaryPrint({ open }: { open: OpenJob }) {
  const shelf = useApp((s) => s.shelf)
  const now = useApp((s) => s.now)
  const { job, client } = open
  const follows = implications(job.answers, shelf.rules, shelf, dayOfMoment(now()))
  const name = client?.['name'] ?? ''
  const sections = summarySections({
    shop: shelf.rules.shopName,
    jobCode: job.code,
    client: name,
    answers: job.answers,
    price: priceOf(job.answers, shelf.rules),
    planned: job.accepted === null ? undefined : job.plan.quantity,
    ship: valueIn(follows.ship),
  })
  const page = (
    <>
      <h1 data-label="">{name === '' ? 'What we agreed' : `What we agreed, for ${name}`}</h1>
      {sections.map(({ title, lines }) => (
        <section key={title} className={look.section}>
          <h2>{title}</h2>
          <ul className={lines.length > MANY ? look.columns : undefined}>
            {lines.map((line) => (
              <li key={line} className={look.line}>
                <Label>{line}</Label>
              </li>
            ))}
          </ul>
        </section>
      ))}
      <p className={look.after}>{BEFORE_YOU_SHOOT}</p>
    </>
  )
  return <PrintSheet paper="a4" title="Client summary" facts={jobFacts(job, shelf.rules.shopName)} sheets={[page]} />
}
