/** What could not be saved, oldest first, until it is: a later save that goes well does not push it out of sight. */
import type { Command, NotSavedReason } from '../domain/ports'
import type { Id } from '../domain/records/scalars'
import type { SaveState } from './save-state'

export interface Unsaved {
  add(command: Command, why: NotSavedReason, detail: string): void
  remove(command: Id): void
  clear(): void
  commands(): readonly Command[]
  /** What the screen says of it; undefined where there is nothing. */
  state(): SaveState | undefined
}

export function unsaved(): Unsaved {
  let commands: readonly Command[] = []
  let why: NotSavedReason = 'stopped'
  let detail = ''
  return {
    add(command, because, said) {
      commands = [...commands.filter((each) => each.id !== command.id && !isSameAgain(each, command)), command]
      why = because
      detail = said
    },
    remove: (id) => (commands = commands.filter((each) => each.id !== id)),
    clear: () => (commands = []),
    commands: () => commands,
    state: () => (commands.length === 0 ? undefined : { kind: 'not saved', why, detail, commands }),
  }
}

/** Whether a builder who was told *not saved* did the same once more: one reading taken twice is one reading. */
const isSameAgain = (a: Command, b: Command) => asked(a) !== undefined && asked(a) === asked(b)

function asked({ events = [], facts = [], personal = [], photos = [] }: Command): string | undefined {
  if (facts.length + personal.length + photos.length > 0) return undefined
  return JSON.stringify(events, (key, value: unknown) => (key === 'takenAt' ? undefined : value))
}
