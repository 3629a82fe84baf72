/**
 * Full disk: a real file system runs out while records are saved, small ones and large ones. Nothing that was acknowledged
 * may be lost, nothing may be called saved that is not there, and after the first failure the gateway writes no more until
 * the book was rescued. The rescue happens with the disk still full, and with space freed first; the browser is restarted
 * after it. First the planted fault: a page that keeps no second copy and goes on in its torn log must be seen
 * to lose the book. And a start on a disk that is full already must cost nothing, whatever it tries to write.
 */
import { appendFileSync, rmSync, statfsSync, writeFileSync } from 'node:fs'
import { setTimeout as wait } from 'node:timers/promises'
import { tally } from '@tests/run/tally'
import { startBrowser } from './support/browser-process'
import { servePage } from './support/build-page'
import { newDisk, noLoopDisk } from './support/loop-disk'

const ROUNDS = Number(process.env['FULL_ROUNDS'] ?? 1)
const DISK = 90 // MB
const SIZES = { small: 300, large: 54_000 } // letters of a note
// Bytes left on the disk before the writing starts: the large ones end before the second copy lets its oldest go.
const LEFT = { small: 1_500_000, large: 3_500_000 }

const { check, skip, close } = tally()
const hindrance = noLoopDisk()
if (hindrance !== undefined) skip('full disk', hindrance)
else {
  const served = await servePage()
  const bare = `${served.address}?copy=none&log=old`
  await check('a page without a second copy that goes on in a torn log is seen to lose the book', async () => {
    for (let attempt = 1; attempt <= 8; attempt++) {
      const seen = await full(bare, 'small', true).catch((problem: unknown) => String(problem))
      if (/"kind":"lost"|lost \d+ of/.test(String(seen))) return
    }
    throw new Error('eight full disks cost nothing: this check sees no loss')
  })
  for (let round = 1; round <= ROUNDS; round++) {
    await check(`round ${round}: a start on a disk that is full to the last byte`, () =>
      startedFull(`${served.address}?copy=none`, round),
    )
    for (const size of ['small', 'large'] as const) {
      for (const freed of [false, true]) {
        await check(`round ${round}: ${size} writes, space ${freed ? 'freed' : 'not freed'} before the rescue`, () =>
          full(served.address, size, freed),
        )
      }
    }
  }
  await served.stop()
}
close()

/** To the last byte. */
function fillUp(file: string) {
  for (let bytes = 1_000_000; bytes >= 1; ) {
    try {
      appendFileSync(file, Buffer.alloc(bytes))
    } catch {
      bytes = Math.floor(bytes / 10)
    }
  }
}

/** The disk is filled before the book is opened; it must read then, and at both starts after there is room again. */
async function startedFull(address: string, round: number) {
  const most = 8 + round // so that the last block of the log has another room each time
  const disk = newDisk(DISK)
  const profile = `${disk.folder}/profile`
  const filler = `${disk.folder}/filler`
  let browser = await startBrowser(profile)
  const ready = async () => {
    const page = await browser.open(address)
    await page.waitForFunction(() => 'shop' in window)
    return page
  }
  try {
    const page = await ready()
    const job = await page.evaluate(() => window.shop.openJob())
    const said = [job, SIZES.large - 100 * round, most] as const
    const { acknowledged } = await page.evaluate(
      ([id, letters, most]) => window.shop.notesUntilFull(id, letters, most),
      said,
    )
    await browser.quit()
    browser = await startBrowser(profile)
    fillUp(filler)
    const whole = async (when: string) => {
      const opened = await ready()
      await wait(1000) // it may try to write
      const there = await opened.evaluate((hashes) => window.shop.notesThere(hashes), acknowledged)
      const { kind } = await opened.evaluate(() => window.shop.state())
      if (kind !== 'open' || there !== most) throw new Error(`${when}: ${there} of ${most} notes, the book is ${kind}`)
    }
    await whole('on the full disk').then(browser.quit, async (problem: unknown) => {
      if (!String(problem).includes('has been closed')) throw problem
      console.log('          the browser itself ended on the full disk')
      await browser.kill()
    })
    for (const when of ['with room again', 'at the start after that']) {
      rmSync(filler, { force: true })
      browser = await startBrowser(profile)
      await whole(when)
      await browser.quit()
    }
  } finally {
    await browser.kill()
    disk.remove()
  }
}

async function full(address: string, size: keyof typeof SIZES, freed: boolean) {
  const disk = newDisk(DISK)
  const filler = `${disk.folder}/filler`
  let browser = await startBrowser(`${disk.folder}/profile`)
  try {
    let page = await browser.open(address)
    await page.waitForFunction(() => 'shop' in window)
    const job = await page.evaluate(() => window.shop.openJob())
    await page.evaluate(() => window.shop.layBallast()) // as the app does some seconds after its start
    const first = await page.evaluate(([id, bytes]) => window.shop.notesUntilFull(id as string, bytes as number, 20), [
      job,
      SIZES[size],
    ] as const)
    if (first.acknowledged.length !== 20) throw new Error(`could not begin: ${first.detail}`)

    const { bavail, bsize } = statfsSync(disk.folder)
    writeFileSync(filler, Buffer.alloc(bavail * bsize - LEFT[size]))
    const { acknowledged, why, detail } = await page.evaluate(
      ([id, bytes]) => window.shop.notesUntilFull(id as string, bytes as number, 20_000),
      [job, SIZES[size]] as const,
    )
    console.log(`          ${acknowledged.length} more saved, then: ${why} ${detail.slice(0, 100)}`)
    if (why === null) throw new Error('the disk never filled')
    if ((await page.evaluate(() => window.shop.state())).kind !== 'failed')
      throw new Error('a failed write left the book open')
    const refused = await page.evaluate(([id]) => window.shop.notesUntilFull(id as string, 400, 1), [job] as const)
    if (refused.acknowledged.length > 0) throw new Error('wrote on after a failed write')

    const all = [...first.acknowledged, ...acknowledged]
    if (freed) rmSync(filler)
    let recovered = await page.evaluate(() => window.shop.recover())
    console.log(`          ${recovered.kind} ${'problem' in recovered ? recovered.problem.slice(0, 80) : ''}`)
    if (!freed) rmSync(filler)
    // With the disk still full a rescue may find no room; then nothing was removed, and it is asked for again.
    if (recovered.kind === 'not-recovered' && !freed) recovered = await page.evaluate(() => window.shop.recover())
    if (recovered.kind !== 'recovered') throw new Error(`not recovered: ${JSON.stringify(recovered)}`)
    const more = await page.evaluate(([id]) => window.shop.notesUntilFull(id as string, 400, 5), [job] as const)
    all.push(...more.acknowledged)
    if (more.acknowledged.length !== 5) throw new Error(`could not go on after the rescue: ${more.detail}`)

    await browser.kill()
    browser = await startBrowser(`${disk.folder}/profile`)
    page = await browser.open(address)
    await page.waitForFunction(() => 'shop' in window)
    // What was noted outside of the book reaches the disk some seconds late: a book may open as failed and be rescued again.
    if ((await page.evaluate(() => window.shop.state())).kind === 'failed')
      await page.evaluate(() => window.shop.recover())
    const there = await page.evaluate((hashes) => window.shop.notesThere(hashes), all)
    const { problems, state } = await page.evaluate((id) => window.shop.audit(id), job)
    console.log(`          ${there} of ${all.length} acknowledged are there; the book is ${state.kind}`)
    if (there !== all.length) throw new Error(`lost ${all.length - there} of ${all.length} acknowledged records`)
    if (problems.length > 0 || state.kind !== 'open')
      throw new Error(`${state.kind}: ${JSON.stringify(problems).slice(0, 300)}`)
  } finally {
    await browser.kill()
    disk.remove()
  }
}
