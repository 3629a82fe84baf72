/** Every reading ever taken, one a row, the withdrawn ones too: what a spreadsheet or a statistics program wants. */
import { jobNumber } from '../records/code'
import { csvRow } from '../records/csv'
import type { AnyEvent, EventOf } from '../records/read-event'
import type { Reading } from './reading'

export const READINGS_HEADER = csvRow([
  'job',
  'arrow',
  'step',
  'point',
  'value',
  'unit',
  'raw',
  'source',
  'stable',
  'attempt',
  'scale',
  'takenAt',
  'savedAt',
  'by',
  'withdrawn',
  'reason',
  'event',
])

/** @param events those of one job, in order */
export function readingsCsv(events: readonly AnyEvent[]): string {
  const opened = events.find((event) => event.what === 'opened')
  const job = opened ? jobNumber(opened.log, opened.seq) : ''
  const arrows = new Map(
    events.flatMap((event): (readonly [string, number])[] => {
      if (event.what === 'setStarted') return event.body.arrows.map(({ id, no }) => [id, no] as const)
      return event.what === 'replaced' ? [[event.body.arrow, event.body.no] as const] : []
    }),
  )
  const corrections = events.filter((event) => event.what === 'corrected')
  const withdrawn = new Map(corrections.map((event) => [event.body.target, event]))
  const steps = new Map(events.flatMap((event) => (event.what === 'read' ? [[event.hash, event.body.step]] : [])))

  const row = (event: EventOf<'read'> | EventOf<'corrected'>, reading: Reading, step: string) => {
    const by = withdrawn.get(event.hash)
    return csvRow([
      job,
      event.arrow === undefined ? '' : (arrows.get(event.arrow) ?? event.arrow),
      step,
      reading.point,
      reading.value,
      reading.unit,
      reading.raw,
      reading.source,
      reading.stable ? 'yes' : 'no',
      reading.attempt,
      reading.scale,
      reading.takenAt,
      event.at,
      event.by,
      by ? by.at : '',
      by ? by.body.reason : '',
      event.hash,
    ])
  }
  return events
    .map((event) => {
      if (event.what === 'read') return row(event, event.body.reading, event.body.step)
      if (event.what !== 'corrected' || event.body.reading === null) return ''
      return row(event, event.body.reading, steps.get(event.body.target) ?? '')
    })
    .join('')
}
