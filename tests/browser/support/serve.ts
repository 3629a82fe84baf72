/** Serves a build as a visitor gets it: Vite's preview as a process of its own on a free port. */
import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { createServer, type AddressInfo } from 'node:net'
import { resolve } from 'node:path'

export interface Served {
  readonly address: string
  readonly stop: () => Promise<void>
}

/** @param folder the build's folder; DIST names another than the usual */
export async function serve(folder = process.env['DIST'] ?? 'dist', port?: number): Promise<Served> {
  const chosen = port ?? (await freePort())
  const parameters = [
    'preview',
    '--host',
    '127.0.0.1',
    '--strictPort',
    '--port',
    `${chosen}`,
    '--outDir',
    resolve(folder),
  ]
  const server = spawn(process.execPath, ['node_modules/vite/bin/vite.js', ...parameters], {
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const address = `http://127.0.0.1:${chosen}/`
  await answering(server, address)
  return {
    address,
    stop: async () => {
      if (server.exitCode !== null) return
      server.kill()
      await once(server, 'exit')
    },
  }
}

async function freePort(): Promise<number> {
  const probe = createServer().listen(0, '127.0.0.1')
  await once(probe, 'listening')
  const { port } = probe.address() as AddressInfo
  probe.close()
  await once(probe, 'close')
  return port
}

async function answering(server: ChildProcess, address: string): Promise<void> {
  let said = ''
  for (const stream of [server.stdout, server.stderr]) stream?.on('data', (data: Buffer) => (said += data.toString()))
  for (let attempt = 0; attempt < 100; attempt += 1) {
    if (server.exitCode !== null) throw new Error(`the preview ended with ${server.exitCode}: ${said}`)
    if (
      await fetch(address).then(
        (response) => response.ok,
        () => false,
      )
    )
      return
    await new Promise((go) => setTimeout(go, 100))
  }
  throw new Error(`no answer at ${address}: ${said}`)
}
