/** A browser whose processes can be halted and killed from outside, as a power cut or a crash would. */
import { spawn } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { readFileSync, readdirSync } from 'node:fs'
import { chromium } from '@playwright/test'
import type { Page } from '@playwright/test'
import { CHROMIUM } from '@tests/run/ensure-browser'
import { CHROMIUM_FLAGS } from '@tests/browser/support/chromium-flags'

export interface BrowserProcess {
  /** Opens an address in a new tab. */
  readonly open: (address: string) => Promise<Page>
  /** Closes it as a person does. */
  readonly quit: () => Promise<void>
  /** Nothing of it runs until `goOn`. */
  readonly halt: () => void
  readonly goOn: () => void
  /** Ends every process at once, without a word. */
  readonly kill: () => Promise<void>
}

export async function startBrowser(profile: string): Promise<BrowserProcess> {
  const child = spawn(
    CHROMIUM,
    [
      ...CHROMIUM_FLAGS,
      '--disable-dev-shm-usage',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      'about:blank',
    ],
    { stdio: ['ignore', 'ignore', 'pipe'] },
  )
  const signal = (name: NodeJS.Signals) => {
    for (const pid of family(child.pid!)) tell(pid, name)
  }
  const end = () => signal('SIGKILL')
  const isGone = () => child.exitCode !== null || child.signalCode !== null // by itself
  process.once('exit', end)
  const browser = await chromium.connectOverCDP(await endpoint(child))
  const context = browser.contexts()[0]!
  return {
    open: async (address) => {
      const page = await context.newPage()
      await page.goto(address)
      return page
    },
    quit: async () => {
      process.off('exit', end)
      if (isGone()) return
      const ended = new Promise((done) => child.once('exit', done))
      const session = await browser.newBrowserCDPSession()
      await session.send('Browser.close').catch(() => {}) // it may be gone before it has answered
      await ended
    },
    halt: () => signal('SIGSTOP'),
    goOn: () => signal('SIGCONT'),
    kill: async () => {
      process.off('exit', end)
      if (isGone()) return
      const ended = new Promise((done) => child.once('exit', done))
      signal('SIGKILL')
      await ended
      await browser.close()
    },
  }
}

function tell(pid: number, signal: NodeJS.Signals) {
  try {
    process.kill(pid, signal)
  } catch {
    // it ended by itself meanwhile
  }
}

/** Where the browser listens for the harness. */
function endpoint(child: ChildProcess): Promise<string> {
  return new Promise((found, missing) => {
    let said = ''
    child.stderr?.on('data', (data: Buffer) => {
      said += data.toString()
      const match = /DevTools listening on (ws:\S+)/.exec(said)
      if (match) found(match[1]!)
    })
    child.once('exit', (code) => missing(new Error(`the browser ended with ${code}: ${said}`)))
  })
}

/** A process, its children, and theirs; the children first, so that none is left without a parent to be found by. */
function family(root: number): readonly number[] {
  const children = new Map<number, number[]>()
  for (const name of readdirSync('/proc').filter((name) => /^\d+$/.test(name))) {
    const parent = parentOf(name)
    if (parent !== undefined) children.set(parent, [...(children.get(parent) ?? []), Number(name)])
  }
  const below = (pid: number): number[] => [...(children.get(pid) ?? []).flatMap(below), pid]
  return below(root)
}

function parentOf(pid: string): number | undefined {
  try {
    return Number(/\) \S (\d+)/.exec(readFileSync(`/proc/${pid}/stat`, 'utf8'))?.[1])
  } catch {
    return undefined // it ended meanwhile
  }
}
