/** A scale on a serial port, by the Web Serial API; a page may ask for one only over https, and only on a tap. */
import type { ScaleRefusal, ScaleSource, SerialSettings } from './domain/bench/scale-source'

/** What is used of the API [Web Serial, WICG draft]; the standard library does not describe it yet. */
interface SerialPortLike {
  readonly readable: ReadableStream<Uint8Array<ArrayBuffer>> | null
  open(settings: { baudRate: number; dataBits: number; parity: string; stopBits: number }): Promise<void>
  close(): Promise<void>
}
interface SerialLike {
  requestPort(): Promise<SerialPortLike>
  getPorts(): Promise<readonly SerialPortLike[]>
}

const TICK_MS = 200

async function choose(serial: SerialLike, again: boolean): Promise<SerialPortLike | undefined> {
  if (again) return (await serial.getPorts())[0]
  return serial.requestPort().catch(() => undefined)
}

export async function serialScale(settings: SerialSettings, again: boolean): Promise<ScaleSource | ScaleRefusal> {
  const { serial } = navigator as Navigator & { readonly serial?: SerialLike }
  if (serial === undefined) return 'no serial ports here'
  const port = await choose(serial, again)
  if (port === undefined) return 'none chosen'
  const { baudRate, dataBits, parity, stopBits } = settings
  try {
    await port.open({ baudRate, dataBits, parity, stopBits })
  } catch {
    return 'could not be opened'
  }
  let reader: ReadableStreamDefaultReader<string> | undefined
  let timer: ReturnType<typeof setInterval> | undefined
  let isClosing = false
  let ended: Promise<unknown> = Promise.resolve()
  return {
    listen(heard) {
      const { readable } = port
      if (readable === null) return heard.lost()
      timer = setInterval(() => heard.tick(performance.now()), TICK_MS)
      const decoder = new TextDecoderStream('utf-8')
      const piped = readable.pipeTo(decoder.writable)
      const own = decoder.readable.getReader()
      reader = own
      const read = async () => {
        for (;;) {
          const { value, done } = await own.read()
          if (done) break
          heard.text(value, performance.now())
        }
      }
      ended = Promise.allSettled([read(), piped]).then(() => {
        clearInterval(timer)
        if (!isClosing) heard.lost()
      })
      return undefined
    },
    async close() {
      isClosing = true
      clearInterval(timer)
      await reader?.cancel().catch(() => {})
      await ended
      await port.close().catch(() => {})
    },
  }
}
