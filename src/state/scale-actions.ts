/** What is kept of the scale itself: its checks against a check weight. */
import type { Id } from '../domain/records/scalars'
import { newEvent } from '../domain/records/write'
import type { AppState } from './app-store'

export const keepScaleCheck = (
  { write }: Pick<AppState, 'write'>,
  job: Id,
  check: { readonly scale: string; readonly checkWeightGr: number; readonly readGr: number },
) => write(() => ({ events: [newEvent('scaleChecked', { job }, check)] }))
