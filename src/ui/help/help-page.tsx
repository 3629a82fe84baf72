/** How each page works, what the keyboard does, and the words of the trade. */
import { useEffect, useRef } from 'react'
import { Page } from '../app/page'
import type { PageParams } from '../app/routes'
import { DataTable } from '../controls/data-table'
import { Panel } from '../controls/panel'
import { GLOSSARY } from '../words/glossary-words'
import { HELP, KEYS, KEYS_NOTE } from '../words/help-words'
import { HELP_TOPICS } from './help-topics'
import look from './help.module.css'

export default function HelpPage({ params }: { params: PageParams }) {
  const { topic } = params
  const asked = useRef<HTMLDivElement>(null)
  useEffect(() => {
    asked.current?.scrollIntoView()
    asked.current?.focus()
  }, [topic])
  return (
    <Page title="How this works" tab="How this works">
      <div className={look.page}>
        {HELP_TOPICS.map((each) => (
          <div key={each} ref={each === topic ? asked : undefined} tabIndex={-1}>
            <Panel title={HELP[each].title} quiet>
              {HELP[each].lines.map((line) => (
                <p key={line}>{line}</p>
              ))}
            </Panel>
          </div>
        ))}
        <Panel title="Keyboard" quiet>
          <DataTable
            caption="Keys"
            captionUnseen
            columns={[{ head: 'Key' }, { head: 'What it does' }]}
            rows={KEYS.map(([keys, does]) => ({ key: keys, cells: [keys, does] }))}
          />
          <p>{KEYS_NOTE}</p>
        </Panel>
        {GLOSSARY.map(({ title, terms }) => (
          <Panel key={title} title={`Words: ${title.toLowerCase()}`} quiet>
            <dl className={look.terms} data-label="">
              {terms.map(([term, meaning]) => (
                <div key={term}>
                  <dt>{term}</dt>
                  <dd>{meaning}</dd>
                </div>
              ))}
            </dl>
          </Panel>
        ))}
      </div>
    </Page>
  )
}
