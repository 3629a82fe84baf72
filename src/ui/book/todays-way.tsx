/** How near today's shelf comes to a past build: what matches, what was replaced or given up, what cannot be matched. */
import { useState } from 'react'
import type { Rebuilt, Stands } from '../../domain/book/rebuild-today'
import { Button } from '../controls/button'
import { Notice } from '../controls/notice'
import { Panel } from '../controls/panel'
import { Status } from '../controls/status'
import { Label } from '../figures/label'
import { gaveUpWords, insteadWords, replacementWords } from '../words/book-words'
import { brokenWishWords } from '../words/findings/search-findings'
import { counted } from '../words/format'
import look from './book.module.css'
import { ComparedTable } from './compared-table'

export const TodaysWay = ({ rebuilt }: { rebuilt: Rebuilt | undefined }) => (
  <Panel title="On today’s shelf" quiet>
    <div className={look.count}>
      <Status>
        <Label>{rebuilt === undefined ? 'Working out today’s way to the same arrow.' : gaveUpWords(rebuilt)}</Label>
      </Status>
    </div>
    {rebuilt === undefined ? null : (
      <>
        {rebuilt.replaced.map((each) => (
          <Notice key={each.was.name} level={each.now === undefined ? 'stop' : 'look'}>
            <Label>{replacementWords(each)}</Label>
          </Notice>
        ))}
        {rebuilt.breaks.map((broken) => (
          <Notice key={broken.wish} level="look">
            {brokenWishWords(broken)}: not to be matched with what is on the shelf.
          </Notice>
        ))}
        {rebuilt.compared.length === 0 ? null : <ComparedTable name="again" rows={rebuilt.compared} />}
        {rebuilt.others.length === 0 ? null : <Others others={rebuilt.others} />}
      </>
    )}
  </Panel>
)

/** The next nearest, in order, each with its own table. */
function Others({ others }: { others: readonly Stands[] }) {
  const [isOpen, setOpen] = useState(false)
  if (!isOpen)
    return (
      <p>
        <Button onClick={() => setOpen(true)}>
          <Label>{counted(others.length, 'other')} would match as well</Label>
        </Button>
      </p>
    )
  return (
    <>
      <p>In the order of how near they come; the rebuild sheet can be changed to any of them.</p>
      {others.map(({ replaced, compared }, i) => (
        // Their order is all that tells them apart.
        <section key={i}>
          <h3>
            <Label>{insteadWords(replaced)}</Label>
          </h3>
          <ComparedTable name={`again.other.${i + 1}`} rows={compared} />
        </section>
      ))}
    </>
  )
}
