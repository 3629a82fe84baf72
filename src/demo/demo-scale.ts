/** A scale for trying out: it swings, settles and sends lines as a scale on a serial port would. */
import type { Heard, ScaleSource } from '../domain/bench/scale-source'
import { dice } from './dice'

const EVERY_MS = 200
const SWINGS = 4 // lines until it has settled
const SEED = 815

export function demoScale(): ScaleSource {
  const chance = dice(SEED)
  let heard: Heard | undefined
  let on = 0
  let swing = 0
  const timer = setInterval(() => {
    const at = performance.now()
    const shown = swing > 0 ? on + chance.normal(0, 0.02 * Math.abs(on) + 0.5) : on
    const state = swing > 0 ? 'US' : 'ST'
    swing = Math.max(0, swing - 1)
    const sign = shown < 0 ? '-' : '+'
    heard?.text(`${state},GS,${sign}${Math.abs(shown).toFixed(1).padStart(7, ' ')} GN\r\n`, at)
    heard?.tick(at)
  }, EVERY_MS)
  return {
    listen(to) {
      heard = to
      to.text('\r\n', performance.now())
    },
    close() {
      clearInterval(timer)
      return Promise.resolve()
    },
    put(gr) {
      on = Math.round(gr * 10) / 10
      swing = SWINGS
    },
  }
}
