/**
 * Kill: every process of the browser is ended without a word while readings are saved, and the profile is opened again. No
 * reading that was acknowledged may be missing, none torn. All in one profile, since what one kill leaves may cost what was
 * written before a later one. First the planted fault: a page that says saved before the disk has answered must be caught.
 */
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { tally } from '@tests/run/tally'
import { startBrowser } from './support/browser-process'
import { servePage } from './support/build-page'
import { losses, nothingLost, readForEver } from './support/losses'

const KILLS = Number(process.env['KILLS'] ?? 10)

const { check, close } = tally()
const served = await servePage()
const folder = await mkdtemp(join(tmpdir(), 'grainwright-kill-'))
try {
  await check('a page that says saved too early is caught', async () => {
    for (let attempt = 1; attempt <= 8; attempt++) {
      const { lost } = await killed(1_000_000 * attempt, pauseOf(attempt), true)
      if (lost.length > 0) return
    }
    throw new Error('eight kills lost nothing of what was not written: this check sees no loss')
  })
  const rounds: Round[] = []
  for (let n = 1; n <= KILLS; n++) {
    await check(`kill ${n} of ${KILLS}`, async () => {
      const result = await killed(100_000_000 * n, pauseOf(n), false)
      rounds.push(result.round)
      nothingLost(result, result.round.acknowledged.length)
      // What was lost of an earlier round, at the start of this one, would not be missed in its own readings.
      const all = rounds.reduce((sum, { acknowledged }) => sum + 1 + acknowledged.length, 0)
      if (result.events < all)
        throw new Error(`${result.events} events are there, of ${all} acknowledged since the first kill`)
    })
  }
  await check('after the last kill every reading of every round is there', async () => {
    const browser = await startBrowser(join(folder, 'one'))
    try {
      const page = await browser.open(served.address)
      for (const { job, acknowledged } of rounds) {
        const { lost, torn } = await losses(page, job, acknowledged, 'the job alone')
        if (lost.length + torn.length > 0) throw new Error(`job ${job}: ${lost.length} lost; ${torn.join('; ')}`)
      }
    } finally {
      await browser.kill()
    }
  })
} finally {
  await rm(folder, { recursive: true, force: true })
  await served.stop()
}
close()

/** Milliseconds after the first that was acknowledged: another for each of four hundred kills. */
function pauseOf(n: number): number {
  return (n * 137) % 400
}

interface Round {
  readonly job: string
  readonly acknowledged: readonly number[]
}

async function killed(from: number, pause: number, early: boolean) {
  const profile = join(folder, early ? `${from}` : 'one')
  const browser = await startBrowser(profile)
  const { job, acknowledged } = await readForEver(await browser.open(served.address), { from, early })
  while (acknowledged.length === 0) await wait(20) // the plan ends a harness that waits for ever
  await wait(pause)
  await browser.kill()
  const known = [...acknowledged]
  const after = await startBrowser(profile)
  try {
    const page = await after.open(served.address)
    const result = await losses(page, job, known)
    const { events } = await page.evaluate(() => window.shop.tally())
    return { ...result, events, round: { job, acknowledged: known } }
  } finally {
    await after.kill()
  }
}
