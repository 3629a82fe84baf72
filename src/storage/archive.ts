/** The whole book, behind the gateway's state: what adds or rescues records goes the same careful way as a command. */
import type { Archive } from '../domain/ports'
import type { Id } from '../domain/records/scalars'
import type { ViewRules } from '../domain/records/view-rules'
import { addStaged } from './backup/add-staged'
import { exportBook } from './backup/export-book'
import { memoryKeep } from './backup/memory-keep'
import { recoverBook } from './backup/recover-book'
import { discardStaged } from './backup/stage-backup'
import { backupFile } from './backup-file'
import type { Book } from './book'
import { exportBuilds, exportReadings } from './export-csv'
import type { Gateway } from './gateway'
import { longWork } from './long-work'
import type { Work, WorkAnswer } from './long-work'
import { setMeta, tallyOf } from './meta'
import type { Surroundings } from './surroundings'

export function archive(
  book: Book,
  rules: ViewRules,
  surroundings: Surroundings,
  gate: Gateway,
  newId: () => Id,
): Archive {
  async function long<W extends Work>(work: W, progress?: (done: number) => void): Promise<WorkAnswer<W['do']>> {
    try {
      if (surroundings.offThread) return await surroundings.offThread<W['do']>({ ...work, book: book.name }, progress)
    } catch (error) {
      if (!(error instanceof DOMException && error.name === 'DataCloneError')) throw error
      // a browser that hands no streams to workers: the same work here
    }
    return (await longWork(book, rules, work, progress)) as WorkAnswer<W['do']> // it answers what it was asked
  }

  return {
    async backUp(at, write, progress) {
      const { facts, events } = await tallyOf(book)
      const exported = await exportBook(book, write, progress)
      if (gate.state().kind === 'open') await setMeta(book, 'backup', { at, rows: facts + events })
      return exported
    },
    check: (source, progress) => long({ do: 'check', source }, progress),
    stage: (source, progress) => long({ do: 'stage', source }, progress),
    addStaged: (progress) =>
      gate.write(newId(), async () => ({ again: false, events: [], ...(await addStaged(book, rules, progress)) })),
    discardStaged: () => discardStaged(book),
    verify: (progress) => long({ do: 'verify' }, progress),
    csv: (what, write) => (what === 'readings' ? exportReadings(book, write) : exportBuilds(book, write)),
    file: backupFile(book),
    async recover(keep) {
      const memory = keep ? undefined : memoryKeep()
      const file = () => (memory ? { file: memory.blob() } : {})
      try {
        const recovered = await recoverBook(book, rules, newId, surroundings, keep ?? memory!)
        if (recovered.kind === 'recovered') gate.setState({ kind: 'open' })
        if (recovered.kind === 'lost') gate.setState({ ...recovered, kind: 'missing' })
        return { ...recovered, ...file() }
      } catch (error) {
        return { kind: 'not-recovered', problem: String(error), ...file() }
      }
    },
  }
}
