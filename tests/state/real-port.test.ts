// The shipped way from a port to a weight, over a serial line that the kernel makes: two ends of a pseudo-terminal. Needs
// socat and stty; elsewhere it is skipped and says so.
import { type ChildProcess, spawn, spawnSync } from 'node:child_process'
import { closeSync, existsSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { ReadStream } from 'node:tty'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { USUAL_SERIAL } from '@/domain/bench/scale-source'
import type { ScaleState } from '@/domain/bench/scale-state'
import { scaleAnswer } from '@/domain/bench/scale-state'
import { serialScale } from '@/serial-scale'
import { linkScale } from '@/state/scale-link'

/** Programs of the machine that make a serial line, and set it. */
const [PAIR, SET] = ['socat', 'stty'] as const
const isThere = (tool: string) => spawnSync(tool, ['--version']).error === undefined
const missing = [PAIR, SET].find((tool) => !isThere(tool))

const undo: (() => void)[] = []
afterEach(() => {
  for (const each of undo.splice(0).reverse()) each()
  vi.unstubAllGlobals()
})

/** @returns the scale's end to write to, the line to pull out, and the browser's end as a port */
async function line() {
  const folder = mkdtempSync(join(tmpdir(), 'grainwright-port-'))
  const [ours, theirs] = [join(folder, 'bench'), join(folder, 'scale')]
  const pair: ChildProcess = spawn(PAIR, [`pty,raw,echo=0,link=${ours}`, `pty,raw,echo=0,link=${theirs}`])
  await vi.waitFor(() => expect(existsSync(ours) && existsSync(theirs)).toBe(true), { timeout: 10_000 })
  const scale = openSync(theirs, 'w')
  undo.push(
    () => rmSync(folder, { recursive: true }),
    () => pair.kill(),
    () => closeSync(scale),
  )
  const set: string[] = []
  let stream: ReadStream | undefined
  const port = {
    readable: null as ReadableStream<Uint8Array> | null,
    open({ baudRate, dataBits }: { baudRate: number; dataBits: number }) {
      const asked = ['-F', ours, `${baudRate}`, `cs${dataBits}`, '-parenb', '-cstopb', 'raw', '-echo']
      const { status, stderr } = spawnSync(SET, asked)
      if (status !== 0) return Promise.reject(new Error(`stty: ${stderr.toString()}`))
      set.push(spawnSync(SET, ['-F', ours, '-a']).stdout.toString())
      stream = new ReadStream(openSync(ours, 'r+'))
      // Pulled out, a terminal ends with an error; to the reader it has ended.
      stream.on('error', () => stream?.push(null))
      port.readable = Readable.toWeb(stream) as unknown as ReadableStream<Uint8Array>
      return Promise.resolve()
    },
    close() {
      stream?.destroy()
      return Promise.resolve()
    },
  }
  vi.stubGlobal('navigator', {
    serial: { requestPort: () => Promise.resolve(port), getPorts: () => Promise.resolve([]) },
  })
  return { send: (text: string) => writeSync(scale, text), pullOut: () => pair.kill(), set }
}

describe('a scale on a real serial line', () => {
  it('is taken when it has settled, in grains, once; and is missed when it is pulled out', async ({ skip }) => {
    if (missing !== undefined) return skip(`${missing} is not here to make a serial line`)
    const { send, pullOut, set } = await line()
    let scale: ScaleState = { kind: 'off' }
    const settings = { ...USUAL_SERIAL, baudRate: 19_200 } as const
    const link = await linkScale(
      () => serialScale(settings, false),
      { kind: 'serial', name: 'Scale 1', settings, again: false },
      (state) => (scale = state),
      () => scale,
    )
    expect(set[0]).toMatch(/speed 19200 baud/)
    const answer = () => (scale.kind === 'on' ? scaleAnswer(scale) : scale.kind)
    const shows = (told: unknown) =>
      vi.waitFor(() => expect(answer()).toMatchObject(told as object), { timeout: 10_000 })
    await shows({ kind: 'no', why: 'silent' })

    send('26.4 GN\r\nUS,GS,+  512.0 GN\r\n') // the tail of a line begun before anybody listened
    await shows({ kind: 'no', why: 'moving' })
    for (const piece of ['ST,GS,+  8', '26.4', ' GN\r', '\nST,GS,+  826.4 GN\r\n']) send(piece)
    await shows({ kind: 'weight', text: '826.4', raw: 'ST,GS,+  826.4 GN' })
    send('OL\r\n')
    await shows({ kind: 'no', why: 'overload' })
    send('ST,GS,+  53.55 g\r\n'.repeat(2))
    await shows({ kind: 'no', why: 'other unit' })

    pullOut()
    await vi.waitFor(() => expect(scale).toEqual({ kind: 'refused', why: 'lost' }), { timeout: 10_000 })
    await link?.close()
    return undefined
  })
})
