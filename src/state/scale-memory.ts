/** What this device remembers of its scales: the settings of each by its name, and which was connected last. */
import { patternProblem } from '../domain/bench/scale-pattern'
import type { ScaleWish, SerialSettings } from '../domain/bench/scale-source'
import { USUAL_SERIAL } from '../domain/bench/scale-source'

interface KeptScales {
  /** Absent: the last one was no scale on a port. */
  readonly last?: string
  readonly settings: Readonly<Record<string, SerialSettings>>
}
const NONE: KeptScales = { settings: {} }

/** @param kept as `afterConnecting` wrote it; anything else counts as nothing kept */
function keptScales(kept: string | null): KeptScales {
  try {
    const read = JSON.parse(kept ?? '') as Partial<KeptScales> | null
    return typeof read?.settings === 'object' && read.settings !== null ? { ...NONE, ...read } : NONE
  } catch {
    return NONE
  }
}

/** As the scale of this name was last set; as most leave the works when it never was. */
export function settingsOf(kept: string | null, name: string): SerialSettings {
  const { settings } = keptScales(kept)
  const { pattern, ...own } = { ...USUAL_SERIAL, ...(Object.hasOwn(settings, name) ? settings[name] : {}) }
  return pattern === undefined || patternProblem(pattern) !== undefined ? own : { ...own, pattern }
}

/** What to keep once a scale is connected. */
export function afterConnecting(kept: string | null, wish: ScaleWish): string {
  const { settings } = keptScales(kept)
  return JSON.stringify(
    wish.kind === 'demo' ? { settings } : { last: wish.name, settings: { ...settings, [wish.name]: wish.settings } },
  )
}

/** The last scale again, without asking; null when there was none on a port. */
export function againWish(kept: string | null): ScaleWish | null {
  const { last } = keptScales(kept)
  return last === undefined ? null : { kind: 'serial', name: last, settings: settingsOf(kept, last), again: true }
}
