/**
 * An event: what happened to a job, in the order in which one device wrote it down. Each names the hash of the one before
 * it in its log, so that none can be taken out or put in between unseen.
 */
import * as z from 'zod/mini'
import { hashed } from './hash-of'
import { hash, id, line, moment } from './scalars'
import type { Hash, Id } from './scalars'

/** What stands where the first event of a log has no event before it. */
export const NO_EVENT: Hash = '0'.repeat(64)

export const eventEnvelope = z.strictObject({
  hash,
  /** Which device's log, and the place in it, counted from 1. */
  log: id,
  seq: z.int().check(z.positive()),
  prev: hash,
  /** The command that wrote it, an id made by whoever gave it; what one command wrote belongs together. */
  command: id,
  /** Null for what happens to the shop's stock outside any job. */
  job: z.nullable(id),
  arrow: z.optional(id),
  by: line,
  at: moment,
  what: z.string().check(z.regex(/^[a-z][A-Za-z]{0,39}$/)),
  schemaVersion: z.int().check(z.positive()),
  body: z.record(z.string(), z.unknown()),
})

type Envelope = z.infer<typeof eventEnvelope>
export interface Event<What extends string = string, Body = Readonly<Record<string, unknown>>>
  extends Readonly<Omit<Envelope, 'what' | 'body'>> {
  readonly what: What
  readonly body: Body
}

/** An event as a command brings it: not chained yet. */
export type NewEvent<What extends string = string, Body = Readonly<Record<string, unknown>>> = Pick<
  Event<What, Body>,
  'job' | 'arrow' | 'what' | 'schemaVersion' | 'body'
>

/** Where a log stands: the last event's place and hash. */
export interface LogHead {
  readonly log: Id
  readonly seq: number
  readonly hash: Hash
}

/** The events of one command, hung onto the end of a log. */
export function chained(
  head: LogHead,
  command: { readonly id: Id; readonly by: string; readonly at: string; readonly events: readonly NewEvent[] },
): readonly Event[] {
  let { seq, hash: prev } = head
  return command.events.map((event) => {
    seq += 1
    const made = hashed({ ...event, log: head.log, seq, prev, command: command.id, by: command.by, at: command.at })
    prev = made.hash
    return made
  })
}
