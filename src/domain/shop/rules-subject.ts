/** The one subject of the shop's rules, the same in every book, so that two books that are merged keep one set of rules. */
import type { Id } from '../records/scalars'

export const RULES_SUBJECT: Id = '01900000-0000-7000-8000-000000000001'
