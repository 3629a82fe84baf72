/** What changed between two versions of a build: who made each, when and why, and every field that differs. */
import { useState } from 'react'
import type { OpenBuild } from '../../state/open-build'
import { ChoiceField } from '../controls/choice-field'
import { DataTable } from '../controls/data-table'
import { Panel } from '../controls/panel'
import { Status } from '../controls/status'
import { Label } from '../figures/label'
import { changedWord, changesWords, sideWords, versionName, versionWords } from '../words/version-words'
import look from './book.module.css'
import { useVersionChanges } from './use-version-changes'
import type { Version } from './use-version-changes'

/** Between one sheet and the one build of it, plan beside as-built says it all. */
export function VersionDifference({ build }: { build: OpenBuild }) {
  const { sheets, versions } = build
  return sheets.length + versions.length > 2 ? <Difference build={build} all={[...sheets, ...versions]} /> : null
}

function Difference({ build, all }: { build: OpenBuild; all: readonly Version[] }) {
  const line = build.versions.length > 1 ? build.versions : build.sheets
  const [from, setFrom] = useState(line.at(-2)!.hash)
  const [to, setTo] = useState(line.at(-1)!.hash)
  const end = (hash: string) => all.find((each) => each.hash === hash) ?? all[0]!
  const ends = [end(from), end(to)] as const
  const changes = useVersionChanges(build, ...ends)
  const choices = all.map((each) => ({ value: each.hash, label: versionName(each) }))
  return (
    <Panel title="What changed" quiet>
      <div className={look.ends}>
        <ChoiceField label="From" name="from" choices={choices} value={from} onChoose={setFrom} />
        <ChoiceField label="To" name="to" choices={choices} value={to} onChoose={setTo} />
      </div>
      <ul className={look.who}>
        {ends.map((each, at) => (
          // Two ends, always in this order.
          <li key={at}>
            <Label>{versionWords(each)}</Label>
          </li>
        ))}
      </ul>
      {ends[0].kind === ends[1].kind ? null : (
        <p>A sheet against an as-built: the sheet it was built on is compared; what was built of it stands below.</p>
      )}
      <div className={look.count}>
        <Status>
          <Label>{changes === undefined ? '' : changesWords(changes.length)}</Label>
        </Status>
      </div>
      {changes === undefined || changes.length === 0 ? null : (
        <DataTable
          caption="Every field that differs"
          captionUnseen
          columns={[{ head: 'What' }, { head: versionName(ends[0]) }, { head: versionName(ends[1]) }]}
          rows={changes.map((change) => ({
            key: [change.area, change.of, ...change.field].join('/'),
            cells: [
              <Label key="what">{changedWord(change)}</Label>,
              <Label key="before">{sideWords(change, change.before)}</Label>,
              <Label key="after">{sideWords(change, change.after)}</Label>,
            ],
          }))}
        />
      )}
    </Panel>
  )
}
