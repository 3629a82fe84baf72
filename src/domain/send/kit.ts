/**
 * A test kit: a few arrows of differing stiffness that the client shoots before the set is built. What is reported of them
 * says which shaft the bow likes, and the plan goes on with that one.
 */
import type { Estimate, Outcome } from '../../core/outcome'
import type { Ratio } from '../../core/quantity'
import { inUnit } from '../../core/quantity'
import { valueOf } from '../call/answers'
import type { EventBody } from '../job/events'
import type { Job, Kit } from '../job/job'
import type { Ids } from '../ports'
import type { Id } from '../records/scalars'
import type { EventDraft } from '../records/write'
import { newEvent } from '../records/write'
import { draftSheet } from '../sheet/draft-sheet'
import { sheetFigures } from '../sheet/sheet-figures'
import type { Shelf } from '../stock/shelf'

export type KitArrow = Kit['arrows'][number]
export type KitPoint = Extract<
  EventBody<'reported'>['point'],
  'bareHighIn' | 'bareLeftIn' | 'broadheadHighIn' | 'broadheadLeftIn' | 'speedFps'
>

export interface KitResult {
  readonly arrow: KitArrow
  /** What the client reported last of each point; impacts in inches from the fletched field points. */
  readonly reported: Readonly<Partial<Record<KitPoint, number>>>
  /** How far the bare shaft hits from the fletched ones, in. */
  readonly bareOffIn: number | undefined
  /** What the model says of this shaft on this bow. */
  readonly reserve: Outcome<Ratio | Estimate<Ratio>> | undefined
}

export const shaftLine = (job: Job, shelf: Shelf) =>
  job.plan.lines.find(({ part }) => shelf.parts.get(part)?.body.kind === 'shaft')

/** The plan as it would be with an arrow's shaft. */
export function jobWithShaft(
  job: Job,
  shelf: Shelf,
  { part, lot, c2cIn }: Pick<KitArrow, 'part' | 'lot' | 'c2cIn'>,
): Job {
  const line = shaftLine(job, shelf)
  const lines = job.plan.lines.map((each) => (each.id === line?.id ? { ...each, part, lot } : each))
  return { ...job, plan: { ...job.plan, c2cIn, lines } }
}

export const reserveWith = (job: Job, shelf: Shelf, shaft: Pick<KitArrow, 'part' | 'lot' | 'c2cIn'>) =>
  sheetFigures(draftSheet(jobWithShaft(job, shelf, shaft), shelf, null))?.figures?.columnReserve

export type KitProblem =
  | { readonly code: 'no-shaft-line' }
  | { readonly code: 'too-few' }
  | { readonly code: 'not-a-shaft'; readonly name: string }
  | { readonly code: 'all-alike' }
  | { readonly code: 'no-cut-length' }
  | { readonly code: 'not-weighed'; readonly no: number }

/** A shaft for a kit; `c2cIn` where it is cut to another length than the set. */
export interface KitShaft {
  readonly part: Id
  readonly lot: Id | null
  readonly c2cIn?: number
  readonly finishedGr: number | null
}

/** What stands against sending a kit of these shafts. A kit is two arrows or three, not all alike. */
export function kitProblems(
  job: Job,
  shelf: Shelf,
  shafts: readonly Pick<KitShaft, 'part' | 'c2cIn'>[],
): readonly KitProblem[] {
  if (shaftLine(job, shelf) === undefined) return [{ code: 'no-shaft-line' }]
  if (job.plan.c2cIn === undefined) return [{ code: 'no-cut-length' }]
  if (shafts.length < 2) return [{ code: 'too-few' }]
  const bodies = shafts.map(({ part }) => shelf.parts.get(part)?.body)
  const other = bodies.find((body) => body?.kind !== 'shaft')
  if (other !== undefined || bodies.includes(undefined)) return [{ code: 'not-a-shaft', name: other?.name ?? '' }]
  const alike = new Set(shafts.map(({ part, c2cIn }) => `${part} ${c2cIn ?? job.plan.c2cIn}`))
  return alike.size < 2 ? [{ code: 'all-alike' }] : []
}

/** Numbers go on from kit to kit, so that none is given twice. */
export const numbersGiven = ({ kits, kitsBegun }: Job): number =>
  Math.max(0, ...[...kits, ...kitsBegun].flatMap(({ arrows }) => arrows.map(({ no }) => no)))

export function sendKit(
  job: Job,
  shelf: Shelf,
  shafts: readonly KitShaft[],
  on: string,
  ids: Ids,
): readonly EventDraft[] {
  const problems = kitProblems(job, shelf, shafts)
  if (problems.length > 0) throw new Error('this kit cannot be sent')
  const before = numbersGiven(job)
  const arrows = shafts.map((shaft, at) => ({
    arrow: ids.id(),
    no: before + at + 1,
    code: `${job.code}/T${before + at + 1}`,
    ...shaft,
    c2cIn: shaft.c2cIn ?? job.plan.c2cIn!,
  }))
  return [newEvent('kitSent', { job: job.id }, { on, arrows })]
}

const POINTS: readonly KitPoint[] = ['bareHighIn', 'bareLeftIn', 'broadheadHighIn', 'broadheadLeftIn', 'speedFps']
const isKitPoint = (point: string): point is KitPoint => (POINTS as readonly string[]).includes(point)

/** Each arrow of a kit with what was reported of it and what the model says of its shaft. */
export const kitResults = (job: Job, shelf: Shelf, kit: Kit): readonly KitResult[] =>
  kit.arrows.map((arrow) => {
    const reported: Partial<Record<KitPoint, number>> = {}
    for (const { what, arrow: of, body } of job.afterwards) {
      if (what === 'reported' && of === arrow.arrow && 'point' in body && isKitPoint(body.point)) {
        reported[body.point] = body.value
      }
    }
    const { bareHighIn: high, bareLeftIn: left } = reported
    return {
      arrow,
      reported,
      bareOffIn: high === undefined || left === undefined ? undefined : Math.hypot(high, left),
      reserve: reserveWith(job, shelf, arrow),
    }
  })

/** The arrow whose bare shaft hits nearest to its fletched ones; none while fewer than two were shot, or at a tie. */
export function nearest(results: readonly KitResult[]): KitResult | undefined {
  const shot = results
    .filter(({ bareOffIn }) => bareOffIn !== undefined)
    .toSorted((a, b) => a.bareOffIn! - b.bareOffIn!)
  const [first, second] = shot
  return second === undefined || first!.bareOffIn === second.bareOffIn ? undefined : first
}

const plainReserve = ({ reserve }: KitResult): number | undefined =>
  reserve?.ok ? inUnit(typeof reserve.value === 'number' ? reserve.value : reserve.value.value, '1') : undefined

/**
 * The reserve that this bow likes, as a kit narrows it: half way to the next shaft tried on either side; a side on which
 * nothing was tried stays open. Common practice, no source [CP].
 */
export function likedReserve(
  results: readonly KitResult[],
  liked: Id,
): { min: number | null; max: number | null } | undefined {
  const own = results.find(({ arrow }) => arrow.arrow === liked)
  const at = own && plainReserve(own)
  if (at === undefined) return undefined
  const others = results.flatMap((each) => (each === own ? [] : [plainReserve(each) ?? []].flat()))
  const below = others.filter((reserve) => reserve < at)
  const above = others.filter((reserve) => reserve > at)
  return {
    min: below.length === 0 ? null : (at + Math.max(...below)) / 2,
    max: above.length === 0 ? null : (at + Math.min(...above)) / 2,
  }
}

/** Deciding on an arrow of a kit: the plan takes its shaft, and the bow's chronograph the speeds that were read. */
export function decideKit(job: Job, shelf: Shelf, kit: Kit, arrow: Id, reason: string): readonly EventDraft[] {
  const chosen = kit.arrows.find((each) => each.arrow === arrow)
  const line = shaftLine(job, shelf)
  if (chosen === undefined || line === undefined || reason.trim() === '') throw new Error('nothing to decide')
  const about = { job: job.id }
  const speeds = kitResults(job, shelf, kit).flatMap((each): readonly (readonly [number, number])[] =>
    each.reported.speedFps === undefined || each.arrow.finishedGr === null
      ? []
      : [[each.arrow.finishedGr, each.reported.speedFps]],
  )
  const known = (valueOf(job.answers, 'chronograph') ?? []) as readonly [number, number][]
  const pairs = [...known, ...speeds.filter(([gr]) => !known.some(([old]) => old === gr))].map(
    ([gr, fps]) => [gr, fps] as [number, number],
  )
  return [
    newEvent('kitDecided', about, { arrow, reason: reason.trim() }),
    newEvent('lineSet', about, { line: { id: line.id, count: line.count, part: chosen.part, lot: chosen.lot } }),
    newEvent('planSet', about, { field: 'c2cIn', value: chosen.c2cIn }),
    ...(pairs.length === known.length
      ? []
      : [newEvent('answered', about, { question: 'chronograph', answer: { value: pairs, how: 'told' } })]),
  ]
}
