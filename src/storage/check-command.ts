/** A command is made by the program, so a malformed one is a fault of the program: found before anything is written. */
import { chained, NO_EVENT } from '../domain/records/event'
import { hashOf } from '../domain/records/hash-of'
import { personal } from '../domain/records/personal'
import { PHOTO_LIMIT } from '../domain/records/photo'
import type { Command } from '../domain/ports'
import { readEvent } from '../domain/records/read-event'
import { readFact } from '../domain/records/read-fact'
import { hashOfBytes } from '../domain/records/hash-of'
import type { AnyEvent } from '../domain/records/read-event'

/** @throws Error that says which record is wrong and how */
export function checkCommand(command: Command): void {
  for (const fact of command.facts ?? []) {
    const read = readFact(fact)
    if (read.kind !== 'ok') throw malformed(`fact ${fact.kind}`, read.kind === 'unreadable' ? read.problem : read.kind)
  }
  const start = { log: command.id, seq: 0, hash: NO_EVENT }
  for (const event of chained(start, { ...command, events: (command.events ?? []) as readonly AnyEvent[] })) {
    const read = readEvent(event)
    if (read.kind !== 'ok')
      throw malformed(`event ${event.what}`, read.kind === 'unreadable' ? read.problem : read.kind)
  }
  for (const row of command.personal ?? []) {
    if (!personal.safeParse(row).success || hashOf(row) !== row.hash)
      throw malformed('personal data', 'does not fit its hash')
  }
  for (const photo of command.photos ?? []) {
    if (photo.bytes.length > PHOTO_LIMIT) throw malformed('photo', `is larger than ${PHOTO_LIMIT} bytes`)
    if (hashOfBytes(photo.bytes) !== photo.hash) throw malformed('photo', 'does not fit its hash')
  }
}

const malformed = (what: string, problem: string) => new Error(`Malformed command: ${what}: ${problem}`)
