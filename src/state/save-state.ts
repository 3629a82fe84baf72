/** What the screen may say about saving; fed only by the awaited write. */
import type { Command, NotSavedReason } from '../domain/ports'

export type SaveState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'saved'; readonly at: string }
  /** Stays until the same command is given again and saved; what was entered is in it. */
  | { readonly kind: 'not saved'; readonly why: NotSavedReason; readonly detail: string; readonly command: Command }
