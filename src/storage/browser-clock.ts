/** The clock and the dice that the browser gives; the domain has neither. */
import type { Clock, Ids } from '../domain/ports'
import { uuidFrom } from '../domain/records/uuid-from'

export const browserClock: Clock = { now: () => new Date().toISOString() }

const random = (bytes: number) => crypto.getRandomValues(new Uint8Array(bytes))
export const browserIds: Ids = {
  id: () => uuidFrom(Date.now(), random(16)),
  salt: () => [...random(16)].map((byte) => byte.toString(16).padStart(2, '0')).join(''),
}
