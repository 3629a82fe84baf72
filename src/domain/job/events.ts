/** What can happen in a job, one body schema a kind. An event is appended and never changed; a correction names its target. */
import * as z from 'zod/mini'
import { cameBack, deviation, DISPOSITIONS, timed } from '../bench/built'
import { fitted } from '../bench/fitted'
import { reading } from '../bench/reading'
import { step } from '../bench/route'
import { answer } from '../call/answer'
import { QUESTION_IDS } from '../call/questions'
import type { Event } from '../records/event'
import { amount, count, day, hash, id, line, moment, positive } from '../records/scalars'
import { planFields, planLine } from '../sheet/plan'

const planChange = z.union(
  (Object.keys(planFields) as (keyof typeof planFields)[]).map((field) =>
    z.strictObject({ field: z.literal(field), value: z.nullable(planFields[field]) }),
  ),
)

export const EVENT_BODIES = {
  /** `of` names the as-built record that a rebuild starts from. */
  opened: z.strictObject({
    kind: z.enum(['order', 'rebuild', 'test kit', 'repair']),
    of: z.nullable(z.strictObject({ job: id, asBuilt: hash })),
  }),
  clientSet: z.strictObject({ client: z.nullable(id) }),
  /** Which of the client's bows it is for. */
  bowSet: z.strictObject({ bow: id }),
  answered: z.strictObject({ question: z.enum(QUESTION_IDS), answer }),
  /** The read-back was agreed: date and price as promised then. */
  accepted: z.strictObject({ shipOn: z.nullable(day), priceCents: count, currency: line }),
  planSet: planChange,
  lineSet: z.strictObject({ line: planLine }),
  lineRemoved: z.strictObject({ line: id }),
  linesOrdered: z.strictObject({ lines: z.array(id).check(z.maxLength(40)) }),
  frozen: z.strictObject({ sheet: hash, version: z.int().check(z.positive()) }),
  setStarted: z.strictObject({
    sheet: hash,
    arrows: z.array(z.strictObject({ id, no: z.int().check(z.positive()), code: line })).check(z.maxLength(24)),
  }),
  routeSet: z.strictObject({ route: z.array(step).check(z.maxLength(40)) }),
  read: z.strictObject({ step: line, reading }),
  /** `reading: null` withdraws it. */
  corrected: z.strictObject({ target: hash, reading: z.nullable(reading), reason: line }),
  confirmed: z.strictObject({ step: line }),
  unconfirmed: z.strictObject({ step: line, reason: line }),
  /** Which part, lot and numbered piece an arrow takes for a line of the plan: pairing and mending. */
  fitted: z.extend(fitted, { reason: line }),
  deviationOpened: deviation,
  deviationDecided: z.strictObject({ deviation: id, disposition: z.enum(DISPOSITIONS), reason: line }),
  scrapped: z.strictObject({ cause: line }),
  /** A new arrow takes the scrapped one's place in the set. */
  replaced: z.strictObject({ arrow: id, no: z.int().check(z.positive()), code: line, replaces: id }),
  timerSet: z.strictObject({ timer: id, step: line, ...timed }),
  timerEnded: z.strictObject({ timer: id, endedAt: moment }),
  noted: z.strictObject({ step: line, note: hash }),
  photographed: z.strictObject({ step: line, photo: hash }),
  scaleChecked: z.strictObject({ scale: line, checkWeightGr: amount, readGr: amount }),
  builderChanged: z.strictObject({ builder: line }),
  packed: z.strictObject({ item: line, ticked: z.boolean() }),
  signedOff: z.strictObject({ asBuilt: hash, version: z.int().check(z.positive()) }),
  sent: z.strictObject({ on: day, count }),
  /** Afterwards: what the client reports, what is mended, what is no longer shot. */
  reported: z.strictObject({
    point: z.enum([
      'bareHighIn',
      'bareLeftIn',
      'broadheadHighIn',
      'broadheadLeftIn',
      'speedFps',
      'markAtRestIn',
      'markAtRiserIn',
      'survivorWeightGr',
    ]),
    value: z.number(),
  }),
  /** An arrow is back on the bench for a part of it: weighed as it came, nothing done to it yet. */
  repairBegun: z.strictObject({ ...cameBack, part: id, lot: z.nullable(id), copy: fitted.def.shape.copy }),
  /** Given up: the arrow keeps the part it had. */
  repairLeft: z.strictObject({ repair: id, reason: line }),
  /** `repair`: the one that this closes, and what the arrow weighs now; none in records from before repairs were begun. */
  repaired: z.strictObject({ what: line, reason: line, repair: z.optional(id), finished: z.optional(reading) }),
  /** `shots`: how often it was shot, when the client knows. */
  retired: z.strictObject({ cause: line, shots: z.nullable(count) }),
  /** A kit is built on the bench as a small set: the job it is, and the shaft of each of its arrows. */
  kitStarted: z.strictObject({
    kit: id,
    arrows: z
      .array(
        z.strictObject({
          arrow: id,
          no: z.int().check(z.positive()),
          code: line,
          part: id,
          lot: z.nullable(id),
          c2cIn: positive,
        }),
      )
      .check(z.minLength(1), z.maxLength(6)),
  }),
  /** Arrows of differing stiffness that the client shoots before the set is built. Their numbers are theirs for good. */
  kitSent: z.strictObject({
    on: day,
    arrows: z
      .array(
        z.strictObject({
          arrow: id,
          no: z.int().check(z.positive()),
          code: line,
          part: id,
          lot: z.nullable(id),
          c2cIn: positive,
          finishedGr: z.nullable(positive),
        }),
      )
      .check(z.minLength(1), z.maxLength(6)),
  }),
  /** The arrow of a kit that the plan goes on with. */
  kitDecided: z.strictObject({ arrow: id, reason: line }),
  /**
   * Stock outside any job: `by` pieces of a lot come or go. What jobs reserve, use and give back follows from the jobs. A
   * count is kept as what it differed by, so that counts of two devices add up.
   */
  stockMoved: z.strictObject({
    part: id,
    lot: z.nullable(id),
    by: z.int(),
    why: z.enum(['received', 'used', 'returned', 'counted', 'scrapped']),
  }),
  /** A weighing session: a part of a lot weighed outside any job. */
  lotWeighed: z.strictObject({
    lot: id,
    weightGr: amount,
    pieces: z.int().check(z.positive()),
    raw: line,
    scale: line,
  }),
  /** A weight of a lot that is not to be learned from; it stays visible, with the reason. */
  lotWeightSetAside: z.strictObject({ lot: id, target: hash, reason: line }),
} as const

export type EventKind = keyof typeof EVENT_BODIES
export type EventBody<K extends EventKind> = z.infer<(typeof EVENT_BODIES)[K]>

/** One event of a known kind, chained. */
export type JobEvent = { [K in EventKind]: Event<K, EventBody<K>> }[EventKind]
