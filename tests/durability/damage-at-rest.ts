/**
 * Damage at rest: while the browser is closed, its database's log, manifest or tables are spoilt, or all of it is removed.
 * The next start must say that records are missing, never greet as on the first day; the second copy must bring them back.
 * First the planted fault: a page that remembers nothing outside of the database notices nothing, and that must be seen.
 * What no page can notice is that a person cleared all site data: then nothing is left to remember by.
 */
import { closeSync, fstatSync, openSync, readdirSync, rmSync, writeSync } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from '@playwright/test'
import type { RepositoryState } from '@/domain/ports'
import { tally } from '@tests/run/tally'
import { startBrowser } from './support/browser-process'
import { servePage } from './support/build-page'
import { seeded } from './support/seeded'

const DAMAGES = Number(process.env['DAMAGES'] ?? 4)
const READINGS = 60
const TOGETHER = 8 // sites in one browser

const KINDS = ['log', 'manifest', 'tables', 'database'] as const
type Kind = (typeof KINDS)[number]

const { check, close } = tally()
const served = await servePage()
const { port } = new URL(served.address)

/** A site of its own, and so a database of its own, in the same browser. */
interface Damage {
  readonly name: string
  readonly kind: Kind
  readonly site: string
  /** The planted fault: a page that remembers nothing outside of its database. */
  readonly forgetful: boolean
}
const damages: readonly Damage[] = [
  { name: 'forgetful', kind: 'database', site: `http://forgetful.localhost:${port}/`, forgetful: true },
  ...Array.from({ length: DAMAGES }, (_, n): Damage => {
    const kind = KINDS[n % KINDS.length]!
    return { name: `d${n + 1}`, kind, site: `http://d${n + 1}.localhost:${port}/`, forgetful: false }
  }),
]
for (let n = 0; n < damages.length; n += TOGETHER) await spoilAndReopen(damages.slice(n, n + TOGETHER))
await served.stop()
close()

async function spoilAndReopen(all: readonly Damage[]) {
  const profile = await mkdtemp(join(tmpdir(), 'grainwright-damage-'))
  const visit = async <Seen>(look: (page: Page, damage: Damage) => Promise<Seen>, ask = '') => {
    const browser = await startBrowser(profile)
    const seen: Seen[] = []
    for (const each of all) {
      const page = await browser.open(each.site + ask)
      await page.waitForFunction(() => 'shop' in window)
      seen.push(await look(page, each))
    }
    await browser.quit()
    return seen
  }
  try {
    const jobs = await visit(written)
    for (const { name, kind } of all) spoil(join(profile, 'Default', 'IndexedDB'), name, kind)
    const alone = await visit((page) => page.evaluate(() => window.shop.state()), '?copy=none')
    const helped = await visit((page, each) => page.evaluate((id) => window.shop.audit(id), jobs[all.indexOf(each)]!))
    for (const [i, { name, kind, forgetful }] of all.entries()) {
      if (forgetful)
        await check('a page that remembers nothing notices no damage, and that is seen', () => {
          if (alone[i]!.kind === 'missing') throw new Error('it noticed')
        })
      else await check(`${name}: ${kind}`, () => noticed(alone[i]!, helped[i]!))
    }
  } finally {
    await rm(profile, { recursive: true, force: true })
  }
}

async function written(page: Page, { forgetful }: Damage): Promise<string> {
  const job = await page.evaluate(() => window.shop.openJob())
  const values = Array.from({ length: READINGS }, (_, i) => i)
  const told = { job, values, pauses: values.map(() => 0) }
  await page.evaluate(({ job: id, values: all, pauses }) => window.shop.readSome(id, all, pauses), told)
  if (forgetful) await page.evaluate(() => localStorage.clear())
  return job
}

type Audit = Awaited<ReturnType<Window['shop']['audit']>>

function noticed(alone: RepositoryState, helped: Audit) {
  if (alone.kind !== 'missing') throw new Error(`not noticed: the book opens as ${alone.kind}`)
  console.log(
    `          ${alone.found.events} of ${alone.remembered.events} events left, and said so; ${helped.values.length} of ${READINGS} readings with the second copy`,
  )
  if (alone.found.events >= alone.remembered.events) throw new Error('it does not say how much is missing')
  if (helped.state.kind !== 'open' || helped.values.length !== READINGS || helped.problems.length > 0)
    throw new Error(`not restored: ${JSON.stringify(helped).slice(0, 300)}`)
}

function spoil(folder: string, site: string, kind: Kind) {
  const random = seeded(site.length * 7919 + Number(/\d+/.exec(site)?.[0] ?? 0))
  const database = readdirSync(folder).find((name) => name.includes(`_${site}.`) && name.endsWith('.leveldb'))
  if (database === undefined) throw new Error(`no database under ${folder}: ${readdirSync(folder).join(', ')}`)
  if (kind === 'database') return rmSync(join(folder, database), { recursive: true })
  const pattern = { log: /\.log$/, manifest: /^MANIFEST/, tables: /\.(?:ldb|log)$/ }[kind]
  const files = readdirSync(join(folder, database)).filter((name) => pattern.test(name))
  if (files.length === 0) throw new Error(`no ${kind} in ${readdirSync(join(folder, database)).join(', ')}`)
  for (const name of files) {
    const path = join(folder, database, name)
    if (kind === 'tables') rmSync(path)
    else overwrite(path, kind === 'manifest' ? 0 : random() / 2, random)
  }
}

/**
 * A stretch of the file becomes something else.
 *
 * @param from where it begins, as a share of the file; a manifest that is spoilt behind its first entry may cost nothing
 */
function overwrite(path: string, from: number, random: () => number) {
  const file = openSync(path, 'r+')
  const { size } = fstatSync(file)
  const at = Math.floor(from * size)
  const bytes = Uint8Array.from({ length: Math.min(4096, size - at) }, () => Math.floor(random() * 256))
  writeSync(file, bytes, 0, bytes.length, at)
  closeSync(file)
}
