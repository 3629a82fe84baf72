/**
 * Torn log: the browser's database appends to a log, the head of a piece and then the piece. A crash between the two leaves a
 * head without its piece, a power cut can leave noughts. The next start passes over them and writes on behind them; the
 * start after that would throw the database away as damaged, or pass over what was written behind. So each start begins a
 * fresh log (`src/storage/fresh-log.ts`), and no acknowledged reading may be missing. First the planted fault: a page that
 * goes on in the old log must be seen to lose. Nor may the browser end a log that is full in the midst of a save: see decision 18.
 */
import { appendFileSync, readFileSync, readdirSync } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { tally } from '@tests/run/tally'
import { startBrowser } from './support/browser-process'
import { servePage } from './support/build-page'
import { losses, nothingLost, readForEver } from './support/losses'

const TEARS = Number(process.env['TEARS'] ?? 3)
const MANY = 1500 // readings; a log takes some nine hundred
const FULL_PIECE = 1 // the type of a piece that is not continued in the next block
const SAID_LENGTH = 900 // bytes that the head says will follow

const KINDS = ['head', 'head and a part', 'noughts'] as const
type Kind = (typeof KINDS)[number]

const { check, close } = tally()
const served = await servePage()
for (const kind of KINDS) {
  await check(`a page that goes on in a torn log is seen to lose: ${kind}`, async () => {
    const { lost } = await torn(kind, `${served.address}?copy=none&log=old`)
    if (lost.length === 0) throw new Error('nothing was lost: this check sees no loss')
  })
}
for (let n = 1; n <= TEARS; n++) {
  const kind = KINDS[n % KINDS.length]!
  await check(`tear ${n}: ${kind}`, async () => {
    const result = await torn(kind, `${served.address}?copy=none`)
    nothingLost(result, result.acknowledged)
  })
}
await check('a page that begins no fresh logs is seen to fill one in the midst of saves', async () => {
  if ((await filled(`${served.address}?log=old`)) === 0) throw new Error('no log was filled: this check sees none')
})
await check(`no log is filled in ${MANY} saves: each is ended between two of them`, async () => {
  const logs = await filled(served.address)
  if (logs > 0) throw new Error(`${logs} logs were filled`)
})
await served.stop()
close()

/** How many logs the browser itself ended as full; of one that is ended for a deleted database it says so at once after. */
async function filled(address: string): Promise<number> {
  const profile = await mkdtemp(join(tmpdir(), 'grainwright-torn-'))
  const browser = await startBrowser(profile)
  try {
    const { acknowledged } = await readForEver(await browser.open(address))
    while (acknowledged.length < MANY) await wait(20)
  } finally {
    await browser.kill()
  }
  const lines = readFileSync(join(databaseOf(profile), 'LOG'), 'utf8').split('\n')
  await rm(profile, { recursive: true, force: true })
  const count = (said: string) => lines.filter((line) => line.includes(said)).length
  return Math.max(0, count(': started') - count('Manual compaction at level-0'))
}

/** Saves, is killed and torn; saves again, is killed, and is looked at. */
async function torn(kind: Kind, address: string) {
  const profile = await mkdtemp(join(tmpdir(), 'grainwright-torn-'))
  try {
    const before = await saveAndKill(profile, address, 1)
    tear(profile, kind)
    const behind = await saveAndKill(profile, address, 1_000_000)
    const browser = await startBrowser(profile)
    try {
      const page = await browser.open(address)
      const both = [
        await losses(page, before.job, before.acknowledged),
        await losses(page, behind.job, behind.acknowledged),
      ]
      return {
        lost: both.flatMap(({ lost }) => lost),
        torn: both.flatMap((each) => each.torn),
        found: both.reduce((sum, { found }) => sum + found, 0),
        acknowledged: before.acknowledged.length + behind.acknowledged.length,
      }
    } finally {
      await browser.kill()
    }
  } finally {
    await rm(profile, { recursive: true, force: true })
  }
}

async function saveAndKill(profile: string, address: string, from: number) {
  const browser = await startBrowser(profile)
  const { job, acknowledged } = await readForEver(await browser.open(address), { from })
  while (acknowledged.length === 0) await wait(20)
  await wait(300)
  await browser.kill()
  return { job, acknowledged: [...acknowledged] }
}

function tear(profile: string, kind: Kind) {
  const folder = databaseOf(profile)
  const logs = readdirSync(folder).filter((name) => name.endsWith('.log'))
  appendFileSync(join(folder, logs.sort().at(-1)!), endOf(kind))
}

function databaseOf(profile: string): string {
  const all = join(profile, 'Default', 'IndexedDB')
  return join(all, readdirSync(all).find((name) => name.endsWith('.leveldb'))!)
}

function endOf(kind: Kind): Buffer {
  if (kind === 'noughts') return Buffer.alloc(4_000)
  const head = Buffer.alloc(7) // four bytes of a check sum, two of a length, one of a type
  head.writeUInt32LE(0x12345678, 0)
  head.writeUInt16LE(SAID_LENGTH, 4)
  head.writeUInt8(FULL_PIECE, 6)
  return kind === 'head' ? head : Buffer.concat([head, Buffer.alloc(SAID_LENGTH / 3, 'x')])
}
