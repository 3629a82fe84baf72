/** The scale at the bench: opened, listened to, and what it shows kept in the store. */
import { feedAfter, feedAt, NO_FEED } from '../domain/bench/scale-feed'
import { patternReader } from '../domain/bench/scale-pattern'
import { lineSplitter, readScaleLine } from '../domain/bench/scale-line'
import type { OpenScale, ScaleSource, ScaleWish } from '../domain/bench/scale-source'
import { USUAL_SERIAL } from '../domain/bench/scale-source'
import type { ScaleOn, ScaleState } from '../domain/bench/scale-state'
import { scaleAfter } from '../domain/bench/scale-state'

export interface ScaleLink {
  close(): Promise<void>
  put(gr: number): void
}

/** @param set is told each state that differs from the one before; `get` gives the present one */
export async function linkScale(
  openScale: OpenScale,
  wish: ScaleWish,
  set: (scale: ScaleState) => void,
  get: () => ScaleState,
): Promise<ScaleLink | null> {
  const opened = await openScale(wish)
  if (typeof opened === 'string') {
    set(wish.kind === 'serial' && wish.again ? { kind: 'off' } : { kind: 'refused', why: opened })
    return null
  }
  const source: ScaleSource = opened
  let feed = NO_FEED
  const split = lineSplitter()
  const settings = wish.kind === 'serial' ? wish.settings : USUAL_SERIAL
  const readLine = settings.pattern === undefined ? readScaleLine : patternReader(settings.pattern)
  const show = () => {
    const before = get()
    if (before.kind !== 'on') return
    const after = scaleAfter(before, feed)
    if (after !== before) set(after)
  }
  const start: ScaleOn = {
    kind: 'on',
    source: wish.kind,
    name: wish.name,
    settings,
    readout: feed.readout,
    since: 0,
    taken: null,
    cleared: true,
    auto: false,
    notUnderstood: '',
  }
  set(start)
  source.listen({
    text(chunk, at) {
      for (const line of split(chunk)) feed = feedAfter(feed, readLine(line), at)
      show()
    },
    tick(at) {
      feed = feedAt(feed, at)
      show()
    },
    lost: () => set({ kind: 'refused', why: 'lost' }),
  })
  return { close: () => source.close(), put: (gr) => source.put?.(gr) }
}
