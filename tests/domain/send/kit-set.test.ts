import { describe, expect, it } from 'vitest'
import { accepted, building } from '@/domain/bench/bench'
import { valueOf } from '@/domain/call/answers'
import { limitOf } from '@/domain/bench/limits'
import { ownSheet } from '@/domain/bench/own-sheet'
import type { JobEvent } from '@/domain/job/events'
import type { Job } from '@/domain/job/job'
import { jobAfter } from '@/domain/job/job'
import { chained, NO_EVENT } from '@/domain/records/event'
import type { AnyFact } from '@/domain/records/read-fact'
import type { EventDraft } from '@/domain/records/write'
import { builtKitProblems, builtShafts, kitJob, sendBuiltKit, startKit } from '@/domain/send/kit-set'
import { sendKit } from '@/domain/send/kit'
import type { Sheet } from '@/domain/sheet/sheet'
import { jobShares } from '@/domain/stock/job-share'
import { dice } from '@/demo/dice'
import { simulatedBuild } from '@/demo/simulated-build'
import { sentOrder } from '@tests/support/sent-order'
import { testId } from '@tests/support/test-id'

const { job: order, shelf, ids, partCalled, lotOf, said } = await sentOrder()
let commands = 0
const after = (from: Job | null, events: readonly EventDraft[], job: string): Job => {
  commands += 1
  const command = { id: testId(9300 + commands), ...said, events }
  const told = chained({ log: testId(93), seq: commands * 100, hash: NO_EVENT }, command) as readonly JobEvent[]
  return told.filter((event) => event.job === job).reduce<Job | null>(jobAfter, from)!
}
const shaft = (name: string, c2cIn?: number) => {
  const { id } = partCalled(name)
  return { part: id, lot: lotOf(id), finishedGr: null, ...(c2cIn === undefined ? {} : { c2cIn }) }
}
const SHAFTS = [shaft('Heron 175'), shaft('Heron 260', 27)]
const opened = kitJob(order, SHAFTS, ids)
const fresh = after(null, opened.events, opened.id)
const start = startKit({ order, kit: fresh, shafts: SHAFTS, client: null }, shelf, said, ids)
const kit = after(fresh, start.events, opened.id)
const told = after(order, start.events, order.id)
const begun = told.kitsBegun[0]!
const sheet = (start.facts[0] as Extract<AnyFact, { kind: 'sheet' }>).body as Sheet

/** Each arrow of the kit, read to the end as a builder would. */
async function builtOnTheBench(): Promise<Job> {
  let job = kit
  const perform = (events: readonly EventDraft[]) => {
    job = after(job, events, opened.id)
    return Promise.resolve(job)
  }
  await simulatedBuild(kit, sheet, dice(5), { perform, id: () => ids.id() })
  return job
}

describe('a test kit on the bench', () => {
  it('is a small set of its own, with the client, the answers and the plan of the order', () => {
    expect(kit.kind).toBe('test kit')
    expect(kit.client).toBe(order.client)
    expect(Object.keys(kit.answers)).toEqual(Object.keys(order.answers))
    expect(valueOf(kit.answers, 'chronograph')).toEqual(valueOf(order.answers, 'chronograph'))
    expect(kit.bench!.arrows.map(({ no }) => no)).toEqual([1, 2])
    expect(sheet.plan.quantity).toBe(2)
    expect(sheet.plan.lines).toHaveLength(order.plan.lines.length)
    expect(begun.kit).toBe(kit.id)
    expect(order.bench).toEqual(told.bench)
  })

  it('gives each arrow its own shaft and its own length', () => {
    const own = building(kit.bench!).map((arrow) => ownSheet(arrow, sheet))
    const shafts = own.map(({ plan, parts }) => {
      const lines = plan.lines.flatMap(({ part }) => parts.filter(({ id }) => id === part))
      return lines.find(({ part }) => part.kind === 'shaft')!.part.name
    })
    expect(shafts).toEqual(['Heron 175', 'Heron 260'])
    expect(own.map((each) => limitOf('c2c', each)!.min!.toFixed(1))).toEqual(['28.0', '27.0'])
  })

  it('reserves a piece of each of its lots', () => {
    const shares = jobShares(kit, () => sheet)
    for (const { lot } of SHAFTS) expect(shares.get(lot!)).toMatchObject({ reserved: 1, used: 0 })
    const untouched = lotOf(partCalled('Heron 200').id)!
    expect(shares.get(untouched)).toBeUndefined()
  })

  it('does not leave before each arrow has its finished weight, and says which has not', () => {
    expect(builtKitProblems(told, begun, kit, shelf)).toEqual([
      { code: 'not-weighed', no: 1 },
      { code: 'not-weighed', no: 2 },
    ])
    expect(() => sendBuiltKit(told, begun, kit, shelf, '2026-04-01')).toThrow('cannot be sent')
  })

  it('goes out with the weights the bench has read, and is no longer on the bench', async () => {
    const built = await builtOnTheBench()
    const weights = building(built.bench!).map((arrow) => accepted(arrow, 'finishedWeight')!.reading.value)
    expect(builtShafts(begun, built).map(({ finishedGr }) => finishedGr)).toEqual(weights)
    const sent = after(told, sendBuiltKit(told, begun, built, shelf, '2026-04-01'), order.id)
    expect(sent.kitsBegun).toEqual([])
    expect(sent.kits[0]!.arrows.map(({ finishedGr, c2cIn }) => [finishedGr, c2cIn])).toEqual([
      [weights[0], 28],
      [weights[1], 27],
    ])
    // The next kit's numbers go on from these.
    const next = after(sent, sendKit(sent, shelf, SHAFTS, '2026-05-01', ids), order.id)
    expect(next.kits[1]!.arrows.map(({ no }) => no)).toEqual([3, 4])
  })

  it('is one arrow short when one was scrapped, and one alone tells nothing apart', async () => {
    const built = await builtOnTheBench()
    const scrapped = {
      ...built,
      bench: {
        ...built.bench!,
        arrows: built.bench!.arrows.map((arrow, at) => (at === 0 ? { ...arrow, state: 'scrapped' as const } : arrow)),
      },
    }
    expect(builtKitProblems(told, begun, scrapped, shelf)).toEqual([{ code: 'too-few' }])
  })
})
