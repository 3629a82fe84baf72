import { describe, expect, it } from 'vitest'
import { READINGS_HEADER } from '@/domain/bench/readings-csv'
import type { EventBody } from '@/domain/records/kinds'
import { newEvent } from '@/domain/records/write'
import { freshShop } from './fresh-shop'

describe('the table of readings', () => {
  it('has every reading with what became of it, and no formula that a note or a scale could plant', async () => {
    const { repository, ids, openJob, read, command } = await freshShop()
    const { job, command: open } = openJob()
    const arrow = ids.id()
    await repository.commit(open)
    const first = read(job, arrow, 412.3)
    const receipt = await repository.commit(first)
    if (receipt.kind !== 'saved') throw new Error(receipt.detail)
    const target = receipt.events[0]!
    const { reading } = target.body as EventBody<'read'>
    await repository.commit(
      command({
        events: [
          newEvent(
            'corrected',
            { job, arrow },
            {
              target: target.hash,
              reading: { ...reading, value: 421.3, raw: '=421.3' },
              reason: 'read "412", scale said 421',
            },
          ),
        ],
      }),
    )
    let table = ''
    await repository.archive.csv('readings', (text) => void (table += text))
    const rows = table.split('\r\n')
    expect(`${rows[0]}\r\n`).toBe(READINGS_HEADER)
    expect(rows).toHaveLength(4)
    expect(rows[1]).toContain('cutWeight,412.3,gr,412.3,typed,yes,1,Scale 1')
    expect(rows[1]).toContain('"read ""412"", scale said 421"')
    expect(rows[2]).toContain("cutWeight,421.3,gr,'=421.3,typed")
    expect(rows[2]).toContain('weigh cut shaft')
  })

  it('is only its heading for an empty book', async () => {
    const { repository } = await freshShop()
    let table = ''
    await repository.archive.csv('readings', (text) => void (table += text))
    await repository.archive.csv('builds', (text) => void (table += text))
    expect(table.split('\r\n')).toHaveLength(3)
  })
})
