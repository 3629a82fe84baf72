/** What stops the book, and what to do about it. */
import type { RepositoryState } from '../../domain/ports'

export function repositoryWords(state: RepositoryState): string {
  switch (state.kind) {
    case 'open':
      return ''
    case 'failed':
      return `A write failed (${state.detail}). Reading goes on; writing waits until the book is rescued under Shop.`
    case 'missing':
      return `Records are missing: this book held ${state.remembered.events} events and now holds ${state.found.events}. Add the last backup under Shop before going on.`
    case 'newer-app':
      return 'This book was written by a later version of the app. Reload to take that version; nothing is written until then.'
    case 'closed':
      return 'Another tab has taken a newer version of the book. Reload this page to go on.'
  }
}
