/**
 * A UUID of version 7 [RFC9562] §5.7 from a given moment and given random bytes: the domain has no clock and no dice of
 * its own.
 *
 * @param milliseconds since 1970, UTC
 * @param random sixteen random bytes
 */
import { v7 } from 'uuid'
import type { Id } from './scalars'

export const uuidFrom = (milliseconds: number, random: Uint8Array): Id => v7({ msecs: milliseconds, random })
