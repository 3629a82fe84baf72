/** The row of a job in lists and searches, and the rows of its arrows. Made from the job's story, never a source of its own. */
import { accepted } from '../bench/bench'
import { valueOf } from '../call/answers'
import { codeOf, plainCode } from '../records/code'
import type { Id } from '../records/scalars'
import type { ArrowRow, JobRow, JobStory } from '../records/view-rules'
import { wordsIn } from '../records/words-in'
import type { Sheet } from '../sheet/sheet'
import type { JobShare } from '../stock/job-share'
import { jobShares } from '../stock/job-share'
import type { Job } from './job'
import type { JobState } from './stage'
import { stateOf } from './stage'

export interface JobView extends JobRow {
  readonly code: string
  readonly kind: Job['kind']
  readonly state: JobState
  readonly clientName: string
  readonly client: Id | null
  readonly quarry: string
  readonly quantity: number
  readonly targetGr: number | null
  readonly open: number
  readonly shipOn: string | null
  /** Short codes of the as-built versions, for the Book. */
  readonly builds: readonly {
    readonly asBuilt: string
    readonly code: string
    readonly version: number
    readonly at: string
  }[]
}

/** One weighed part of an arrow, so that its lot can learn from it. */
export interface ArrowView extends ArrowRow {
  readonly code: string
  readonly no: number
  readonly state: 'building' | 'scrapped'
  readonly finishedGr: number | null
  readonly lessHeadGr: number | null
}

export function jobViewsOf(
  story: JobStory<Job | null>,
):
  | { readonly job: JobView; readonly arrows: readonly ArrowView[]; readonly shares: ReadonlyMap<Id, JobShare> }
  | undefined {
  const job = story.fold
  if (job === null) return undefined
  const sheets = story.facts.filter((fact) => fact.kind === 'sheet')
  const sheet = sheets.find((fact) => fact.hash === job.frozen.at(-1)?.sheet)?.body as Sheet | undefined
  const clientName = story.personal.map((row) => row.fields['name'] ?? '').find((name) => name !== '') ?? ''
  const quarry = (valueOf(job.answers, 'quarry') as string | undefined) ?? sheet?.hunt.quarry ?? ''
  const targetGr = job.plan.targetGr ?? null
  const builds = job.signedOff.map(({ asBuilt, version, at }) => ({ asBuilt, version, at, code: codeOf(asBuilt) }))
  const bow = (['bowKind', 'bowName'] as const)
    .map((question) => (valueOf(job.answers, question) as string | undefined) ?? '')
    .join(' ')
  const dates = [job.openedAt, ...job.signedOff.map(({ at }) => at), ...job.sent.map(({ on }) => on)]
  const arrows = (job.bench?.arrows ?? []).map((arrow): ArrowView => {
    const shaftLine = sheet?.plan.lines.find(
      (line) => sheet.parts.find((p) => p.id === line.part)?.part.kind === 'shaft',
    )
    const lot = arrow.fitted.find((fitted) => fitted.line === shaftLine?.id)?.lot ?? shaftLine?.lot
    return {
      id: arrow.id,
      job: job.id,
      ...(lot === null || lot === undefined ? {} : { lot }),
      code: arrow.code,
      no: arrow.no,
      state: arrow.state,
      finishedGr: accepted(arrow, 'finishedWeight')?.reading.value ?? null,
      lessHeadGr: accepted(arrow, 'weightLessHead')?.reading.value ?? null,
    }
  })
  const words = new Set([
    ...wordsIn([clientName, quarry, bow, job.kind, ...dates.map((at) => at.slice(0, 10))].join(' ')),
    plainCode(job.code).toLowerCase(),
    ...(targetGr === null ? [] : [String(Math.round(targetGr))]),
    ...builds.map((build) => plainCode(build.code).toLowerCase()),
    // The arrows of a set bear the number of its job and their own: one word, not one an arrow.
    ...arrows.map((arrow) => plainCode(arrow.code.split('/')[0]!).toLowerCase()),
    ...(sheet?.lots ?? []).flatMap(({ lot }) => wordsIn(lot.code)),
  ])
  const shares = jobShares(job, (hash) => sheets.find((fact) => fact.hash === hash)?.body as Sheet | undefined)
  return {
    job: {
      id: job.id,
      lots: [...shares.keys()],
      updated: job.updatedAt.slice(0, 'YYYY-MM-DDTHH:MM'.length), // so that most readings leave the row as it is
      words: [...words],
      code: job.code,
      kind: job.kind,
      state: stateOf(job),
      clientName,
      client: job.client,
      quarry,
      quantity: job.plan.quantity,
      targetGr,
      open: Object.values(job.answers).filter((answer) => answer !== undefined && 'unknown' in answer).length,
      shipOn: job.accepted?.shipOn ?? null,
      builds,
    },
    arrows,
    shares,
  }
}
