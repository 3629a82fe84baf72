import { describe, expect, it } from 'vitest'
import type { BenchArrow } from '@/domain/bench/bench'
import type { Reading } from '@/domain/bench/reading'
import { openRepair } from '@/domain/send/repairs'
import type { Said } from '@/domain/records/write'
import { beginRepairOf, closeRepairOf, doRepairStep, recordRepairs, unrecorded } from '@/state/repair-actions'
import type { Writing } from '@/state/writing'
import { openJob } from '@/state/open-job'
import { sentOrder } from '@tests/support/sent-order'

const order = await sentOrder()
const { repository, shelf, ids, sheet, job, partCalled } = order
const said: Said = { by: 'Runa', at: '2026-09-01T10:00:00.000Z' }

/** A store whose writes reach the disk until `failing` says otherwise. */
async function storeThatFails(failing: (write: number) => boolean) {
  let writes = 0
  let open = await openJob(repository, job.id)
  const get = () => ({
    repository,
    shelf,
    open,
    now: () => said.at,
    write: async (make: (by: Said, from: typeof ids) => Writing) => {
      writes += 1
      if (failing(writes)) return false
      const receipt = await repository.commit({ id: ids.id(), ...said, ...make(said, ids) })
      open = await openJob(repository, job.id)
      return receipt.kind === 'saved'
    },
  })
  return get
}

const clip = partCalled('Clip 11')
const weighed = (value: number) =>
  ({
    point: 'finishedWeight',
    value,
    unit: 'gr',
    raw: `${value}`,
    source: 'typed',
    stable: true,
    attempt: 2,
    scale: '',
    takenAt: said.at,
  }) satisfies Reading
const asked = (arrow: BenchArrow) => ({
  arrow: arrow.id,
  line: sheet.plan.lines.find(({ part }) => part === clip.id)!.id,
  part: clip.id,
  lot: null,
  what: 'nock replaced',
  reason: 'cracked on a miss',
  before: weighed(804.8),
})
/** Four writes bring it to its last step. */
async function brought(get: Awaited<ReturnType<typeof storeThatFails>>, arrow: BenchArrow) {
  const its = () => get().open!.job
  await beginRepairOf(get(), its(), sheet, asked(arrow))
  for (const step of ['look', 'strip', 'fit'] as const)
    await doRepairStep(get(), its(), openRepair(its(), arrow.id)!, { step, sheet, cure: null }, '')
  return openRepair(its(), arrow.id)!
}
const [one, two] = job.bench!.arrows

describe('a repair of which only the first of two writes was saved', () => {
  it('has happened, is seen to be missing in the record, and is made up for', async () => {
    const get = await storeThatFails((write) => write === 6)
    const repair = await brought(get, two!)
    expect(await closeRepairOf(get, sheet, repair, weighed(815.8), said.at)).toBe(false)
    expect(get().open!.job.afterwards.map(({ what }) => what)).toEqual(['repairBegun', 'repaired'])
    expect(get().open!.job.signedOff).toHaveLength(1)
    expect(await unrecorded(get(), sheet)).toEqual([2])

    expect(await recordRepairs(get(), sheet, 'cracked on a miss')).toBe(true)
    expect(get().open!.job.signedOff.at(-1)!.version).toBe(2)
    expect(await unrecorded(get(), sheet)).toEqual([])
    // Asked once more it writes nothing.
    expect(await recordRepairs(get(), sheet, 'cracked on a miss')).toBe(true)
    expect(get().open!.job.signedOff).toHaveLength(2)
  })

  it('leaves nothing behind when the first was not saved either', async () => {
    const get = await storeThatFails((write) => write > 4)
    const repair = await brought(get, one!)
    const before = get().open!.job
    expect(await closeRepairOf(get, sheet, repair, weighed(815.2), said.at)).toBe(false)
    expect(await unrecorded(get(), sheet)).toEqual([])
    expect((await openJob(repository, job.id))!.job).toEqual(before)
  })
})
