import { describe, expect, it } from 'vitest'
import { schedule, type Task } from './schedule'

async function run(tasks: readonly Task[], cores: number) {
  const log: string[] = []
  let busy = 0
  let most = 0
  await schedule(tasks, cores, async (task) => {
    busy += task.cores
    most = Math.max(most, busy)
    log.push(`start ${task.name}`)
    await new Promise((go) => setTimeout(go, 5))
    log.push(`end ${task.name}`)
    busy -= task.cores
  })
  return { log, most }
}

describe('schedule', () => {
  it('runs every task once and never more than fit', async () => {
    const tasks = ['a', 'b', 'c', 'd', 'e'].map((name, i) => ({ name, cores: i === 2 ? 2 : 1 }))
    const { log, most } = await run(tasks, 2)
    expect(log.filter((line) => line.startsWith('start')).sort()).toEqual(tasks.map(({ name }) => `start ${name}`))
    expect(most).toBe(2)
  })

  it('starts a task after those it names', async () => {
    const { log } = await run(
      [
        { name: 'page', cores: 1, after: ['build'] },
        { name: 'build', cores: 1 },
      ],
      2,
    )
    expect(log).toEqual(['start build', 'end build', 'start page', 'end page'])
  })

  it('runs on one core what would like two', async () => {
    expect((await run([{ name: 'wide', cores: 2 }], 1)).log).toEqual(['start wide', 'end wide'])
  })

  it('lets nothing narrow slip past one that waits for room', async () => {
    const wide = { name: 'wide', cores: 2 }
    const { log } = await run([{ name: 'a', cores: 1 }, wide, { name: 'b', cores: 1 }], 2)
    expect(log.indexOf('start wide')).toBeLessThan(log.indexOf('start b'))
  })

  it('hands on a failure', async () => {
    await expect(schedule([{ name: 'a', cores: 1 }], 1, () => Promise.reject(new Error('broken')))).rejects.toThrow(
      'broken',
    )
  })
})
