/** The box label and the arrow tags on the shop's label stock, each with a code that finds the record again. */
import { useState } from 'react'
import { building } from '../../domain/bench/bench'
import { codeOf } from '../../domain/records/code'
import type { OpenJob } from '../../state/open-job'
import { useApp } from '../app/use-app'
import { Button } from '../controls/button'
import { ChoiceField } from '../controls/choice-field'
import { EmptyState } from '../controls/empty-state'
import { QuantityField } from '../controls/quantity-field'
import { jobFacts } from './facts-of'
import { ArrowTag, BoxLabel } from './label-contents'
import { LabelSheets } from './label-sheets'
import { LABEL_STOCKS } from './label-stock'
import look from './labels.module.css'

const WHICH = [
  { value: 'all', label: 'Box label and tags' },
  { value: 'box', label: 'Box label' },
  { value: 'tags', label: 'Arrow tags' },
  { value: 'test', label: 'Test print on plain paper' },
] as const

const REACHED = { role: 'group', 'aria-label': 'The sheets', tabIndex: 0 } as const

export function LabelsPrint({ open }: { open: OpenJob }) {
  const rules = useApp((s) => s.shelf.rules)
  const [key, setKey] = useState(LABEL_STOCKS[0]!.key)
  const [which, setWhich] = useState<(typeof WHICH)[number]['value']>('all')
  const [used, setUsed] = useState(0)
  const stock = LABEL_STOCKS.find((each) => each.key === key)!
  const { job } = open
  const hash = job.signedOff.at(-1)?.asBuilt ?? job.frozen.at(-1)?.sheet
  const sheet = open.sheets.get(job.bench?.sheet ?? job.frozen.at(-1)?.sheet ?? '')
  if (hash === undefined || sheet === undefined) {
    return (
      <main className={look.table}>
        <EmptyState isPage title="No labels yet">
          A label names a record: freeze the sheet first.
        </EmptyState>
      </main>
    )
  }
  const facts = jobFacts(job, rules.shopName)
  const arrows = job.bench === null ? [] : building(job.bench)
  const shared = { facts, sheet }
  const client = open.client?.['name'] ?? ''
  const many = arrows.length + 1
  const box = (
    <BoxLabel
      {...shared}
      code={codeOf(hash)}
      client={client}
      arrows={arrows.length || sheet.plan.quantity}
      at={`1 of ${many}`}
    />
  )
  const tags = arrows.map((arrow, at) => ({
    key: arrow.id,
    content: <ArrowTag {...shared} arrow={arrow} at={`${at + 2} of ${many}`} />,
  }))
  const labels = [...(which === 'tags' ? [] : [{ key: 'box', content: box }]), ...(which === 'box' ? [] : tags)]
  return (
    <main className={look.table}>
      <h1 className="unseen">Labels</h1>
      <title>{`Labels, ${facts.record} · Grainwright`}</title>
      <div className={`screen-only ${look.tools}`}>
        <ChoiceField
          label="Label stock"
          name="stock"
          choices={LABEL_STOCKS.map((each) => ({ value: each.key, label: each.name }))}
          value={key}
          onChoose={setKey}
        />
        <ChoiceField label="Print" name="which" choices={WHICH} value={which} onChoose={setWhich} />
        {stock.paper === null ? null : (
          <QuantityField
            label="Labels already used on the sheet"
            name="used"
            asked={{ unit: '1', min: 0, max: stock.columns * stock.rows - 1, decimals: 0, whole: true }}
            value={used}
            onCommit={({ value }) => setUsed(value)}
          />
        )}
        <p>
          Print at full size, not fitted to the page. Hold the test print against the stock before the first sheet goes
          in.
        </p>
        <p className={look.buttons}>
          <Button kind="primary" onClick={() => window.print()}>
            Print
          </Button>
          <Button onClick={() => history.back()}>Back</Button>
        </p>
      </div>
      {/* What scrolls must be reached by keyboard, WCAG 2.1.1. */}
      <div className={look.papers} {...REACHED}>
        <LabelSheets stock={stock} labels={labels} used={used} test={which === 'test'} />
      </div>
    </main>
  )
}
