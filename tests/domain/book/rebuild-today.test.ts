import { describe, expect, it } from 'vitest'
import { inGrains, inPercent } from '@/core/quantity'
import { rebuildToday } from '@/domain/book/rebuild-today'
import type { Rebuilt } from '@/domain/book/rebuild-today'
import { findParts } from '@/domain/search/find-parts'
import type { Sheet } from '@/domain/sheet/sheet'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import type { Part } from '@/domain/stock/part'
import type { Shelf } from '@/domain/stock/shelf'
import { answer } from '@tests/support/answer'
import { demoSheet } from '@tests/support/demo-sheet'
import { testId } from '@tests/support/test-id'
import { seeded } from '@tests/support/seeded'
import { demoShelf } from '../search/demo-shelf'

// A release runs 500; in parts, from so many on.
const SIZE = Number(process.env['REBUILDS'] ?? (process.env['TEST_SIZE'] === 'release' ? 500 : 6))
const FROM = Number(process.env['REBUILDS_FROM'] ?? 0)
const LIMIT_MS = SIZE * 30_000
const find = (problem: Parameters<typeof findParts>[0]) => Promise.resolve(findParts(problem))

/** The three numbers that a rebuild promises, worked out again from the sheet alone. */
function three(sheet: Sheet) {
  const { figures } = sheetFigures(sheet)!
  const reserve = answer(figures!.columnReserve!)
  return {
    finishedGr: inGrains(answer(figures!.finished)),
    focPercent: inPercent(answer(figures!.foc)),
    reserve: typeof reserve === 'number' ? reserve : reserve.value,
  }
}

const SHAFTS = ['Heron 150', 'Heron 175', 'Heron 200', 'Heron 230']
const POSTS = ['Long post 158', 'Long post 210', 'Long post 125', 'Brass post 150']
const HEADS = ['Two-blade 250', 'Two-blade 300', 'Two-blade 200', 'Three-blade 225']
const RINGS = ['Ring 15', 'Ring 28', 'Ring 42']

/** A plan as it may have been built, landing on what its parts weigh less a little trim. */
function pastBuild(roll: () => number): Sheet {
  const one = (of: readonly string[]) => of[Math.floor(roll() * of.length)]!
  const names = [one(SHAFTS), one(POSTS), one(RINGS), one(HEADS), 'Clip 11', 'Vane glue', 'Slow epoxy']
  const c2cIn = 27 + Math.floor(roll() * 16) / 8
  const open = demoSheet({ c2cIn, quantity: 3 }, names, { peakDrawWeightLb: 62 + 20 * roll() })
  const { forecast } = sheetFigures(open)!
  const targetGr = Math.round((inGrains(answer(forecast).total.value) - 7) * 10) / 10
  return { ...open, plan: { ...open.plan, targetGr } }
}

/** Three years on: other lots, some parts no longer made, some used up. */
function laterShelf(roll: () => number, past: Sheet, gone: number): Shelf {
  const shelf = demoShelf({
    roll,
    lots: 1 + Math.floor(roll() * 2),
    from: 40_000,
    free: () => Math.floor(2 + 30 * roll()),
  })
  return without(
    shelf,
    (part) => part.kind !== 'glue' && past.parts.some((was) => was.part.name === part.name) && roll() < gone,
  )
}

/** The same shelf, with these parts no longer made and none of them left. */
function without(shelf: Shelf, isGone: (part: Part) => boolean): Shelf {
  const gone = new Set([...shelf.parts.values()].filter(({ body }) => isGone(body)).map(({ id }) => id))
  const lots = [...shelf.lots].filter(([, lot]) => !gone.has(lot.body.part))
  return {
    ...shelf,
    lots: new Map(lots),
    parts: new Map(
      [...shelf.parts].map(([id, part]) => [
        id,
        gone.has(id) ? { ...part, body: { ...part.body, discontinued: true } } : part,
      ]),
    ),
  }
}

describe('a rebuild on today’s shelf', () => {
  it(
    `calls nothing a match that the whole arrow does not show to be one, over ${SIZE} past builds`,
    async () => {
      const ended = { matched: 0, named: 0 }
      for (let seed = FROM + 1; seed <= FROM + SIZE; seed++) {
        const roll = seeded(seed)
        const past = pastBuild(roll)
        const shelf = laterShelf(roll, past, seed % 3 === 0 ? 0.3 : 0.08)
        const rebuilt = await rebuildToday({ past, builtGr: undefined, quantity: 3 }, shelf, find)
        const was = three(past)
        const isInside = (sheet: Sheet) => {
          const is = three(sheet)
          return (
            Math.abs(is.finishedGr - past.plan.targetGr!) <= shelf.rules.toleranceGr + 1e-9 &&
            Math.abs(is.focPercent - was.focPercent) <= shelf.rules.focTolerancePoints + 1e-9 &&
            Math.abs(is.reserve - was.reserve) <= 0.03 * was.reserve + 1e-9
          )
        }
        const tell = `seed ${seed}: ${JSON.stringify({ was, is: three(rebuilt.sheet), gaveUp: rebuilt.gaveUp })}`
        expect(rebuilt.matches, tell).toBe(isInside(rebuilt.sheet))
        expect(rebuilt.others.map(({ sheet }) => isInside(sheet), tell)).toEqual(rebuilt.others.map(() => true))
        if (rebuilt.matches) ended.matched += 1
        else {
          ended.named += 1
          expect(notInside(rebuilt).length, tell).toBeGreaterThan(0)
        }
        for (const { lot, count } of rebuilt.sheet.plan.lines) {
          const view = lot === null ? undefined : shelf.lotViews.get(lot)
          if (rebuilt.gaveUp !== 'nothing' && view !== undefined)
            expect(view.onHand, tell).toBeGreaterThanOrEqual(count)
        }
      }
      expect(ended.matched).toBeGreaterThan(SIZE / 4)
      expect(ended.matched + ended.named).toBe(SIZE)
    },
    LIMIT_MS,
  )

  it('holds parts and cut where the same parts are there, and only trims otherwise', async () => {
    const past = pastBuild(seeded(5))
    const rebuilt = await rebuildToday({ past, builtGr: undefined, quantity: 3 }, demoShelf({ roll: seeded(9) }), find)
    expect(rebuilt).toMatchObject({ matches: true, gaveUp: 'nothing', replaced: [] })
    expect(rebuilt.sheet.plan.c2cIn).toBe(past.plan.c2cIn)
  })

  it('takes the alternate that the shop has named before anything nearer, where the arrow still matches', async () => {
    const past = pastBuild(seeded(5))
    const nock = past.parts.find(({ part }) => part.name === 'Clip 11')!
    const shelf = without(demoShelf({ roll: seeded(9) }), ({ name }) => name === 'Clip 11')
    const twin = (name: string, weightGr: number, id: number) =>
      [testId(id), { id: testId(id), hash: '', rivals: [], body: { ...nock.part, name, weightGr } }] as const
    const gone = shelf.parts.get(nock.id)!
    const naming = (alternates: readonly string[]): Shelf => ({
      ...shelf,
      parts: new Map([
        ...shelf.parts,
        twin('Same clip', 11, 61),
        twin('Named clip', 11.4, 62),
        [nock.id, { ...gone, body: { ...gone.body, alternates: [...alternates] } }],
      ]),
    })
    const standIn = async (on: Shelf) => {
      const rebuilt = await rebuildToday({ past, builtGr: undefined, quantity: 3 }, on, find)
      return rebuilt.replaced.find(({ was }) => was.name === 'Clip 11')
    }
    expect(await standIn(naming([testId(62), testId(61)]))).toMatchObject({ now: { name: 'Named clip' }, named: true })
    expect((await standIn(naming([])))?.now?.name).not.toBe('Named clip')
  })

  it('names what it cannot match where the shelf has nothing near', async () => {
    const past = pastBuild(seeded(5))
    const shelf = without(
      demoShelf({ roll: seeded(9) }),
      ({ kind, name }) => (kind === 'shaft' && name !== 'Plover 400') || kind === 'half-out',
    )
    const rebuilt = await rebuildToday({ past, builtGr: undefined, quantity: 3 }, shelf, find)
    expect(rebuilt.matches).toBe(false)
    expect(notInside(rebuilt)).not.toEqual([])
  })

  it('gives what the parts alone say where there is no cut length or weight to come back to', async () => {
    const past = demoSheet({ quantity: 2 })
    const rebuilt = await rebuildToday({ past, builtGr: 812, quantity: 2 }, demoShelf({ roll: seeded(2) }), find)
    expect(rebuilt).toMatchObject({ matches: false, gaveUp: 'nothing' })
    expect(rebuilt.sheet.plan.targetGr).toBe(812)
  })
})

const notInside = ({ compared }: Rebuilt) =>
  compared.filter(
    ({ difference, within }) => within !== undefined && !(Math.abs(difference ?? Infinity) <= within + 1e-9),
  )
