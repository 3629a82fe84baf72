/**
 * A job is an order: a client, a bow, a hunt, a set of arrows. It is the fold of its events in their one order, so that
 * two books merged give the same job whichever came first.
 */
import { benchAfter, benchStarted } from '../bench/bench-after'
import type { Bench } from '../bench/bench'
import type { Answers } from '../call/answers'
import { answersAfter } from '../call/answers'
import { jobNumber } from '../records/code'
import { inOrder } from '../records/event-order'
import type { Hash, Id } from '../records/scalars'
import { planAfter } from '../sheet/plan-after'
import type { Plan } from '../sheet/plan'
import { NEW_PLAN } from '../sheet/plan'
import type { EventBody, JobEvent } from './events'

type Later = Extract<JobEvent, { what: 'reported' | 'repairBegun' | 'repairLeft' | 'repaired' | 'retired' }>

export interface Afterward {
  readonly what: Later['what']
  readonly arrow: Id | null
  readonly at: string
  readonly by: string
  readonly body: Later['body']
  /** How many steps of the arrow were confirmed by then, and how many timers of the set were started. */
  readonly confirmed: number | undefined
  readonly timers: number | undefined
}

/** A test kit as it went out, and what was made of it. */
export type Kit = EventBody<'kitSent'> & {
  readonly decided: (EventBody<'kitDecided'> & { readonly at: string; readonly by: string }) | null
}

export interface Job {
  readonly id: Id
  readonly code: string
  readonly kind: EventBody<'opened'>['kind']
  readonly of: EventBody<'opened'>['of']
  readonly openedAt: string
  readonly openedBy: string
  readonly updatedAt: string
  readonly client: Id | null
  readonly bow: Id | null
  readonly answers: Answers
  readonly accepted: (EventBody<'accepted'> & { readonly at: string }) | null
  readonly plan: Plan
  /** Frozen sheets, oldest first. */
  readonly frozen: readonly {
    readonly sheet: Hash
    readonly version: number
    readonly at: string
    readonly by: string
  }[]
  readonly bench: Bench | null
  readonly packed: readonly string[]
  readonly signedOff: readonly {
    readonly asBuilt: Hash
    readonly version: number
    readonly at: string
    readonly by: string
  }[]
  readonly sent: readonly { readonly on: string; readonly count: number }[]
  readonly afterwards: readonly Afterward[]
  readonly kits: readonly Kit[]
  /** Kits on the bench that have not gone out yet. */
  readonly kitsBegun: readonly EventBody<'kitStarted'>[]
}

const opened = (id: Id, event: Extract<JobEvent, { what: 'opened' }>): Job => ({
  id,
  code: jobNumber(event.log, event.seq),
  kind: event.body.kind,
  of: event.body.of,
  openedAt: event.at,
  openedBy: event.by,
  updatedAt: event.at,
  client: null,
  bow: null,
  answers: {},
  accepted: null,
  plan: NEW_PLAN,
  frozen: [],
  bench: null,
  packed: [],
  signedOff: [],
  sent: [],
  afterwards: [],
  kits: [],
  kitsBegun: [],
})

const afterward = ({ bench }: Job, { what, arrow, at, by, body }: Later): Afterward => ({
  what,
  arrow: arrow ?? null,
  at,
  by,
  body,
  confirmed: bench?.arrows.find(({ id }) => id === arrow)?.confirmed.length,
  timers: bench?.timers.length,
})

function moved(job: Job, event: JobEvent): Job {
  const stamp = { at: event.at, by: event.by }
  switch (event.what) {
    case 'opened':
      return job
    case 'clientSet':
      return { ...job, client: event.body.client }
    case 'bowSet':
      return { ...job, bow: event.body.bow }
    case 'answered':
      return { ...job, answers: answersAfter(job.answers, event) }
    case 'accepted':
      return { ...job, accepted: { ...event.body, at: event.at } }
    case 'planSet':
    case 'lineSet':
    case 'lineRemoved':
    case 'linesOrdered':
      return { ...job, plan: planAfter(job.plan, event) }
    case 'frozen':
      return { ...job, frozen: [...job.frozen, { ...event.body, ...stamp }] }
    case 'setStarted':
      return { ...job, bench: benchStarted(event) }
    case 'packed': {
      const others = job.packed.filter((item) => item !== event.body.item)
      return { ...job, packed: event.body.ticked ? [...others, event.body.item] : others }
    }
    case 'signedOff':
      return { ...job, signedOff: [...job.signedOff, { ...event.body, ...stamp }] }
    case 'sent':
      return { ...job, sent: [...job.sent, event.body] }
    case 'reported':
    case 'repairBegun':
    case 'repairLeft':
    case 'repaired':
    case 'retired':
      return { ...job, afterwards: [...job.afterwards, afterward(job, event)] }
    case 'kitStarted':
      return { ...job, kitsBegun: [...job.kitsBegun, event.body] }
    case 'kitSent': {
      const out = new Set(event.body.arrows.map(({ arrow }) => arrow))
      const kitsBegun = job.kitsBegun.filter(({ arrows }) => !arrows.some(({ arrow }) => out.has(arrow)))
      return { ...job, kitsBegun, kits: [...job.kits, { ...event.body, decided: null }] }
    }
    case 'kitDecided': {
      const decided = { ...event.body, ...stamp }
      const has = (kit: Kit) => kit.arrows.some(({ arrow }) => arrow === decided.arrow)
      return { ...job, kits: job.kits.map((kit) => (has(kit) ? { ...kit, decided } : kit)) }
    }
    case 'stockMoved':
    case 'lotWeighed':
    case 'lotWeightSetAside':
      return job
    default:
      return job.bench === null ? job : { ...job, bench: benchAfter(job.bench, event) }
  }
}

/** The job after one more event; before its first there is none. */
export function jobAfter(job: Job | null, event: JobEvent): Job | null {
  if (job === null) return event.what === 'opened' && event.job !== null ? opened(event.job, event) : null
  return { ...moved(job, event), updatedAt: event.at > job.updatedAt ? event.at : job.updatedAt }
}

export const jobOf = (events: readonly JobEvent[]): Job | null => inOrder(events).reduce<Job | null>(jobAfter, null)
