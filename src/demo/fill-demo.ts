/** Fills a new demo book with the invented shop: rules, shelf and weighings, and orders at every stage of the job. */
import type { Command, Repository } from '../domain/ports'
import type { Event, LogHead } from '../domain/records/event'
import type { Fact } from '../domain/records/fact'
import type { AnyEvent } from '../domain/records/read-event'
import type { AnyFact, FactOf } from '../domain/records/read-fact'
import type { Id } from '../domain/records/scalars'
import { newEvent, newFact } from '../domain/records/write'
import type { EventDraft, Said } from '../domain/records/write'
import { RULES_SUBJECT } from '../domain/shop/rules-subject'
import { lotViewOf } from '../domain/stock/lot-view'
import type { Shelf, Standing } from '../domain/stock/shelf'
import { EMPTY_SHELF } from '../domain/stock/shelf'
import type { DemoHand } from './demo-hand'
import { demoHand } from './demo-hand'
import { DEMO_PARTS } from './demo-parts'
import { DEMO_RULES } from './demo-rules'
import { ORDERS } from './orders'
import { tellOrder } from './tell-order'

const SEED = 20_261
const SHELF_DAYS_AGO = 1200
const WEIGHED = 12 // pieces of each lot

export async function fillDemo(repository: Pick<Repository, 'commit'>, now: string): Promise<void> {
  const hand = demoHand(SEED)
  let end: LogHead | undefined
  const give = async (command: Command) => {
    const receipt = await repository.commit(command)
    if (receipt.kind !== 'saved') throw new Error(`the demo shop could not be written: ${receipt.detail}`)
    end = receipt.events.at(-1) ?? end
    return receipt.events
  }
  const shelf = await stockShelf(hand, now, (said, records) => give({ id: hand.id(said.at), ...said, ...records }))
  for (const order of ORDERS) {
    for (const command of await tellOrder(hand, now, shelf, order, end!)) await give(command)
  }
}

type Write = (said: Said, records: Pick<Command, 'facts' | 'events'>) => Promise<readonly Event[]>

/** @returns the shelf as it then stands, its lots' weighings included */
async function stockShelf(hand: DemoHand, now: string, write: Write): Promise<Shelf> {
  const at = new Date(Date.parse(now) - SHELF_DAYS_AGO * 86_400_000).toISOString() // ms of a day
  const said: Said = { by: 'Ilse', at }
  const facts: AnyFact[] = [newFact(said, 'rules', RULES_SUBJECT, DEMO_RULES)]
  const events: EventDraft[] = []
  DEMO_PARTS.forEach((part, i) => {
    const id = hand.id(at)
    facts.push(newFact(said, 'part', id, part))
    const lot = hand.id(at)
    const numbered =
      part.kind === 'broadhead'
        ? Array.from({ length: 12 }, (_, n) => ({
            no: `h-${n + 1}`,
            weightGr: round(hand.dice.normal(part.weightGr, 1)),
          }))
        : []
    const received = part.kind === 'vane' || part.kind === 'feather' ? 200 : part.kind === 'glue' ? 4 : 36
    facts.push(
      newFact(said, 'lot', lot, {
        part: id,
        code: `${part.kind.slice(0, 1).toUpperCase()}-${i + 11}`,
        receivedOn: at.slice(0, 10),
        received,
        numbered,
      }),
    )
    events.push(newEvent('stockMoved', { job: null }, { part: id, lot, by: received, why: 'received' }))
    if (part.weightGr === 0 || numbered.length > 0) return
    const offset = hand.dice.normal(0, part.toleranceGr / 6)
    for (let n = 0; n < WEIGHED; n++) {
      const weightGr = round(part.weightGr + offset + hand.dice.normal(0, part.toleranceGr / 4))
      events.push(
        newEvent('lotWeighed', { job: null }, { lot, weightGr, pieces: 1, raw: weightGr.toFixed(1), scale: 'Scale 1' }),
      )
    }
  })
  return shelfOf(facts, (await write(said, { facts, events })) as readonly AnyEvent[])
}

const round = (gr: number) => Math.round(gr * 10) / 10

function shelfOf(facts: readonly AnyFact[], events: readonly AnyEvent[]): Shelf {
  const parts = facts.flatMap((fact) => (fact.kind === 'part' ? [fact] : []))
  const lots = facts.flatMap((fact) => (fact.kind === 'lot' ? [fact] : []))
  const viewOf = (lot: FactOf<'lot'>) =>
    lotViewOf(lot.subject, undefined, [lot, ...events.filter(({ body }) => 'lot' in body && body.lot === lot.subject)])
  return {
    ...EMPTY_SHELF,
    parts: standings(parts),
    lots: standings(lots),
    lotViews: new Map(lots.map((lot) => [lot.subject, viewOf(lot)])),
    rules: DEMO_RULES,
  }
}

const standings = <B>(facts: readonly Fact<string, B>[]): ReadonlyMap<Id, Standing<B>> =>
  new Map(facts.map(({ subject, hash, body }) => [subject, { id: subject, hash, body, rivals: [] }]))
