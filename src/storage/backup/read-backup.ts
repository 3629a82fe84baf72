/** Reads a backup to its end and says whether it is whole. Nothing is kept: whoever asks takes the records as they pass. */
import { sha256 } from '@noble/hashes/sha2'
import { bytesToHex } from '@noble/hashes/utils'
import type { Source } from '../../domain/ports'
import { RECORD_KINDS } from '../../domain/records/backup'
import type { BackupCheck, RecordKind } from '../../domain/records/backup'
import { follow, startOf } from '../../domain/records/chain'
import type { ChainProblem } from '../../domain/records/chain'
import type { Event, LogHead } from '../../domain/records/event'
import type { Id } from '../../domain/records/scalars'
import { canonical } from '../../domain/records/canonical'
import { FORMAT, LIMITS, NONE } from './format'
import { linesOf, Refused } from './lines'
import { parseLine } from './parse-line'
import type { ParsedLine } from './parse-line'

export type RecordLine = Extract<ParsedLine, { kind: RecordKind }>

const LISTED = 50
const BATCH = 500

export interface Reading {
  /** Hears how many bytes were read, inflated. */
  readonly progress?: ((bytes: number) => void) | undefined
  /** A backup has one order and each record once; a second copy has none. */
  readonly order?: 'one' | 'any'
}

/**
 * @param take receives the records some hundred at a time; the file is not known to be whole yet
 */
export async function readBackup(
  source: Source,
  take: (records: readonly RecordLine[]) => unknown = () => {},
  reading: Reading = {},
): Promise<BackupCheck> {
  try {
    return await readLines(source, take, reading)
  } catch (error) {
    if (error instanceof Refused) return { kind: 'refused', problem: error.message }
    throw error
  }
}

async function readLines(
  source: Source,
  take: (records: readonly RecordLine[]) => unknown,
  { progress = () => {}, order = 'one' }: Reading,
): Promise<BackupCheck> {
  const root = sha256.create()
  const counts: Record<RecordKind, number> = { ...NONE }
  const problems: string[] = []
  const chain: ChainProblem[] = []
  const heads = new Map<Id, LogHead>()
  const note = (problem: string) => problems.length < LISTED && problems.push(problem)
  let footer: Extract<ParsedLine, { kind: 'footer' }> | undefined
  let batch: RecordLine[] = []
  let tooNew = 0
  let number = 0
  let bytes = 0
  let bad = 0
  let before = ''

  for await (const line of linesOf(source)) {
    number += 1
    bytes += line.bytes.length + 1
    if (number > LIMITS.rows) throw new Refused(`the file has more than ${LIMITS.rows} lines`)
    const parsed = order === 'any' ? parseLine(line.text) : inOrder(parseLine(line.text), before)
    if (footer) note(`line ${number}: stands after the end`)
    else if (parsed.kind === 'footer') {
      if (line.ended) footer = parsed
    } else {
      root.update(line.bytes)
      root.update(NEWLINE)
    }
    if (number === 1) {
      if (parsed.kind !== 'header') note('line 1: is no header of a backup')
      else if (parsed.format > FORMAT)
        throw new Refused(`the file has format ${parsed.format}; this app knows ${FORMAT}`)
    } else if (parsed.kind === 'header') note(`line ${number}: a header in the middle`)
    if (parsed.kind === 'bad') {
      bad += 1
      if (bad > LIMITS.bad) throw new Refused(`more than ${LIMITS.bad} lines do not read`)
      note(`line ${number}: ${parsed.problem}`)
    }
    if (parsed.kind === 'bad' || parsed.kind === 'header' || parsed.kind === 'footer') continue

    counts[parsed.kind] += 1
    before = placeOf(parsed)
    if ('read' in parsed && parsed.read.kind === 'too-new') tooNew += 1
    if (parsed.kind === 'event') {
      const event = parsed.raw as Event
      const step = follow(heads.get(event.log) ?? startOf(event.log), event)
      heads.set(event.log, step.head)
      if (chain.length < LISTED) chain.push(...step.problems)
    }
    batch.push(parsed)
    if (batch.length === BATCH) {
      await take(batch)
      batch = []
      progress(bytes)
    }
  }
  if (batch.length > 0) await take(batch)
  progress(bytes)

  if (!footer) note('the file is cut short: it has no end')
  else if (canonical(footer.counts) !== canonical(counts))
    note('the file does not hold as many records as its end says')
  else if (footer.root !== bytesToHex(root.digest())) note('the file was changed: its content does not fit its end')
  if (problems.length > 0 || !footer) return { kind: 'damaged', problems, readable: counts }
  return { kind: 'whole', counts, root: footer.root, tooNew, chain }
}

/** Records stand in one order and each once; what does not is not taken. */
function inOrder(parsed: ParsedLine, before: string): ParsedLine {
  const isRecord = parsed.kind !== 'bad' && parsed.kind !== 'header' && parsed.kind !== 'footer'
  return isRecord && placeOf(parsed) <= before ? { kind: 'bad', problem: 'stands twice or in the wrong place' } : parsed
}

/** Places compare as texts: kinds in their order, events by log and place in it, the rest by hash. */
function placeOf(record: RecordLine): string {
  const kind = RECORD_KINDS.indexOf(record.kind)
  if (record.kind !== 'event')
    return `${kind} ${record.kind === 'fact' ? (record.raw as Event).hash : record.record.hash}`
  const { log, seq, hash } = record.raw as Event
  return `${kind} ${log} ${String(seq).padStart(16, '0')} ${hash}`
}

const NEWLINE = Uint8Array.of(10)
