/**
 * Tabs: two or three of them save readings and new versions of one client at random moments. Nothing may be lost or
 * written twice, the log may not fork, and versions made side by side must both be shown. First the planted fault: tabs
 * that look where the log ends in one transaction and write in another must be caught.
 */
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from '@playwright/test'
import { tally } from '@tests/run/tally'
import { startBrowser } from './support/browser-process'
import { servePage } from './support/build-page'
import { seeded } from './support/seeded'

const SCHEDULES = Number(process.env['SCHEDULES'] ?? 10)

const { check, close } = tally()
const served = await servePage()
const profile = await mkdtemp(join(tmpdir(), 'grainwright-tabs-'))
const browser = await startBrowser(profile)
const address = (book: string) => `${served.address}?book=${book}`
try {
  await check('tabs that race for the end of the log are caught', async () => {
    const pages = await tabs(2, 'grainwright-race')
    const { problems } = await readings(pages, seeded(1), true)
    if (!problems.some((each) => each.problem === 'fork')) throw new Error('no fork was seen: this check sees no race')
  })
  const three = await tabs(3, 'grainwright-tabs')
  for (let n = 1; n <= SCHEDULES; n++) {
    await check(`schedule ${n} of ${SCHEDULES}`, async () => {
      const random = seeded(n * 7919)
      const pages = three.slice(0, 2 + (n % 2))
      const { acknowledged, there, problems } = await readings(pages, random, false)
      equal('problems', problems, [])
      equal('readings', there.toSorted(inOrder), acknowledged.toSorted(inOrder))
      await versions(pages)
    })
  }
} finally {
  await browser.kill()
  await rm(profile, { recursive: true, force: true })
  await served.stop()
}
close()

async function tabs(count: number, book: string): Promise<Page[]> {
  const pages: Page[] = []
  for (let i = 0; i < count; i++) {
    const page = await browser.open(address(book))
    await page.waitForFunction(() => 'shop' in window)
    pages.push(page)
  }
  return pages
}

async function readings(pages: readonly Page[], random: () => number, racing: boolean) {
  const job = await pages[0]!.evaluate(() => window.shop.openJob())
  const runs = pages.map((page, tab) => {
    const values = Array.from({ length: 12 }, (_, i) => tab * 1000 + i)
    const pauses = values.map(() => Math.floor(random() * 8))
    return page.evaluate((told) => window.shop.readSome(told.job, told.values, told.pauses, told.racing), {
      job,
      values,
      pauses,
      racing,
    })
  })
  const acknowledged = (await Promise.all(runs)).flat()
  const audit = await pages[0]!.evaluate((id) => window.shop.audit(id), job)
  return { acknowledged, there: audit.values, problems: audit.problems }
}

/** Every tab renames the client at the same time, twice over: no version is lost, and what no version follows is shown. */
async function versions(pages: readonly Page[]) {
  const subject = await pages[0]!.evaluate(() => window.shop.newClient('Ilmari'))
  const made: (string | null)[] = []
  for (let round = 0; round < 2; round++) {
    const names = pages.map((page, tab) =>
      page.evaluate(([who, name]) => window.shop.rename(who!, name!), [subject, `Ilmari ${round} ${tab}`]),
    )
    made.push(...(await Promise.all(names)))
  }
  const seen = await Promise.all(pages.map((page) => page.evaluate((who) => window.shop.clientVersions(who), subject)))
  for (const { versions, heads } of seen) {
    const hashes = versions.map((version) => version.hash)
    for (const hash of made) if (hash === null || !hashes.includes(hash)) throw new Error(`a version was lost: ${hash}`)
    const followed = new Set(versions.flatMap((version) => version.parents))
    equal('heads', heads.toSorted(), hashes.filter((hash) => !followed.has(hash)).toSorted())
  }
}

function equal(what: string, seen: unknown, wanted: unknown) {
  if (JSON.stringify(seen) !== JSON.stringify(wanted)) {
    throw new Error(`${what}: ${JSON.stringify(seen).slice(0, 400)} instead of ${JSON.stringify(wanted).slice(0, 400)}`)
  }
}

function inOrder(a: number, b: number): number {
  return a - b
}
