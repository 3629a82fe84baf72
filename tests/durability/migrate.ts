/**
 * Migration: a book of the first number is opened by today's app, and every process of the browser is ended without a word
 * while it is given its new indexes. Opened again it must be the book that an undisturbed opening makes, row by row, each
 * record with the hash it had. First the planted fault: a book with one row of the new index missing must be told apart.
 */
import { existsSync } from 'node:fs'
import { cp, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { BOOKS } from '@/storage/book'
import { tally } from '@tests/run/tally'
import { startBrowser } from './support/browser-process'
import { servePage } from './support/build-page'
import { seeded } from './support/seeded'

const KILLS = Number(process.env['MIGRATION_KILLS'] ?? 20)
const SIZE = [900, 1800, 1800] as const // jobs, arrows, readings: some two thousand rows to be given a new index
const OLD = 'grainwright-old'

const { check, close } = tally()
const served = await servePage()
const folder = await mkdtemp(join(tmpdir(), 'grainwright-migrate-'))
const old = join(folder, 'old')
try {
  const { counts, today } = await makeOld()
  const whole = await opened('whole')
  console.log(`          opened undisturbed in ${Math.round(whole.ms)} ms: ${JSON.stringify(counts)}`)
  await check('a book that lacks one row of the new index is told from a whole one', async () => {
    if ((await contentAfterSpoiling('whole')) === whole.content) throw new Error('it looks the same')
  })
  await check('undisturbed it becomes, row by row, what today’s app would have written', () => {
    if (whole.content !== today) throw new Error('it does not')
  })
  const random = seeded(20)
  let midway = 0
  for (let n = 1; n <= KILLS; n++) {
    await check(`kill ${n} of ${KILLS}`, async () => {
      const profile = `killed-${n}`
      const isThrough = await killedWhileOpening(profile, random() * whole.ms)
      if (!isThrough) midway += 1
      const after = await opened(profile)
      if (after.state !== 'open') throw new Error(`the book opens as ${after.state}`)
      if (after.problems.length > 0) throw new Error(JSON.stringify(after.problems.slice(0, 3)))
      if (after.content !== whole.content) throw new Error('its rows are not those of an undisturbed opening')
      await rm(join(folder, profile), { recursive: true })
    })
  }
  console.log(`          ${midway} of ${KILLS} killed before the book was open`)
  await check('most of the kills come before the book is open', () => {
    if (midway < KILLS / 2) throw new Error(`only ${midway} of ${KILLS}`)
  })
} finally {
  await rm(folder, { recursive: true, force: true })
  await served.stop()
}
close()

async function makeOld() {
  const browser = await startBrowser(old)
  const page = await browser.open(served.address)
  await page.waitForFunction(() => 'shop' in window)
  const made = await page.evaluate(([jobs, arrows, readings]) => window.shop.generate(jobs, arrows, readings), SIZE)
  await page.evaluate((name) => window.shop.makeOldBook(name), OLD)
  const today = await page.evaluate((name) => window.shop.contentOf(name), BOOKS.shop)
  await browser.quit()
  return { counts: made.counts, today }
}

/** A copy of the old profile where there is none of that name yet, opened as a person would. */
async function opened(name: string) {
  const profile = await copyOf(name)
  const browser = await startBrowser(profile)
  try {
    const page = await browser.open('about:blank')
    const start = performance.now()
    await page.goto(`${served.address}?book=${OLD}`)
    await page.waitForFunction(() => 'shop' in window)
    const ms = performance.now() - start
    const state = await page.evaluate(() => window.shop.state().kind)
    const { problems } = await page.evaluate(() => window.shop.verify())
    const content = await page.evaluate((book) => window.shop.contentOf(book), OLD)
    return { ms, state, problems, content }
  } finally {
    await browser.quit()
  }
}

/** @returns whether the book was open before the kill */
async function killedWhileOpening(name: string, ms: number): Promise<boolean> {
  const browser = await startBrowser(await copyOf(name))
  const page = await browser.open('about:blank')
  let isThrough = false
  await page.exposeFunction('bookIsOpen', () => (isThrough = true))
  void page.goto(`${served.address}?book=${OLD}`).catch(() => {}) // the browser is killed under it
  await wait(ms)
  await browser.kill()
  return isThrough
}

async function contentAfterSpoiling(name: string): Promise<string> {
  const browser = await startBrowser(join(folder, name))
  const page = await browser.open(served.address)
  await page.waitForFunction(() => 'shop' in window)
  await page.evaluate((book) => window.shop.spoilIndex(book), OLD)
  const content = await page.evaluate((book) => window.shop.contentOf(book), OLD)
  await browser.quit()
  return content
}

async function copyOf(name: string): Promise<string> {
  const profile = join(folder, name)
  if (!existsSync(profile)) await cp(old, profile, { recursive: true })
  return profile
}
