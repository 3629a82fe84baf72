/** The scale at the bench in the store: which one stands there, what it shows, and how it is connected. */
import type { OpenScale, ScaleWish } from '../domain/bench/scale-source'
import type { ScaleOn, ScaleState } from '../domain/bench/scale-state'
import type { DeviceMemory } from '../domain/ports'
import type { ScaleLink } from './scale-link'

export interface ScaleSlice {
  readonly scale: ScaleState
  /** Opens the scale at the bench; what it shows then stands in `scale`. */
  readonly connectScale: (wish: ScaleWish) => Promise<void>
  readonly disconnectScale: () => Promise<void>
  /** Which of the shop's scales stands at the bench; empty: the first. */
  readonly scaleName: string
  readonly setScaleName: (name: string) => void
  /** What this device remembers of its scales, as `scale-memory` reads it. */
  readonly keptScales: () => string | null
  /** The scale of the last time, where its port needs no new leave. */
  readonly reconnectScale: () => Promise<void>
  /** What was taken off the scale, and whether it takes by itself. */
  readonly setScale: (change: Partial<Pick<ScaleOn, 'taken' | 'cleared' | 'auto'>>) => void
  /** Lays a weight on the demo scale. */
  readonly putOnScale: (gr: number) => void
}

type Set = (change: Partial<ScaleSlice>) => void

export function scaleSlice(
  { memory, openScale }: { readonly memory: DeviceMemory; readonly openScale: OpenScale },
  set: Set,
  get: () => ScaleSlice,
): ScaleSlice {
  let link: ScaleLink | null = null
  return {
    scale: { kind: 'off' },
    scaleName: memory.recall('scaleName') ?? '',
    async connectScale(wish) {
      await get().disconnectScale()
      const [{ linkScale }, { afterConnecting }] = await Promise.all([import('./scale-link'), import('./scale-memory')])
      link = await linkScale(
        openScale,
        wish,
        (scale) => set({ scale }),
        () => get().scale,
      )
      if (link === null) return
      memory.keep('scale', afterConnecting(memory.recall('scale'), wish))
      get().setScaleName(wish.name)
    },
    async reconnectScale() {
      const last = memory.recall('scale')
      if (last === null || get().scale.kind !== 'off') return
      const { againWish } = await import('./scale-memory')
      const wish = againWish(last)
      if (wish !== null) await get().connectScale(wish)
    },
    async disconnectScale() {
      const before = link
      link = null
      set({ scale: { kind: 'off' } })
      await before?.close()
    },
    setScale(change) {
      const { scale } = get()
      if (scale.kind === 'on') set({ scale: { ...scale, ...change } })
    },
    setScaleName(name) {
      memory.keep('scaleName', name)
      set({ scaleName: name })
    },
    keptScales: () => memory.recall('scale'),
    putOnScale: (gr) => link?.put(gr),
  }
}
