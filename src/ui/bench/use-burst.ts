/**
 * A scale that types like a keyboard: digits in a burst, then Enter. Wherever the focus stands, such a burst presses no
 * button; outside a field it is handed over as what was weighed.
 */
import { useEffect, useEffectEvent } from 'react'

/** No hand types digits so quickly one after the other. */
const BURST_MS = 35

/** How quickly a text came, key by key. */
export function burstMeter() {
  let keys = 0
  let first = 0
  let last = 0
  return {
    key(at: number) {
      if (keys === 0) first = at
      keys += 1
      last = at
    },
    clear() {
      keys = 0
    },
    /** Whether what came since it was cleared came as no hand types. */
    isBurst: () => keys >= 3 && (last - first) / (keys - 1) <= BURST_MS,
    /** Whether the last key is so near that one more belongs to it. */
    goesOn: (at: number) => keys > 0 && at - last <= 4 * BURST_MS,
  }
}

const isField = (target: EventTarget | null) =>
  target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement

export function useBurst(onBurst: (text: string) => void) {
  const give = useEffectEvent((text: string) => {
    if (document.querySelector('dialog[open]') === null) onBurst(text)
  })
  useEffect(() => {
    const meter = burstMeter()
    let text = ''
    const heard = (event: KeyboardEvent) => {
      if (isField(event.target)) return
      const at = event.timeStamp
      if (text !== '' && !meter.goesOn(at)) {
        text = ''
        meter.clear()
      }
      if (/^[\d.,+-]$/.test(event.key)) {
        text += event.key
        meter.key(at)
        return
      }
      if ((event.key === 'Enter' || event.key === ' ' || event.key === 'Tab') && meter.isBurst()) {
        event.preventDefault()
        event.stopPropagation()
        if (event.key !== 'Enter') return
        const whole = text
        text = ''
        meter.clear()
        give(whole)
      }
    }
    // A button is pressed as the key comes up (space) or goes down (Enter); both are caught before it hears of them.
    document.addEventListener('keydown', heard, { capture: true })
    return () => document.removeEventListener('keydown', heard, { capture: true })
  }, [])
}
