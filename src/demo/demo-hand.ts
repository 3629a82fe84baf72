/** What the tellers of the demo shop share: the dice, and ids that are the same in every demo shop of one day. */
import type { Id } from '../domain/records/scalars'
import { uuidFrom } from '../domain/records/uuid-from'
import type { Dice } from './dice'
import { dice } from './dice'

export interface DemoHand {
  readonly dice: Dice
  readonly id: (at: string) => Id
  readonly salt: () => string
}

export function demoHand(seed: number): DemoHand {
  const seeded = dice(seed)
  return {
    dice: seeded,
    id: (at) => uuidFrom(Date.parse(at), seeded.bytes(16)),
    salt: () => [...seeded.bytes(16)].map((byte) => byte.toString(16).padStart(2, '0')).join(''),
  }
}
