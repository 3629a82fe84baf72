/** Counts the checks of a harness that is a plain program: durability, benchmarks, budgets. */
import { closingLine, type Counts, reportCounts, type Skip } from './counts'

export interface Tally {
  /** Runs one check; it fails by throwing. */
  readonly check: (name: string, holds: () => unknown) => Promise<void>
  /** States that a check was not made, and why. */
  readonly skip: (name: string, why: string) => void
  /** Reports the counts and sets the exit code. A harness that checked nothing has failed. */
  readonly close: () => void
}

export function tally(): Tally {
  let passed = 0
  let failed = 0
  const skipped: Skip[] = []
  return {
    async check(name, holds) {
      try {
        await holds()
        passed += 1
        console.log(`  holds   ${name}`)
      } catch (problem) {
        failed += 1
        console.log(
          `  FAILS   ${name}\n${problem instanceof Error ? (problem.stack ?? problem.message) : String(problem)}`,
        )
      }
    },
    skip(name, why) {
      skipped.push({ name, why })
      console.log(`  skipped ${name}: ${why}`)
    },
    close() {
      const counts: Counts = { passed, failed, skipped }
      reportCounts(counts)
      console.log(closingLine(counts))
      if (failed > 0 || passed + skipped.length === 0) process.exitCode = 1
    },
  }
}
