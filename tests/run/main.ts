/**
 * The test command: node tests/run/run-ts.mjs tests/run/main.ts [--fast | --release] [SUITE…]
 * Runs the suites of the plan, prints the log of each that fails, and closes with the counts of all alone on a line.
 */
import { readFileSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import { closingLine, type Counts, NOTHING, plus } from './counts'
import { ensureBrowser } from './ensure-browser'
import { PLAN, type Suite } from './plan'
import { runSuite } from './run-suite'
import { schedule } from './schedule'

const parameters = process.argv.slice(3)
const size = parameters.includes('--release') ? 'release' : 'commit'
const parts = parameters.includes('--fast')
  ? ['fast']
  : size === 'release'
    ? ['fast', 'full', 'release']
    : ['fast', 'full']
const named = parameters.filter((parameter) => !parameter.startsWith('--'))

const suites = chosen()
const failed = new Set<string>()
let total: Counts = NOTHING
const browserProblem = suites.some((suite) => suite.browser) ? ensureBrowser() : undefined
if (browserProblem !== undefined) console.log(browserProblem)

// One more than there are cores: what runs in a browser waits for the disk half of its time.
await schedule(suites, availableParallelism() + 1, async (suite) => {
  const hindrance = whyNot(suite)
  if (hindrance !== undefined) {
    failed.add(suite.name)
    total = plus(total, { passed: 0, failed: 1, skipped: [] })
    console.log(`not run ${suite.name}: ${hindrance}`)
    return
  }
  const { counts, problem, log, seconds } = await runSuite(suite, size)
  total = plus(total, counts)
  if (problem !== undefined) {
    failed.add(suite.name)
    console.log(`\n──── ${suite.name}: ${problem} ────\n${readFileSync(log, 'utf8').trimEnd()}\n────`)
  }
  console.log(
    `${problem === undefined ? 'passed ' : 'FAILED '} ${suite.name}, ${seconds.toFixed(1)} s: ${counts.passed} passed, ${counts.failed} failed${counts.skipped.length > 0 ? `, ${counts.skipped.length} skipped` : ''}`,
  )
  for (const skip of counts.skipped) console.log(`        skipped ${skip.name}: ${skip.why}`)
})

console.log(`\n${Math.round(performance.now() / 1000)} s in all.`)
console.log(closingLine(total))
process.exitCode = total.failed > 0 || total.passed === 0 ? 1 : 0

/** The suites of this command, or those named with all that they stand on. */
function chosen(): readonly Suite[] {
  const unknown = named.filter((name) => !PLAN.some((suite) => suite.name === name))
  if (unknown.length > 0) {
    throw new Error(`No suite ${unknown.join(', ')}; there are: ${PLAN.map((suite) => suite.name).join(', ')}.`)
  }
  if (named.length === 0) return PLAN.filter((suite) => parts.includes(suite.part))
  const wanted = new Set(named)
  for (const suite of PLAN.toReversed()) if (wanted.has(suite.name)) suite.after?.forEach((name) => wanted.add(name))
  return PLAN.filter((suite) => wanted.has(suite.name))
}

function whyNot(suite: Suite): string | undefined {
  if (suite.browser && browserProblem !== undefined) return 'no browser'
  const broken = suite.after?.find((name) => failed.has(name))
  return broken === undefined ? undefined : `${broken} has failed`
}
