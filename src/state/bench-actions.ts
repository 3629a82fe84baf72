/** What the bench does: each one command, true once it is on the disk. The rules are the domain's. */
import type { DISPOSITIONS } from '../domain/bench/built'

import { building } from '../domain/bench/bench'
import type { BenchArrow, BenchDeviation } from '../domain/bench/bench'
import type { Ids } from '../domain/ports'
import { deviationOf } from '../domain/bench/deviation-of'
import type { Limit } from '../domain/bench/limits'
import type { Reading } from '../domain/bench/reading'
import type { Step } from '../domain/bench/route'
import type { Job } from '../domain/job/job'
import type { Photo } from '../domain/records/photo'
import type { Hash, Id } from '../domain/records/scalars'
import { newEvent } from '../domain/records/write'
import type { EventDraft } from '../domain/records/write'
import { arrowCode } from '../domain/sheet/freeze'
import type { Sheet } from '../domain/sheet/sheet'
import type { AppState } from './app-store'

type Writer = Pick<AppState, 'write' | 'note'>

interface At {
  readonly job: Id
  readonly arrow: Id
  readonly step: string
}

/** A reading; out of its limits it opens a deviation in the same command. */
export const takeAtBench = (
  { write }: Writer,
  { job, arrow, step }: At,
  reading: Reading,
  sheet: Sheet,
  limit?: Limit,
) =>
  write((_, ids) => {
    const deviation = deviationOf(reading, step, sheet, ids.id(), limit)
    const events: EventDraft[] = [newEvent('read', { job, arrow }, { step, reading })]
    if (deviation !== null) events.push(newEvent('deviationOpened', { job, arrow }, deviation))
    return { events }
  })

export const correctReading = ({ write }: Writer, at: At, target: Hash, reading: Reading | null, reason: string) =>
  write(() => ({ events: [newEvent('corrected', { job: at.job, arrow: at.arrow }, { target, reading, reason })] }))

interface Confirming {
  readonly job: Id
  /** null confirms the step for the whole set. */
  readonly arrow: Id | null
  readonly step: string
}
const aboutOf = ({ job, arrow }: Confirming) => ({ job, ...(arrow === null ? {} : { arrow }) })

/** @param past a hold point that the set is not through: passing it is a deviation, decided before signing off */
export const confirmStep = ({ write }: Writer, at: Confirming, past?: string) =>
  write((_, ids) => {
    const confirmed = newEvent('confirmed', aboutOf(at), { step: at.step })
    if (past === undefined) return { events: [confirmed] }
    const opened = {
      id: ids.id(),
      step: at.step,
      point: null,
      required: past,
      found: 'not done',
      why: '',
      decision: null,
    }
    return { events: [confirmed, newEvent('deviationOpened', { job: at.job }, opened)] }
  })

/** It has to be done again; that it was said to be done stays in the log. */
export const unconfirmStep = ({ write }: Writer, at: Confirming, reason: string) =>
  write(() => ({ events: [newEvent('unconfirmed', aboutOf(at), { step: at.step, reason })] }))

/** The set's own route from now on; what was read on another stays. */
export const setRoute = ({ write }: Writer, job: Id, route: readonly Step[]) =>
  write(() => ({ events: [newEvent('routeSet', { job }, { route: [...route] })] }))

/** *Scrap* takes the arrow out of the set, and another is begun where the set would be short of what was ordered. */
export const decideDeviation = (
  { write }: Writer,
  { job, deviation, ordered }: { readonly job: Job; readonly deviation: BenchDeviation; readonly ordered: number },
  disposition: (typeof DISPOSITIONS)[number],
  reason: string,
) =>
  write((_, ids) => {
    const decided = newEvent('deviationDecided', { job: job.id }, { deviation: deviation.id, disposition, reason })
    const arrow = job.bench?.arrows.find((each) => each.id === deviation.arrow && each.state === 'building')
    if (disposition !== 'scrap' || arrow === undefined || job.bench === null) return { events: [decided] }
    const isShort = building(job.bench).length <= ordered
    return { events: [decided, ...scrapEvents(job, arrow, reason, isShort, ids)] }
  })

/** @param replace a new arrow takes the place of the scrapped one, from the first step on */
export const scrapArrow = ({ write }: Writer, job: Job, arrow: BenchArrow, cause: string, replace: boolean) =>
  write((_, ids) => ({ events: scrapEvents(job, arrow, cause, replace, ids) }))

function scrapEvents(job: Job, arrow: BenchArrow, cause: string, replace: boolean, ids: Ids): readonly EventDraft[] {
  const events: EventDraft[] = [newEvent('scrapped', { job: job.id, arrow: arrow.id }, { cause })]
  const no = Math.max(0, ...(job.bench?.arrows ?? []).map((each) => each.no)) + 1
  if (replace) {
    const body = { arrow: ids.id(), no, code: arrowCode(job.code, no), replaces: arrow.id }
    events.push(newEvent('replaced', { job: job.id }, body))
  }
  return events
}

/** A note, a small picture, or both; at least one of them. */
export const noteAtBench = (store: Writer, at: Confirming, text: string, photo?: Photo) => {
  const personal = text === '' ? undefined : store.note(text)
  const { step } = at
  return store.write(() => ({
    events: [
      ...(personal === undefined ? [] : [newEvent('noted', aboutOf(at), { step, note: personal.hash })]),
      ...(photo === undefined ? [] : [newEvent('photographed', aboutOf(at), { step, photo: photo.hash })]),
    ],
    personal: personal === undefined ? [] : [personal],
    photos: photo === undefined ? [] : [photo],
  }))
}
