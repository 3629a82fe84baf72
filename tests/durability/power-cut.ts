/**
 * Power cut: the browser's profile lies on a loop disk; while readings are saved, the disk is copied as it is at that
 * moment and the copy is opened by another browser. No reading that was acknowledged may be missing, none torn. First the
 * planted fault: with relaxed durability, a browser's default, the same run must lose. DURABILITY=relaxed runs nothing
 * else and ends in failure.
 */
import { setTimeout as wait } from 'node:timers/promises'
import { tally } from '@tests/run/tally'
import { startBrowser } from './support/browser-process'
import { servePage } from './support/build-page'
import type { Durability } from './support/build-page'
import { losses, nothingLost, readForEver } from './support/losses'
import type { Losses } from './support/losses'
import { newDisk, noLoopDisk } from './support/loop-disk'

const CUTS = Number(process.env['CUTS'] ?? 10)
const DISK = 400 // MB
/** Cuts of one browser; then another begins an empty book, as what is saved meanwhile has to be looked through at each. */
const SITTING = 25

const { check, skip, close } = tally()
const hindrance = noLoopDisk()
if (hindrance !== undefined) skip('power cut', hindrance)
else if (process.env['DURABILITY'] === 'relaxed') await cut('relaxed', 3, nothingLost)
else {
  await cut('relaxed', 1, ({ lost }, acknowledged) => {
    console.log(`          ${lost.length} of ${acknowledged} lost, as it must be`)
    if (lost.length === 0) throw new Error('relaxed durability lost nothing: this check sees no loss')
  })
  for (let n = 0; n < CUTS; n += SITTING) await cut('strict', Math.min(SITTING, CUTS - n), nothingLost, n)
}
close()

async function cut(
  durability: Durability,
  cuts: number,
  holds: (losses: Losses, acknowledged: number) => void,
  done = 0,
) {
  const served = await servePage(durability)
  const disk = newDisk(DISK)
  const browser = await startBrowser(`${disk.folder}/profile`)
  try {
    const { job, acknowledged } = await readForEver(await browser.open(served.address))
    for (let n = 1; n <= cuts; n++) {
      await check(`power cut ${done + n}, ${durability}`, async () => {
        const before = acknowledged.length
        await wait(300 + ((n * 137) % 500))
        browser.halt()
        const known = [...acknowledged]
        const copy = disk.cut()
        browser.goOn()
        if (known.length <= before) throw new Error('nothing was saved before the cut')
        const after = await startBrowser(`${copy.folder}/profile`)
        try {
          holds(await losses(await after.open(served.address), job, known), known.length)
        } finally {
          await after.kill()
          copy.remove()
        }
      })
    }
  } finally {
    await browser.kill()
    disk.remove()
    await served.stop()
  }
}
