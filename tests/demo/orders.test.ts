import { describe, expect, it } from 'vitest'
import { arrowBuiltOf } from '@/domain/bench/sign-off'
import { inGrains } from '@/core/quantity'
import { fillDemo } from '@/demo/fill-demo'
import type { EventBody, JobEvent } from '@/domain/job/events'
import type { Job } from '@/domain/job/job'
import { jobAfter } from '@/domain/job/job'
import { stateOf } from '@/domain/job/stage'
import type { Command } from '@/domain/ports'
import { chained, NO_EVENT } from '@/domain/records/event'
import type { LogHead } from '@/domain/records/event'
import type { AnyEvent } from '@/domain/records/read-event'
import type { AnyFact, FactOf } from '@/domain/records/read-fact'
import { changedSince } from '@/domain/send/repair'
import { cutFigures } from '@/domain/sheet/cut-figures'
import { planProblems } from '@/domain/sheet/plan-problems'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import type { Sheet } from '@/domain/sheet/sheet'
import { testId } from '@tests/support/test-id'

const NOW = '2026-03-02T09:00:00.000Z'

/** The demo shop as a book would take it, folded by job. */
async function demoShop(now: string) {
  const commands: Command[] = []
  let head: LogHead = { log: testId(1), seq: 0, hash: NO_EVENT }
  const jobs = new Map<string, Job | null>()
  await fillDemo(
    {
      commit(command) {
        commands.push(command)
        const events = chained(head, { ...command, events: (command.events ?? []) as readonly AnyEvent[] })
        for (const event of events) {
          head = { log: event.log, seq: event.seq, hash: event.hash }
          if (event.job !== null) jobs.set(event.job, jobAfter(jobs.get(event.job) ?? null, event as JobEvent))
        }
        return Promise.resolve({ kind: 'saved', command: command.id, again: false, events })
      },
    },
    now,
  )
  const facts = commands.flatMap(({ facts: made = [] }) => made) as readonly AnyFact[]
  const sheets = facts.flatMap((fact) => (fact.kind === 'sheet' ? [fact.body] : []))
  return { commands, facts, sheets, jobs: [...jobs.values()].flatMap((job) => (job === null ? [] : [job])) }
}

const problemsOf = (sheet: Sheet) => {
  const worked = sheetFigures(sheet)!
  return planProblems(sheet, worked, cutFigures(sheet, worked))
}

const shop = demoShop(NOW)

describe('the demo shop', () => {
  it('has an order at every stage', async () => {
    const { jobs } = await shop
    expect(jobs.map(stateOf)).toEqual(['sent', 'sent', 'building', 'ready to build', 'calling'])
  })

  it('has every reading taken when it was written down', async () => {
    const { commands } = await shop
    const read = commands.flatMap(({ at, events = [] }) =>
      events.flatMap((event) =>
        event.what === 'read' ? [[(event.body as EventBody<'read'>).reading, at] as const] : [],
      ),
    )
    expect(read.length).toBeGreaterThan(50)
    for (const [reading, at] of read) expect(reading).toMatchObject({ takenAt: at })
  })

  it('has nothing in a sent job that its as-built record does not say', async () => {
    const { jobs, facts } = await shop
    const byHash = new Map(facts.map((fact) => [fact.hash, fact]))
    const sent = jobs.filter((job) => stateOf(job) === 'sent')
    expect(sent).toHaveLength(2)
    for (const job of sent) {
      const built = byHash.get(job.signedOff.at(-1)!.asBuilt) as FactOf<'asBuilt'>
      const sheet = byHash.get(job.frozen.at(-1)!.sheet) as FactOf<'sheet'>
      const arrows = built.body.arrows.map((hash) => [hash, (byHash.get(hash) as FactOf<'arrowBuilt'>).body] as const)
      const standing = { hash: built.hash, body: built.body, arrows: new Map(arrows) }
      for (const [hash, body] of arrows) {
        const arrow = job.bench!.arrows.find(({ id }) => id === body.arrow)!
        expect(arrowBuiltOf(arrow, job.bench!, sheet.body), hash).toEqual(body)
      }
      expect(changedSince(job, sheet.body, standing)).toEqual([])
    }
  })

  it('calls a job by one number, on its sheets and its arrows too', async () => {
    const { jobs, sheets } = await shop
    expect(new Set(jobs.map(({ code }) => code)).size).toBe(5)
    expect(sheets.map(({ jobCode }) => jobCode)).toEqual(jobs.slice(0, 4).map(({ code }) => code))
    const arrows = jobs.flatMap(({ code, bench }) =>
      [...(bench?.arrows.values() ?? [])].map((arrow) => ({ code, arrow })),
    )
    expect(arrows.length).toBeGreaterThan(9)
    for (const { code, arrow } of arrows) expect(arrow.code).toBe(`${code}/${arrow.no}`)
  })

  it('plans nothing that its own rules would stop or question, each on its target', async () => {
    const { sheets } = await shop
    expect(sheets).toHaveLength(4)
    for (const sheet of sheets) {
      expect(problemsOf(sheet)).toEqual([])
      const finished = sheetFigures(sheet)?.figures?.finished
      expect(finished?.ok && Math.abs(inGrains(finished.value) - sheet.plan.targetGr!)).toBeLessThan(0.5)
    }
  })

  it('is the same shop whenever it is filled on one day', async () => {
    const [one, other] = [await shop, await demoShop(NOW)]
    expect(other.commands).toEqual(one.commands)
  })

  it('is written in commands that a slow disk can take', async () => {
    const { commands } = await shop
    for (const { events = [] } of commands.slice(1)) expect(events.length).toBeLessThanOrEqual(120)
  })
})
