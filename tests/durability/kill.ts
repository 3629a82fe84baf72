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
  for (let n = 1; n <= KILLS; n++) {
    await check(`kill ${n} of ${KILLS}`, async () => {
      const result = await killed(100_000_000 * n, pauseOf(n), false)
      nothingLost(result, result.acknowledged)
    })
  }
} finally {
  await rm(folder, { recursive: true, force: true })
  await served.stop()
}
close()

/** Milliseconds after the first that was acknowledged: another for each of four hundred kills. */
function pauseOf(n: number): number {
  return (n * 137) % 400
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
    return { ...(await losses(await after.open(served.address), job, known)), acknowledged: known.length }
  } finally {
    await after.kill()
  }
}
