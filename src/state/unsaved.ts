/** What could not be saved, in the order of its asking, until it is. What is asked later waits behind it. */
import type { Change, Command } from '../domain/ports'
import type { SaveState } from './save-state'

export type NotSaved = Extract<SaveState, { kind: 'not saved' }>

/** What the list is once a command was refused, first in its place or last. */
export function withRefused(
  before: NotSaved | null,
  commands: readonly Command[],
  { why, detail }: Pick<NotSaved, 'why' | 'detail'>,
): NotSaved {
  const waiting = before?.commands ?? []
  const more = commands.filter(
    (command) => !waiting.some((each) => each.id === command.id || isSameReading(each, command)),
  )
  return { kind: 'not saved', why, detail, commands: [...waiting, ...more] }
}

export function without(before: NotSaved | null, isGone: (command: Command) => boolean): NotSaved | null {
  const commands = before?.commands.filter((command) => !isGone(command)) ?? []
  return before === null || commands.length === 0 ? null : { ...before, commands }
}

/** Somebody was forgotten: what was not saved of theirs holds what nobody may keep. */
export const isAboutForgotten =
  ({ jobs, subjects }: Change) =>
  ({ personal = [], photos = [], facts = [], events = [] }: Command): boolean =>
    personal.length + photos.length > 0 &&
    (facts.some((fact) => subjects.includes(fact.subject)) ||
      events.some((event) => event.job !== null && jobs.includes(event.job)))

/** Whether a builder who was told *not saved* took the same reading once more; the first stays, as it may yet arrive. */
function isSameReading(a: Command, b: Command): boolean {
  const [one, other] = [onlyReading(a), onlyReading(b)]
  return one !== undefined && one === other
}

function onlyReading({ events = [], facts = [], personal = [] }: Command): string | undefined {
  const [event, ...more] = events
  if (event?.what !== 'read' || more.length + facts.length + personal.length > 0) return undefined
  const { job, arrow, body } = event as Extract<typeof event, { what: 'read' }>
  return JSON.stringify([job, arrow, body], (key, value: unknown) => (key === 'takenAt' ? undefined : value))
}
