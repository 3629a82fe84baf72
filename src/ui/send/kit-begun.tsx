/** A kit on the bench: its arrows, what each weighs so far, the way to its bench and its papers, and the sending. */
import { useEffect, useState } from 'react'
import { Link } from 'wouter'
import type { EventBody } from '../../domain/job/events'
import { builtKitProblems, builtShafts } from '../../domain/send/kit-set'
import { sendKitBuilt } from '../../state/kit-actions'
import type { OpenJob } from '../../state/open-job'
import { openJob } from '../../state/open-job'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { DataTable } from '../controls/data-table'
import { Panel } from '../controls/panel'
import { Status } from '../controls/status'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { kitProblemWords, sampleWords } from '../words/afterwards-words'
import { dayOfMoment } from '../words/dates'
import look from './send.module.css'

export function KitBegun({ open, begun }: { open: OpenJob; begun: EventBody<'kitStarted'> }) {
  const store = useAppStore()
  const repository = useApp((s) => s.repository)
  const shelf = useApp((s) => s.shelf)
  const now = useApp((s) => s.now)
  const [kit, setKit] = useState<OpenJob | null>(null)
  const [said, setSaid] = useState('')
  const { job } = open
  useEffect(() => {
    let gone = false
    const load = async () => {
      const loaded = repository === null ? null : await openJob(repository, begun.kit)
      if (!gone) setKit(loaded)
    }
    void load()
    return () => {
      gone = true
    }
  }, [repository, begun, open])
  if (kit === null) return null

  async function send() {
    const [problem] = builtKitProblems(job, begun, kit!.job, shelf)
    if (problem !== undefined) return setSaid(`Not sent. ${kitProblemWords(problem)}`)
    await sendKitBuilt(store.getState(), job, begun, kit!.job, dayOfMoment(now()))
    return undefined
  }
  return (
    <Panel title="Test kit on the bench" quiet>
      <DataTable
        caption="Each arrow with its own shaft"
        columns={[{ head: 'Arrow' }, { head: 'Shaft' }, { head: 'Finished, gr', figures: true }]}
        rows={builtShafts(begun, kit.job).map(({ arrow, no, code, part, c2cIn, finishedGr }) => ({
          key: arrow,
          cells: [
            <Label key="no">
              no. {no}, {code}
            </Label>,
            <Label key="shaft">{sampleWords({ name: shelf.parts.get(part)?.body.name ?? 'shaft', c2cIn })}</Label>,
            finishedGr === null ? (
              'not weighed yet'
            ) : (
              <Read key="gr" name={`kit.begun.${no}`} value={finishedGr} unit="gr" decimals={1} bare />
            ),
          ],
        }))}
      />
      <p className={look.prints}>
        <Link to={`/job/${begun.kit}/bench`}>Go to its bench</Link>
        <Link to={`/print/labels/${begun.kit}`}>Print its label and tags</Link>
      </p>
      <p>
        <Button kind="primary" onClick={() => void send()}>
          Send the built kit today
        </Button>
      </p>
      <Status>
        <Label>{said}</Label>
      </Status>
    </Panel>
  )
}
