import { describe, expect, it } from 'vitest'
import type { BenchArrow } from '@/domain/bench/bench'
import type { Reading } from '@/domain/bench/reading'
import type { Said } from '@/domain/records/write'
import { recordRepairs, repairArrow, unrecorded } from '@/state/afterwards-actions'
import type { Writing } from '@/state/app-store'
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
const asked = (arrow: BenchArrow, value: number) => ({
  arrow: arrow.id,
  line: sheet.plan.lines.find(({ part }) => part === clip.id)!.id,
  part: clip.id,
  lot: null,
  what: 'nock replaced',
  reason: 'cracked on a miss',
  finished: {
    point: 'finishedWeight',
    value,
    unit: 'gr',
    raw: `${value}`,
    source: 'typed',
    stable: true,
    attempt: 2,
    scale: '',
    takenAt: said.at,
  } satisfies Reading,
})
const [one, two] = job.bench!.arrows

describe('a repair of which only the first of two writes was saved', () => {
  it('has happened, is seen to be missing in the record, and is made up for', async () => {
    const get = await storeThatFails((write) => write === 2)
    expect(await repairArrow(get, sheet, asked(two!, 815.8))).toBe(false)
    expect(get().open!.job.afterwards.map(({ what }) => what)).toEqual(['repaired'])
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
    const get = await storeThatFails(() => true)
    const before = get().open!.job
    expect(await repairArrow(get, sheet, asked(one!, 815.2))).toBe(false)
    expect(await unrecorded(get(), sheet)).toEqual([])
    expect((await openJob(repository, job.id))!.job).toEqual(before)
  })
})
