/** From a line of a backup to a row of the book: the fields that were hashed, and the index beside them. */
import type { Event } from '../../domain/records/event'
import type { Fact } from '../../domain/records/fact'
import type { ViewRules } from '../../domain/records/view-rules'
import type { EventRow, FactRow, StagedRow } from '../book'
import type { RecordLine } from './read-backup'

export function stagedRow(line: RecordLine, rules: ViewRules): StagedRow {
  switch (line.kind) {
    case 'event': {
      const lots = line.read.kind === 'ok' ? rules.lotsOf(line.read.event) : []
      const record: EventRow = { ...(line.raw as Event), lots }
      return { kind: 'event', hash: record.hash, record }
    }
    case 'fact': {
      const lots = line.read.kind === 'ok' ? rules.lotsOf(line.read.fact) : []
      const record: FactRow = { ...(line.raw as Fact), lots }
      return { kind: 'fact', hash: record.hash, record }
    }
    case 'personal':
      return { kind: 'personal', hash: line.record.hash, record: line.record }
    case 'photo':
      return { kind: 'photo', hash: line.record.hash, record: line.record }
  }
}
