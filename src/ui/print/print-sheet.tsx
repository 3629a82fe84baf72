/**
 * What goes on paper: sheets of one size, black on white, each with its title block, so that a sheet found alone still says
 * what it belongs to. Whoever fills a print cuts it into sheets; nothing flows from one to the next by itself.
 */
import type { ReactNode } from 'react'
import { useState } from 'react'
import { Link } from 'wouter'
import { DEFAULT_RULES } from '../../domain/shop/rules'
import '../look/print.css'
import { Button } from '../controls/button'
import { ChoiceField } from '../controls/choice-field'
import look from './print-sheet.module.css'
import { TitleBlock } from './title-block'
import type { TitleBlockFacts } from './title-block'

export type Paper = 'a4' | 'letter'

interface PrintSheetProps {
  /** What it is laid out for; the other can be chosen before it is printed. */
  paper: Paper
  /** What this print is: *Build sheet*, *Route card*. */
  title: string
  facts: TitleBlockFacts
  /** One entry a sheet of paper. */
  sheets: readonly ReactNode[]
}

const PAPERS = [
  { value: 'a4', label: 'A4' },
  { value: 'letter', label: 'Letter' },
] as const

export function PrintSheet({ paper: usual, title, facts, sheets }: PrintSheetProps) {
  const [paper, setPaper] = useState(usual)
  return (
    <main className={look.table}>
      <title>{`${title}, ${facts.record} · Grainwright`}</title>
      <div className={`screen-only ${look.tools}`}>
        <div className={look.paper}>
          <ChoiceField label="Paper" name="paper" choices={PAPERS} value={paper} onChoose={setPaper} />
        </div>
        <div className={look.buttons}>
          <Button kind="primary" onClick={() => window.print()}>
            Print
          </Button>
          <Button onClick={() => history.back()}>Back</Button>
        </div>
        {facts.shop === DEFAULT_RULES.shopName && (
          <p className={look.unnamed}>
            This paper says <q>{facts.shop}</q>: the shop has no name, or had none when the record was frozen that is
            printed here. <Link to="/shop">Name the shop</Link> for what is made from now on.
          </p>
        )}
      </div>
      {sheets.map((content, at) => (
        // Sheets never move, so their place is their key.
        <section key={at} className={`${look.sheet} ${look[paper]}`} aria-label={`Page ${at + 1} of ${sheets.length}`}>
          <div className={look.content}>{content}</div>
          <TitleBlock title={title} facts={facts} page={at + 1} of={sheets.length} />
        </section>
      ))}
    </main>
  )
}
