/** After a redaction nothing the book gives out shows the person; each surface is first seen to show it. */
import { describe, expect, it } from 'vitest'
import { namesClient } from '@/domain/call/names-client'
import { VIEW_RULES } from '@/domain/job/view-rules'
import type { Repository } from '@/domain/ports'
import { personalOf } from '@/domain/records/personal'
import { photoOf } from '@/domain/records/photo'
import { readable } from '@/domain/records/read-fact'
import { newEvent, newFact } from '@/domain/records/write'
import { openRepository } from '@/storage/open-repository'
import { backupOf, fileOf, textOf } from './backup/backup-of'
import { AT, commands, countedIds, engineOf, heldSurroundings } from './fresh-shop'

const PERSON = /Ilmari|Vesa|Vaakuna|0401234|aunt/

async function shopWithClient() {
  const ids = countedIds(7_000)
  const { command, newClient, openJob, read } = commands(ids)
  const repository = await openRepository({
    name: 'grainwright-redaction',
    rules: VIEW_RULES,
    ids,
    surroundings: heldSurroundings().surroundings,
    engine: engineOf(),
  })
  const first = newClient('Ilmari Vesa')
  const fields = { name: 'Ilmari Vaakuna', phone: '0401234', notes: 'his aunt rings' }
  const renamed = personalOf(ids.salt(), fields)
  const second = newFact(
    { by: 'Ansa', at: AT },
    'client',
    first.subject,
    { personal: renamed.hash, consent: true },
    { parents: [first.fact.hash] },
  )
  const { job, command: opened } = openJob(first.subject)
  const note = personalOf(ids.salt(), { text: 'Ilmari rings in the evening' })
  const answered = personalOf(ids.salt(), { text: 'Ilmari shoots with his aunt' })
  const photo = photoOf('image/png', new Uint8Array(200).fill(3))
  const given = [
    first.command,
    opened,
    command({ facts: [second], personal: [renamed] }),
    read(job, ids.id(), 412.3),
    command({ events: [newEvent('noted', { job }, { step: 'call', note: note.hash })], personal: [note] }),
    command({
      events: [
        newEvent(
          'answered',
          { job },
          { question: 'otherWishes', answer: { value: { note: answered.hash }, how: 'told' } },
        ),
      ],
      personal: [answered],
    }),
    command({ events: [newEvent('photographed', { job }, { step: 'call', photo: photo.hash })], photos: [photo] }),
  ]
  for (const each of given) expect(await repository.commit(each)).toMatchObject({ kind: 'saved' })
  return { repository, command, client: first.subject, job, photo, first }
}

type Shop = Awaited<ReturnType<typeof shopWithClient>>

/** Everything that the book gives out, as one text each. */
async function surfaces({ repository, job, client }: Shop) {
  const csv = async (what: 'readings' | 'builds') => {
    let text = ''
    await repository.archive.csv(what, (piece) => void (text += piece))
    return text
  }
  return {
    backup: await textOf(repository),
    tables: (await csv('readings')) + (await csv('builds')),
    lists: JSON.stringify(await repository.jobViews()),
    found: JSON.stringify([
      (await repository.findJobs(['ilmari'])).jobs,
      (await repository.findJobs(['vaakuna'])).jobs,
      await repository.findSubjects('client', ['0401234']),
      await repository.findSubjects('client', ['aunt']),
    ]),
    story: JSON.stringify(await repository.eventsOfJob(job)),
    people: JSON.stringify(await peopleOf(repository, client)),
  }
}

async function peopleOf(repository: Pick<Repository, 'versionsOf' | 'personal'>, client: string) {
  const versions = readable(await repository.versionsOf('client', client))
  return Promise.all(versions.map((fact) => repository.personal(fact.body.personal)))
}

async function forget({ repository, command, client }: Shop) {
  const versions = readable(await repository.versionsOf('client', client))
  const jobs = await repository.jobViewsOf(client)
  const stories = await Promise.all(jobs.map(async ({ id }) => (await repository.eventsOfJob(id)).events))
  const { versions: all, notes, photos } = namesClient(versions, stories)
  expect([all.length, notes.length, photos.length]).toEqual([2, 2, 1])
  const body = { forget: [...all, ...notes, ...photos] }
  const fact = newFact({ by: 'Ansa', at: AT }, 'redaction', client, body, { reason: 'asked by the client' })
  return repository.commit(command({ facts: [fact] }))
}

describe('a client who was forgotten', () => {
  it('stands in no export, list, search, story or version, and every hash still verifies', async () => {
    const shop = await shopWithClient()
    const before = await surfaces(shop)
    for (const shows of ['backup', 'lists', 'people'] as const) expect(before[shows], shows).toMatch(PERSON)
    expect(before.found).not.toBe('[[],[],[],[]]')
    expect(await shop.repository.photo(shop.photo.hash)).toBeDefined()

    expect(await forget(shop)).toMatchObject({ kind: 'saved' })
    const after = await surfaces(shop)
    for (const [surface, text] of Object.entries(after)) expect(text, surface).not.toMatch(PERSON)
    expect(after.found).toBe('[[],[],[],[]]')
    expect(await shop.repository.photo(shop.photo.hash)).toBeUndefined()
    expect((await shop.repository.archive.verify()).problems).toEqual([])
    expect(await shop.repository.jobViewsOf(shop.client)).toHaveLength(1)
  })

  it('does not come back with an older backup, nor with the same command given again', async () => {
    const shop = await shopWithClient()
    const old = await backupOf(shop.repository)
    await forget(shop)
    const staged = await shop.repository.archive.stage(fileOf(old))
    expect(staged.forgotten).toBe(5)
    expect(await shop.repository.archive.addStaged()).toMatchObject({ kind: 'saved' })
    expect(await shop.repository.commit(shop.first.command)).toMatchObject({ kind: 'saved', again: true })
    const events = [newEvent('confirmed', { job: shop.job }, { step: 'call' })]
    await shop.repository.commit(shop.command({ events, personal: [shop.first.personal] }))
    for (const [surface, text] of Object.entries(await surfaces(shop))) expect(text, surface).not.toMatch(PERSON)
    expect((await shop.repository.archive.verify()).problems).toEqual([])
  })
})
