/** How this app makes its views; see records/view-rules for what each rule must hold to. */

import type { AnyFact } from '../records/read-fact'
import type { Hash, Id } from '../records/scalars'
import type { Subject, ViewRules } from '../records/view-rules'
import { wordsIn } from '../records/words-in'
import type { JobShare } from '../stock/job-share'
import type { LotView } from '../stock/lot-view'
import { lotViewOf, lotWithJob } from '../stock/lot-view'
import type { ArrowView, JobView } from './job-view'
import { jobViewsOf } from './job-view'
import type { Job } from './job'
import { jobAfter } from './job'

export const VIEW_RULES: ViewRules<JobView, ArrowView, LotView, JobShare, Job | null> = {
  begin: null,
  after: jobAfter,
  standsOn(job) {
    const subjects: Subject[] = job?.client ? [{ kind: 'client', subject: job.client }] : []
    return { subjects, facts: job?.frozen.map((each) => each.sheet) ?? [] }
  },
  personalOf(record): readonly Hash[] {
    if ('what' in record) {
      if (record.what === 'noted') return [record.body.note]
      if (record.what !== 'answered' || !('value' in record.body.answer)) return []
      const { value } = record.body.answer
      return typeof value === 'object' && 'note' in value ? [value.note] : []
    }
    return record.kind === 'client' ? [record.body.personal] : []
  },
  jobViews: jobViewsOf,
  lotsOf(record): readonly Id[] {
    if (!('what' in record)) return record.kind === 'lot' ? [record.subject] : []
    if (record.what === 'lotWeighed' || record.what === 'lotWeightSetAside') return [record.body.lot]
    return record.what === 'stockMoved' && record.body.lot !== null ? [record.body.lot] : []
  },
  lotView: lotViewOf,
  lotWithJob,
  wordsOf(fact: AnyFact, personal) {
    if (fact.kind === 'client') return personal.flatMap((row) => wordsIn(Object.values(row.fields).join(' ')))
    if (fact.kind === 'part') return wordsIn(`${fact.body.kind} ${fact.body.name}`)
    return fact.kind === 'lot' ? wordsIn(fact.body.code) : []
  },
  partOf: (fact: AnyFact): readonly Id[] => (fact.kind === 'lot' ? [fact.body.part] : []),
}
