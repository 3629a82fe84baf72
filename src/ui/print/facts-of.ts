/** What the title block of a print says, from the record that it prints. */
import { codeOf } from '../../domain/records/code'
import type { FactOf } from '../../domain/records/read-fact'
import type { Job } from '../../domain/job/job'
import { showDayAndYear } from '../words/dates'
import type { TitleBlockFacts } from './title-block'

const SHORT_HASH = 12 // letters

export const sheetFacts = (fact: FactOf<'sheet'>): TitleBlockFacts => ({
  shop: fact.body.rules.shopName,
  job: [fact.body.jobCode, fact.body.hunt.quarry].filter((word) => word !== undefined).join(', '),
  record: codeOf(fact.hash),
  version: fact.body.version,
  hash: fact.hash.slice(0, SHORT_HASH),
  made: showDayAndYear(fact.at.slice(0, 10)),
})

/** For what is printed of a job: by its newest as-built, else its newest frozen sheet, else the job alone. */
export function jobFacts(job: Job, shop: string): TitleBlockFacts {
  const last = job.signedOff.at(-1)
  const frozen = job.frozen.at(-1)
  const hash = last?.asBuilt ?? frozen?.sheet
  return {
    shop,
    job: job.code,
    record: hash === undefined ? job.code : codeOf(hash),
    version: last?.version ?? frozen?.version ?? null,
    hash: hash?.slice(0, SHORT_HASH) ?? null,
    made: showDayAndYear((last?.at ?? frozen?.at ?? job.updatedAt).slice(0, 10)),
  }
}
