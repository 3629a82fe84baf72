/** The book as a whole: out to a file, a file checked, a file added, every hash verified. */
import { useState } from 'react'
import type { StagedBackup } from '../../domain/records/backup'
import type { BookReport } from '../../domain/records/book-report'
import { useApp } from '../app/use-app'
import { Button } from '../controls/button'
import { Notice } from '../controls/notice'
import { Panel } from '../controls/panel'
import { Status } from '../controls/status'
import { Label } from '../figures/label'
import { checkWords, reminderWords, stagedWords } from '../words/archive-words'
import { BackupToFile } from './backup-to-file'
import { BookCheck } from './book-check'
import { download } from './download'
import { fileOf } from './file-of'
import look from './shop.module.css'
import { useLongWork } from './use-long-work'

export function Backup() {
  const repository = useApp((s) => s.repository)
  const book = useApp((s) => s.book)
  const backup = useApp((s) => s.backup)
  const now = useApp((s) => s.now)
  const shopName = useApp((s) => s.shelf.rules.shopName)
  const refreshJobs = useApp((s) => s.refreshJobs)
  const refreshShelf = useApp((s) => s.refreshShelf)
  const [said, setSaid] = useState('')
  const [report, setReport] = useState<BookReport>()
  const [staged, setStaged] = useState<StagedBackup>()
  const { bar, doing } = useLongWork(setSaid)
  if (repository === null) return null
  const { archive } = repository
  const rows = async () => {
    const { facts, events } = await repository.tally()
    return facts + events
  }
  const twice = async () => 2 * (await rows())

  const backUp = () =>
    doing('Writing the backup', rows, async (progress) => {
      const file = fileOf('application/jsonl')
      await archive.backUp(now(), file.write, progress)
      download(file.blob(), `grainwright-${now().slice(0, 10)}.jsonl`)
      await refreshJobs()
      return 'The backup is in your downloads. Keep it on another device.'
    })
  const table = (what: 'readings' | 'builds') =>
    doing('Writing the table', undefined, async () => {
      const file = fileOf('text/csv')
      await archive.csv(what, file.write)
      download(file.blob(), `grainwright-${what}.csv`)
      return 'The table is in your downloads.'
    })
  const onePage = () =>
    doing('Writing the archive', twice, async (progress) => {
      const { bookArchive } = await import('../archive/book-archive')
      download(await bookArchive(repository, shopName, now(), progress), `grainwright-${now().slice(0, 10)}.html`)
      await refreshJobs()
      return 'The archive is in your downloads: one page to read without the app, the records inside.'
    })
  const check = (file: File) =>
    doing('Reading the backup', file.size, async (progress) => checkWords(await archive.check(file.stream(), progress)))
  const stage = (file: File) =>
    doing('Reading the backup', file.size, async (progress) => {
      setStaged(undefined)
      setStaged(await archive.stage(file.stream(), progress))
      return ''
    })
  const add = () =>
    doing('Adding it', 1, async (progress) => {
      const receipt = await archive.addStaged(progress)
      setStaged(undefined)
      await Promise.all([refreshJobs(), refreshShelf()])
      return receipt.kind === 'saved' ? 'Added.' : `Not added: ${receipt.detail}`
    })
  const verify = () =>
    doing('Checking the whole book', rows, async (progress) => {
      setReport(undefined)
      setReport(await archive.verify(progress))
      return ''
    })
  const reminder = book === 'demo' ? undefined : reminderWords(backup, now())
  return (
    <Panel title="Backup" quiet>
      {reminder === undefined ? null : <Notice level="look">{reminder}</Notice>}
      <p className={look.actions}>
        <Button kind="primary" onClick={backUp}>
          Back up now
        </Button>
        <Button onClick={verify}>Check the whole book</Button>
        <Button onClick={onePage}>Archive as one page</Button>
        <Button onClick={() => table('readings')}>Readings as a table</Button>
        <Button onClick={() => table('builds')}>Builds as a table</Button>
      </p>
      <BackupToFile />
      <p className={look.actions}>
        <FilePicker label="Check a backup" onFile={check} />
        <FilePicker label="Add a backup" onFile={stage} />
      </p>
      {staged === undefined ? null : (
        <p className={look.actions}>
          <Label>{stagedWords(staged)}</Label>
          <Button kind="primary" onClick={add}>
            Add it
          </Button>
          <Button
            onClick={() => {
              void archive.discardStaged()
              setStaged(undefined)
            }}
          >
            Leave it
          </Button>
        </p>
      )}
      {bar}
      <Status>
        <Label>{said}</Label>
      </Status>
      {report === undefined ? null : <BookCheck report={report} />}
      <p>
        A backup holds clients’ names and notes, also those forgotten since it was made. Keep it as you would a key.
      </p>
    </Panel>
  )
}

const FilePicker = ({ label, onFile }: { label: string; onFile: (file: File) => void }) => (
  <label>
    {label}{' '}
    <input
      type="file"
      accept=".jsonl,.gz,application/jsonl"
      onChange={(event) => {
        const file = event.target.files?.[0]
        if (file !== undefined) onFile(file)
        event.target.value = ''
      }}
    />
  </label>
)
