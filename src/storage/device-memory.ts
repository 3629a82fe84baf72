/** Small settings of this device, in local storage. Where the browser withholds it, they last as long as the page. */
import type { DeviceMemory } from '../domain/ports'

const key = (name: string) => `grainwright:${name}`

export function deviceMemory(): DeviceMemory {
  const kept = new Map<string, string>()
  return {
    recall(name) {
      try {
        return localStorage.getItem(key(name)) ?? kept.get(name) ?? null
      } catch {
        return kept.get(name) ?? null
      }
    },
    keep(name, value) {
      kept.set(name, value)
      try {
        localStorage.setItem(key(name), value)
      } catch {
        // withheld or full: the setting is asked again next time
      }
    },
  }
}
