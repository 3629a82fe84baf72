import { DEMO_PARTS } from '@/demo/demo-parts'
import type { LotView } from '@/domain/stock/lot-view'
import { lotViewOf } from '@/domain/stock/lot-view'
import type { Shelf, Standing } from '@/domain/stock/shelf'
import { DEFAULT_RULES } from '@/domain/shop/rules'
import type { Part } from '@/domain/stock/part'
import { testId } from '@tests/support/test-id'

const HASH = '0'.repeat(64)
const standing = <T>(id: string, body: T): Standing<T> => ({ id, hash: HASH, body, rivals: [] })

export interface ShelfOptions {
  readonly roll: () => number
  /** Lots of each part, and which parts there are at all. */
  readonly lots?: number
  readonly keep?: (part: Part) => boolean
  readonly free?: () => number
  /** Told apart from another shelf's lots by this. */
  readonly from?: number
}

/** The demo shop's parts in lots that weigh a little otherwise than the catalogue, some of them weighed. Ids are those of `demoSheet`. */
export function demoShelf({ roll, lots = 1, keep = () => true, free = () => 36, from = 20_000 }: ShelfOptions): Shelf {
  const parts = DEMO_PARTS.map((part, i) => standing(testId(i + 1), part))
  const kept = parts.filter(({ body }) => keep(body))
  const made = kept.flatMap(({ id, body }, i) =>
    Array.from({ length: lots }, (_, n) => {
      const lot = testId(from + 10 * i + n)
      const nominal = body.kind === 'shaft' ? body.weightPerInchGr * body.rawLengthIn : body.weightGr
      const off = 0.01 * nominal * (roll() - 0.5)
      const weighed = Array.from({ length: Math.floor(roll() * 6) }, (__, k) => ({
        event: `${lot}-${k}`,
        what: 'weight' as const,
        at: '2026-05-01T10:00:00.000Z',
        weightGr: nominal + off + 0.004 * nominal * (roll() - 0.5),
        pieces: 1,
      }))
      const onHand = free() * (body.kind === 'vane' || body.kind === 'feather' ? 4 : 1)
      const view: LotView = { ...lotViewOf(lot, undefined, []), onHand, weighed }
      return { part: id, lot, view }
    }),
  )
  const record = (part: string, code: string) => ({ part, code, receivedOn: '2026-05-01', received: 36, numbered: [] })
  return {
    parts: new Map(parts.map((part) => [part.id, part])),
    lots: new Map(made.map(({ part, lot }) => [lot, standing(lot, record(part, lot.slice(-4)))])),
    lotViews: new Map(made.map(({ lot, view }) => [lot, view])),
    rules: DEFAULT_RULES,
    rulesHeads: [],
  }
}
