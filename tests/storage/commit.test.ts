import { describe, expect, it } from 'vitest'
import { readable } from '@/domain/records/read-fact'
import { freshShop } from './fresh-shop'

describe('commit', () => {
  it('keeps a reading as it was read, hung onto the log, and shows it in the views at once', async () => {
    const { repository, ids, openJob, newClient, read } = await freshShop()
    const client = newClient('Ilmari Vesa')
    const { job, command } = openJob(client.subject)
    const arrow = ids.id()
    await repository.commit(client.command)
    await repository.commit(command)
    expect(await repository.commit(read(job, arrow, 412.3))).toMatchObject({ kind: 'saved', again: false })

    const { events, unread } = await repository.eventsOfJob(job)
    expect(unread).toEqual([])
    expect(events.map((event) => event.what)).toEqual(['opened', 'clientSet', 'read'])
    expect(events.map((event) => event.seq)).toEqual([1, 2, 3])
    expect(events[2]?.prev).toBe(events[1]?.hash)
    expect(events[2]).toMatchObject({ arrow, body: { reading: { value: 412.3, raw: '412.3', unit: 'gr' } } })
    expect(await repository.jobViews()).toMatchObject([{ id: job, name: 'Ilmari Vesa', events: 3 }])
    expect(await repository.arrowViews(job)).toEqual([{ id: arrow, job, readings: [412.3] }])
    expect(await repository.findJobs(['ves'])).toMatchObject({ jobs: [{ id: job }], of: 1 })
    expect(await repository.tally()).toMatchObject({ facts: 1, events: 3, head: { seq: 3, hash: events[2]?.hash } })
  })

  it('writes a command once, however often it is given', async () => {
    const { repository, openJob } = await freshShop()
    const { command } = openJob()
    const first = await repository.commit(command)
    const second = await repository.commit(command)
    expect(first).toMatchObject({ kind: 'saved', again: false })
    expect(second).toMatchObject({ kind: 'saved', again: true })
    expect(second.kind === 'saved' && second.events).toEqual(first.kind === 'saved' && first.events)
    expect(await repository.tally()).toMatchObject({ events: 2 })
  })

  it('writes a command once, though the book was opened again meanwhile and others were written', async () => {
    const { repository, openJob, open } = await freshShop()
    const { command } = openJob()
    await repository.commit(command)
    repository.close()
    const later = await open()
    await later.commit(openJob().command)
    await later.commit(openJob().command)
    expect(await later.commit(command)).toMatchObject({ kind: 'saved', again: true })
    expect(await later.tally()).toMatchObject({ events: 6 })
  })

  it('shows two versions that follow the same one as two heads', async () => {
    const { repository, newClient } = await freshShop()
    const first = newClient('Ilmari')
    const here = newClient('Ilmari Vesa', first.subject, [first.fact.hash])
    const there = newClient('Ilmari W.', first.subject, [first.fact.hash])
    for (const each of [first, here, there]) await repository.commit(each.command)
    const heads = await repository.headsOf('client', first.subject)
    expect(new Set(readable(heads).map((fact) => fact.hash))).toEqual(new Set([here.fact.hash, there.fact.hash]))
    expect(await repository.versionsOf('client', first.subject)).toHaveLength(3)
  })

  it('counts stock that moved outside any job', async () => {
    const { repository, ids, moveStock } = await freshShop()
    const [part, lot] = [ids.id(), ids.id()]
    await repository.commit(moveStock(part, lot, 24))
    await repository.commit(moveStock(part, lot, -6))
    expect(await repository.lotView(lot)).toMatchObject({ onHand: 18 })
  })

  it('refuses a malformed command as a fault of the program and writes nothing', async () => {
    const { repository, newClient } = await freshShop()
    const { command, fact } = newClient('Ilmari')
    expect(() => repository.commit({ ...command, facts: [{ ...fact, by: 'someone else' }] })).toThrow(
      'does not fit its hash',
    )
    expect(await repository.tally()).toMatchObject({ facts: 0, events: 0 })
  })
})
