/** Runs one suite as a process group of its own, its output in a log, and says what it counted. */
import { spawn } from 'node:child_process'
import { createWriteStream, mkdirSync, rmSync } from 'node:fs'
import { delimiter, resolve } from 'node:path'
import { type Counts, readCounts } from './counts'
import type { Suite } from './plan'

const FOLDER = resolve('test-results/run')
const MS_PER_MINUTE = 60_000

export interface Ran {
  readonly counts: Counts
  readonly log: string
  readonly seconds: number
  /** Why the suite as a whole has failed, when it has. */
  readonly problem?: string
}

export async function runSuite(suite: Suite, size: 'commit' | 'release'): Promise<Ran> {
  const file = resolve(FOLDER, suite.name.replaceAll(/\W+/g, '-'))
  const log = `${file}.log`
  const countsFile = `${file}.json`
  mkdirSync(FOLDER, { recursive: true })
  rmSync(countsFile, { force: true })

  const began = performance.now()
  const minutes = suite.limit * (size === 'release' ? 30 : 1)
  const env = {
    ...suite.env,
    ...(size === 'release' ? suite.releaseEnv : {}),
    TEST_SIZE: size,
    COUNTS_FILE: countsFile,
  }
  const end = await execute(suite, env, log, minutes * MS_PER_MINUTE)
  const seconds = (performance.now() - began) / 1000
  const problem =
    end === 'out of time' ? `ran past ${minutes} min and was ended` : end === 0 ? undefined : `exit ${end}`

  if (suite.counts === 'exit') {
    const counts = { passed: problem === undefined ? 1 : 0, failed: problem === undefined ? 0 : 1, skipped: [] }
    return { counts, log, seconds, ...(problem === undefined ? {} : { problem }) }
  }
  return { ...judge(readCounts(countsFile), problem), log, seconds }
}

/** A suite that reports nothing, or fails without a failed check, counts as one failure; so does a skip without a reason. */
export function judge(reported: Counts | undefined, problem?: string): Pick<Ran, 'counts' | 'problem'> {
  if (reported === undefined) {
    return {
      counts: { passed: 0, failed: 1, skipped: [] },
      problem: problem === undefined ? 'reported no counts' : `${problem}, no counts`,
    }
  }
  const unexplained = reported.skipped.filter((skip) => skip.why.trim() === '')
  const counts = {
    passed: reported.passed,
    failed: reported.failed + unexplained.length,
    skipped: reported.skipped.filter((skip) => skip.why.trim() !== ''),
  }
  if (unexplained.length > 0) {
    return { counts, problem: `skipped without a reason: ${unexplained.map((skip) => skip.name).join('; ')}` }
  }
  if (counts.passed + counts.failed + counts.skipped.length === 0) {
    return { counts: { ...counts, failed: 1 }, problem: 'checked nothing' }
  }
  if (problem !== undefined && counts.failed === 0) return { counts: { ...counts, failed: 1 }, problem }
  return counts.failed > 0 ? { counts, problem: problem ?? 'failed checks' } : { counts }
}

function execute(suite: Suite, env: Record<string, string>, log: string, limit: number) {
  const path = [resolve('node_modules/.bin'), process.env['PATH']].join(delimiter)
  const [program, ...parameters] = suite.command
  return new Promise<number | 'out of time'>((ended) => {
    const output = createWriteStream(log)
    const child = spawn(program, parameters, {
      detached: true,
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...process.env, NO_COLOR: '1', ...env, PATH: path },
    })
    let late = false
    const timer = setTimeout(() => {
      late = true
      if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL')
    }, limit)
    child.stdout.pipe(output, { end: false })
    child.stderr.pipe(output, { end: false })
    child.on('error', (problem) => output.write(`${problem.message}\n`))
    child.on('close', (code) => {
      clearTimeout(timer)
      output.end(() => ended(late ? 'out of time' : (code ?? 1)))
    })
  })
}
