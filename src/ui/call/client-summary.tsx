/** What the client gets after the call: one page to print, or the same as text to paste into a message. */
import { useId, useState } from 'react'
import { Link } from 'wouter'
import { valueIn } from '../../domain/call/follows'
import { priceOf } from '../../domain/call/price-lines'
import { useApp } from '../app/use-app'
import { Button, buttonLook } from '../controls/button'
import { Panel } from '../controls/panel'
import { Status } from '../controls/status'
import { summaryText } from '../words/call/summary-words'
import look from './call.module.css'
import type { Call } from './use-call'

interface ClientSummaryProps {
  call: Call
  client: Readonly<Record<string, string>> | null
}

export function ClientSummary({ call, client }: ClientSummaryProps) {
  const rules = useApp((s) => s.shelf.rules)
  const id = useId()
  const [said, setSaid] = useState('')
  const { job } = call
  const text = summaryText({
    shop: rules.shopName,
    jobCode: job.code,
    client: client?.['name'] ?? '',
    answers: job.answers,
    price: priceOf(job.answers, rules),
    planned: job.accepted === null ? undefined : job.plan.quantity,
    ship: valueIn(call.follows.ship),
  })

  /** Where the browser withholds the clipboard the text stands below, to be copied by hand. */
  async function copy() {
    try {
      await navigator.clipboard.writeText(text)
      setSaid('Copied.')
    } catch {
      setSaid('This browser does not let the app copy. The text stands below.')
    }
  }

  return (
    <Panel title="Client summary" quiet>
      <div className={look.actions}>
        <Link to={`/print/summary/${job.id}`} className={buttonLook('plain')}>
          Print
        </Link>
        <Button onClick={() => void copy()}>Copy as text</Button>
      </div>
      <Status>{said}</Status>
      <details>
        <summary>The text</summary>
        <label htmlFor={id} className="unseen">
          Client summary as text
        </label>
        <textarea id={id} className={look.summary} readOnly value={text} rows={16} />
      </details>
    </Panel>
  )
}
