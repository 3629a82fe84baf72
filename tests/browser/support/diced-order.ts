/** An order by the dice, and the arrows that come of it. */
import type { Dice } from '@/demo/dice'
import type { BenchHand } from './bench-hand'

export interface DicedOrder {
  readonly arrows: number
  readonly drawLb: number | undefined
  readonly bow: 'rating' | 'nothing'
  readonly post: 'Insert' | 'Half-out'
  readonly collar: boolean
  readonly vanes: boolean
  readonly shaftGpi: number
  readonly headGr: number
  readonly overGr: number
}

export const oneOf = <T>(chance: Dice, ...of: readonly T[]): T => of[Math.floor(chance.next() * of.length)]!
const upTo = (chance: Dice, from: number, to: number, step: number) =>
  Math.round((from + chance.next() * (to - from)) / step) * step

export const dicedOrder = (chance: Dice): DicedOrder => ({
  arrows: oneOf(chance, 1, 1, 2, 2),
  drawLb: oneOf(chance, 62, 70, 78, undefined),
  bow: oneOf(chance, 'rating', 'nothing'),
  post: oneOf(chance, 'Insert', 'Half-out'),
  collar: chance.next() < 0.5,
  vanes: chance.next() < 0.5,
  shaftGpi: upTo(chance, 10, 13, 0.1),
  headGr: oneOf(chance, 200, 250, 300),
  // What has to come off; below zero the plan can never reach its number, and must be refused.
  overGr: oneOf(chance, 3, 4, 5, 6, 3.5, -4),
})

/** Reads what a true arrow of the plan would weigh; each arrow is its own. */
export function handOf(plan: DicedOrder, chance: Dice): BenchHand {
  const own = Array.from({ length: 12 }, () => chance.normal(0, 0.8))
  const of = (no: number) => own[no] ?? 0
  const ring = plan.collar && plan.post === 'Insert' ? 15 : 0
  const cut = plan.shaftGpi * 27.7
  const vanes = plan.vanes ? 21 : 0
  const dry = cut + 11 + 158 + ring + vanes + plan.headGr
  const values: Readonly<Record<string, (no: number) => number>> = {
    'raw weight': (no) => plan.shaftGpi * 32 + of(no) * 1.15,
    c2c: () => 28.25,
    'run-out of the cut shaft': () => 0.001,
    'cut weight': (no) => cut + of(no),
    insert: (no) => 158 + no / 10,
    'collar or sleeve': (no) => ring + no / 20,
    head: (no) => plan.headGr + no / 10,
    'fletched weight': (no) => cut + 11 + vanes + of(no),
    'dry weight, with head': (no) => dry + of(no) + no / 10 + (ring > 0 ? no / 20 : 0) + no / 10,
    'balance point, from the throat': () => 21.6,
    'run-out at the point': () => 0.002,
  }
  return {
    read: (label, no) => {
      const name = label.toLowerCase()
      const value = values[name]
      if (value === undefined) throw new Error(`nothing to read at ${label}`)
      return value(no).toFixed(name.includes('run-out') ? 4 : name === 'c2c' ? 2 : 1)
    },
    pass: (wanted) => Math.min(wanted, wanted > 2.5 ? 1.2 : 0.6),
  }
}
