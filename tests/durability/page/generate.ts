/**
 * A large book, generated in the page and brought in as a backup is, so that it takes the app's own way in: orders with a
 * client, answers, a frozen sheet, a set at the bench and its readings, on lots that several orders share.
 */
import type { Archive } from '@/domain/ports'
import { canonical } from '@/domain/records/canonical'
import { chained } from '@/domain/records/event'
import { startOf } from '@/domain/records/chain'
import { personalOf } from '@/domain/records/personal'
import type { Personal } from '@/domain/records/personal'
import { codeOf } from '@/domain/records/code'
import type { Sheet } from '@/domain/sheet/sheet'
import { newEvent, newFact } from '@/domain/records/write'
import type { EventDraft } from '@/domain/records/write'
import { browserIds } from '@/storage/browser-clock'
import { sha256 } from '@noble/hashes/sha2'
import { bytesToHex } from '@noble/hashes/utils'
import { demoSheet } from '../../support/demo-sheet'

const YEAR = 2018 // the last order is older than today: what is written now comes after it
const NAMES = ['Ilmari', 'Saga', 'Tove', 'Aino', 'Eero', 'Liv', 'Nils', 'Runa', 'Otso', 'Vigdis']
const QUARRY = ['moose', 'cape buffalo', 'bison', 'red deer']
const POINTS = [
  'rawWeight',
  'cutWeight',
  'nockWeight',
  'insertWeight',
  'headWeight',
  'fletchedWeight',
  'dryWeight',
  'trimWeight',
  'edgeWeight',
  'finishedWeight',
] as const
/** A lot serves so many orders, to its last piece; then the next one is opened, and of a glue the empty bottle thrown away. */
const JOBS_A_LOT = 8
const BOTTLES = 1
const moved = (part: string, lot: string, by: number, why: 'received' | 'scrapped') =>
  newEvent('stockMoved', { job: null }, { part, lot, by, why })

/** @returns what was added, and how long each part took in milliseconds */
export async function generate(archive: Archive, jobs: number, arrows: number, readings: number) {
  let bytes = 0
  const pieces = records(jobs, Math.round(arrows / jobs), Math.round(readings / arrows))
  const encoder = new TextEncoder()
  const source = new ReadableStream<Uint8Array<ArrayBuffer>>({
    pull(controller) {
      const next = pieces.next()
      if (next.done) return controller.close()
      const piece = encoder.encode(next.value)
      bytes += piece.length
      controller.enqueue(piece)
    },
  })
  const start = performance.now()
  const staged = await archive.stage(source)
  const laid = performance.now()
  const receipt = await archive.addStaged()
  const added = performance.now()
  if (staged.check.kind !== 'whole' || receipt.kind !== 'saved')
    throw new Error(JSON.stringify([staged.check, receipt]))
  return {
    counts: staged.adds,
    megabytes: bytes / 1e6,
    ms: { generateAndStage: laid - start, add: added - laid },
  }
}

/** The file, a piece an order; what the order of a backup puts last is kept until then. */
function* records(jobs: number, arrowsEach: number, readingsEach: number): Generator<string> {
  const root = sha256.create()
  const encoder = new TextEncoder()
  const piece = (lines: readonly string[]) => {
    const text = lines.map((line) => `${line}\n`).join('')
    root.update(encoder.encode(text))
    return text
  }
  yield piece([canonical({ header: { app: 'Grainwright', format: 1, schema: 1 } })])

  const log = browserIds.id()
  const facts: { readonly hash: string; readonly line: string }[] = []
  const keep = (fact: { readonly hash: string }) => facts.push({ hash: fact.hash, line: canonical({ fact }) })
  const personal: Personal[] = []
  const plan = demoSheet({ targetGr: 785, c2cIn: 28, quantity: arrowsEach - 1, spares: 1 })
  const by = 'Ansa'
  for (const { id, part } of plan.parts) keep(newFact({ by, at: dayOf(0, jobs) }, 'part', id, part))
  let lots = new Map<string, string>()
  let head = startOf(log)
  let events = 0
  for (let j = 0; j < jobs; j++) {
    const at = dayOf(j, jobs)
    const said = { by, at }
    const stock: EventDraft[] = []
    if (j % JOBS_A_LOT === 0) {
      for (const { id, part } of plan.parts) {
        const before = lots.get(id)
        if (part.kind === 'glue' && before !== undefined) stock.push(moved(id, before, -BOTTLES, 'scrapped'))
      }
      lots = new Map(plan.parts.map(({ id }) => [id, browserIds.id()]))
      for (const [part, lot] of lots) {
        const code = `L${String(j).padStart(5, '0')}`
        keep(newFact(said, 'lot', lot, { part, code, receivedOn: at.slice(0, 10), received: 400, numbered: [] }))
        const line = plan.plan.lines.find((each) => each.part === part)!
        const isGlue = plan.parts.some((each) => each.id === part && each.part.kind === 'glue')
        stock.push(moved(part, lot, isGlue ? BOTTLES : line.count * arrowsEach * JOBS_A_LOT, 'received'))
      }
    }
    const job = browserIds.id()
    const name = `${NAMES[j % NAMES.length]} ${NAMES[(j * 7 + 3) % NAMES.length]}sen ${j}`
    const who = personalOf(browserIds.salt(), { name })
    personal.push(who)
    const client = browserIds.id()
    keep(newFact(said, 'client', client, { personal: who.hash, consent: true }))
    const lines = plan.plan.lines.map((line) => ({ ...line, lot: lots.get(line.part) ?? null }))
    const body: Sheet = { ...plan, job, plan: { ...plan.plan, targetGr: 600 + (j % 500), lines } }
    const sheet = newFact(said, 'sheet', job, body)
    keep(sheet)
    const ids = Array.from({ length: arrowsEach }, () => browserIds.id())
    const arrows = ids.map((id, a) => ({ id, no: a + 1, code: `${codeOf(sheet.hash)}/${a + 1}` }))
    const told = [
      ...stock,
      newEvent('opened', { job }, { kind: 'order', of: null }),
      newEvent('clientSet', { job }, { client }),
      newEvent('answered', { job }, { question: 'quarry', answer: { value: QUARRY[j % QUARRY.length]!, how: 'told' } }),
      newEvent('planSet', { job }, { field: 'targetGr', value: 600 + (j % 500) }),
      newEvent('planSet', { job }, { field: 'quantity', value: arrowsEach - 1 }),
      newEvent('frozen', { job }, { sheet: sheet.hash, version: 1 }),
      newEvent('setStarted', { job }, { sheet: sheet.hash, arrows }),
      ...ids.flatMap((arrow, a) =>
        Array.from({ length: readingsEach }, (_, r) =>
          newEvent(
            'read',
            { job, arrow },
            {
              step: 'weigh',
              reading: {
                point: POINTS[r % POINTS.length]!,
                value: Math.round((400 + ((j * 31 + a * 7 + r) % 500)) * 10) / 10,
                unit: 'gr',
                raw: '412.3',
                source: 'serial',
                stable: true,
                attempt: 1,
                scale: 'Scale 1',
                takenAt: at,
              },
            },
          ),
        ),
      ),
    ]
    const made = chained(head, { id: browserIds.id(), by, at, events: told })
    head = { log, seq: made.at(-1)!.seq, hash: made.at(-1)!.hash }
    events += made.length
    yield piece(made.map((event) => canonical({ event })))
  }
  facts.sort((a, b) => (a.hash < b.hash ? -1 : 1))
  personal.sort((a, b) => (a.hash < b.hash ? -1 : 1))
  for (let i = 0; i < facts.length; i += 100) yield piece(facts.slice(i, i + 100).map(({ line }) => line))
  yield piece(personal.map((row) => canonical({ personal: row })))
  const counts = { event: events, fact: facts.length, personal: personal.length, photo: 0 }
  yield `${canonical({ footer: { counts, root: bytesToHex(root.digest()) } })}\n`
}

/** The orders are spread over the eight years from the first to the last. */
function dayOf(j: number, jobs: number): string {
  return new Date(Date.UTC(YEAR, 0, 2) + (j / jobs) * 8 * 365.25 * 86_400_000).toISOString()
}
