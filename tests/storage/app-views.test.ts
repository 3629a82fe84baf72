import { describe, expect, it } from 'vitest'
import { codeAsked } from '@/domain/book/code-asked'
import { VIEW_RULES } from '@/domain/job/view-rules'
import { codeOf } from '@/domain/records/code'
import { wordsIn } from '@/domain/records/words-in'
import { openRepository } from '@/storage/open-repository'
import { sentOrder } from '@tests/support/sent-order'
import { countedIds, engineOf, freshShop, heldSurroundings } from './fresh-shop'
import { live } from './random-book'
import { fileOf, textOf } from './backup/backup-of'

describe('a recovered backup that lacks the beginning of a job', () => {
  it('is added with what it has; the job is kept and not listed', async () => {
    const other = await freshShop()
    await live(other, [
      { do: 'client', name: 'Ilmari' },
      { do: 'job', client: 0 },
      { do: 'read', job: 0, arrow: 0, value: 412.3, minute: 1 },
    ])
    const lines = (await textOf(other.repository)).split('\n').filter((line) => !line.includes('"what":"opened"'))
    const repository = await openRepository({
      name: 'grainwright-test',
      rules: VIEW_RULES,
      ids: countedIds(77),
      surroundings: heldSurroundings().surroundings,
      engine: engineOf(),
    })
    const staged = await repository.archive.stage(fileOf(lines.join('\n')))
    expect(staged).toMatchObject({ check: { kind: 'damaged' }, adds: { event: 2, fact: 1 } })
    expect(await repository.archive.addStaged()).toMatchObject({ kind: 'saved' })
    expect(repository.state()).toEqual({ kind: 'open' })
    expect(await repository.jobViews()).toEqual([])
    expect((await repository.eventsOfJob(staged.jobs[0]!)).events).toHaveLength(2)
    expect((await repository.archive.verify()).problems).toMatchObject([{ problem: 'gap', from: 1, to: 1 }])
  })
})

describe('a job', () => {
  it('is found by client, quarry, bow, weight, date, lot and the codes on its labels', async () => {
    const order = await sentOrder('2026-03-02T09:00:00.000Z')
    const { repository, job, built, asBuilt, sheet } = order
    const lot = sheet.lots[0]!.lot.code
    const asked = {
      client: 'tolliv',
      quarry: 'bison',
      bow: 'compound',
      weight: '815',
      day: '2026-03-02',
      month: '2026-03',
      lot,
      job: job.code,
      build: codeOf(asBuilt),
      arrow: built.bench!.arrows[1]!.code,
    }
    for (const [by, text] of Object.entries(asked)) {
      const code = codeAsked(text)
      const { jobs } = await repository.findJobs(code === undefined ? wordsIn(text) : [code.word])
      expect(
        jobs.map(({ id }) => id),
        `by ${by}: ${text}`,
      ).toEqual([job.id])
    }
    expect(await repository.findJobs(['nobody'])).toEqual({ jobs: [], of: 0 })
    expect(await repository.findJobs(wordsIn('2026-02-03')), 'its day and month the other way round').toMatchObject({
      of: 0,
    })
  })
})
