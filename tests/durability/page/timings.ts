/** How long the things take that a builder waits for. Milliseconds, unless a name says otherwise. */
import { jobOf } from '@/domain/job/job'
import { newEvent } from '@/domain/records/write'
import type { AppRepository } from '@/state/app-repository'
import { createAppStore } from '@/state/app-store'
import { browserClock, browserIds } from '@/storage/browser-clock'

const percentile = (times: readonly number[], p: number) =>
  times.toSorted((a, b) => a - b)[Math.ceil(times.length * p) - 1]!

async function time(work: () => Promise<unknown>): Promise<number> {
  const start = performance.now()
  await work()
  return performance.now() - start
}

/** A name, the end of a name, a quarry that every fourth job has, a year, a day, a weight, a kind that all have, a lot. */
const ASKED = [
  'ilm',
  'tovesen',
  'vigdis',
  '1234',
  'moose',
  '2026',
  '2027-03',
  '785',
  'order',
  'l00',
  '2',
  'ilmari moose',
]

/** The store as the app makes it, over a repository that is open. */
export const storeOf = (repository: AppRepository) =>
  createAppStore({
    clock: browserClock,
    ids: browserIds,
    memory: { recall: () => null, keep: () => {} },
    open: () => Promise.resolve(repository),
    openScale: () => Promise.reject(new Error('no scale here')),
    openSearcher: () => Promise.reject(new Error('no search here')),
    benches: () => ({ hold: () => Promise.resolve(undefined) }),
  })

const reading = (value: number) => ({
  point: 'cutWeight' as const,
  value,
  unit: 'gr' as const,
  raw: `${value}`,
  source: 'typed' as const,
  stable: true,
  attempt: 1,
  scale: 'Scale 1',
  takenAt: browserClock.now(),
})

/** One row written strictly to a database that holds nothing else: what this machine takes for any save at all. */
async function bareWrites() {
  const db = await new Promise<IDBDatabase>((opened, failed) => {
    const request = indexedDB.open('bare', 1)
    request.addEventListener('upgradeneeded', () => request.result.createObjectStore('rows'))
    request.addEventListener('success', () => opened(request.result))
    request.addEventListener('error', () => failed(request.error))
  })
  return (n: number) =>
    new Promise<void>((done, failed) => {
      const transaction = db.transaction('rows', 'readwrite', { durability: 'strict' })
      transaction.objectStore('rows').put({ ...reading(n), raw: 'x'.repeat(400) }, n)
      transaction.addEventListener('complete', () => done())
      transaction.addEventListener('abort', () => failed(transaction.error))
    })
}

/** @param saves from the first of a new page on; as many as a set of twelve has readings, if not said otherwise */
export async function timings(repository: AppRepository, saves = 300) {
  const jobs = await repository.jobViews(200)
  const list = await time(() => repository.jobViews(200))
  const finds: Record<string, [ms: number, found: number]> = {}
  for (const asked of ASKED) {
    let of = 0
    const ms = await time(async () => (of = (await repository.findJobs(asked.split(' '), 50)).of))
    finds[asked] = [Math.round(ms), of]
  }
  const findClient = await time(() => repository.findSubjects('client', ['ilm'], 8))
  const opens: number[] = []
  for (const job of jobs.slice(0, 20))
    opens.push(await time(async () => jobOf((await repository.eventsOfJob(job.id)).events)))

  const store = storeOf(repository)
  await store.getState().start('shop')
  const job = jobs[0]!.id
  await store.getState().loadJob(job)
  const arrows = store.getState().open!.job.bench!.arrows
  const times: number[] = []
  const bare: number[] = []
  const write = await bareWrites()
  for (let n = 0; n < saves; n++) {
    const arrow = arrows[n % arrows.length]!.id
    bare.push(await time(() => write(n)))
    const events = [newEvent('read', { job, arrow }, { step: 'weigh cut', reading: reading(400 + n / 10) })]
    times.push(
      await time(async () => {
        if (!(await store.getState().write(() => ({ events })))) throw new Error('not saved')
      }),
    )
  }
  return {
    list,
    finds,
    findMost: Math.max(...Object.values(finds).map(([ms]) => ms), findClient),
    openJob: Math.max(...opens),
    saveP50: percentile(times, 0.5),
    saveP95: percentile(times, 0.95),
    saveFirst: times[0],
    bareP50: percentile(bare, 0.5),
    bareP95: percentile(bare, 0.95),
    events: store.getState().open!.events.length,
  }
}
