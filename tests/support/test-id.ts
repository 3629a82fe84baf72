import type { Id } from '@/domain/records/scalars'

/** A UUIDv7 that is the same for the same number. */
export const testId = (n: number): Id => `01900000-0000-7000-8000-${n.toString(16).padStart(12, '0')}`
