/** What makes a part of an arrow final, and the step of the usual route at which it happens: common practice [CP]. */
export const FIXED_AT_STEP = Object.freeze({ 'shaft cut': 3, fletched: 8, 'post bonded': 14, packed: 18 })
export type FixingEvent = keyof typeof FIXED_AT_STEP
export const FIXING_EVENTS = Object.keys(FIXED_AT_STEP) as readonly FixingEvent[]

/** What is final once a step of the usual route is done. Other routes name what they have done themselves. */
export const fixedAfter = (step: number): readonly FixingEvent[] =>
  FIXING_EVENTS.filter((event) => FIXED_AT_STEP[event] <= step)

/** What a light arrow can be mended with, and what makes it impossible. */
export const MENDS_FIXED_BY = Object.freeze({
  'longer shaft': 'shaft cut',
  wrap: 'fletched',
  vanes: 'fletched',
  insert: 'post bonded',
  outsert: 'post bonded',
  'rear weight': 'post bonded',
  collar: 'post bonded',
  sleeve: 'post bonded',
  nock: 'packed',
  head: 'packed',
} as const satisfies Record<string, FixingEvent>)
export type MendKind = keyof typeof MENDS_FIXED_BY
