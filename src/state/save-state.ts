/** What the screen may say about saving; fed only by the awaited write. */
import type { Command, NotSavedReason } from '../domain/ports'

export type SaveState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'saved'; readonly at: string }
  /** Stays until every one of them is given again and saved, oldest first; what was entered is in them. */
  | {
      readonly kind: 'not saved'
      readonly why: NotSavedReason
      readonly detail: string
      readonly commands: readonly Command[]
    }
