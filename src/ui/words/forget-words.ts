/** What goes when a client is forgotten, what stays, and how far it reaches. */
import type { ClientToForget } from '../../state/forget-client'
import { counted } from './format'

export const goesWords = ({ versions, notes, photos }: ClientToForget): string =>
  `Name, phone and address (${counted(versions.length, 'version')}), ${counted(notes.length, 'note')} and ${counted(photos.length, 'photo')} are removed from this book. It cannot be undone.`

export const staysWords = ({ jobs }: ClientToForget): string =>
  `${counted(jobs, 'job')} with every arrow and reading stay, without a name, and every hash still verifies.`

export const REACH_WORDS =
  'A backup that is added later does not bring the person back. Backups made before today still hold the name: replace them.'
