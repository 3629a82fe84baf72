/** Vitest's results for the test command. A test skipped at run time says why with `skip(reason)`. */
import type { Reporter, TestModule } from 'vitest/node'
import { reportCounts, type Skip } from './counts'

export default class VitestCounts implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    let passed = 0
    let failed = errors.length
    const skipped: Skip[] = []
    for (const module of modules) {
      failed += module.errors().length
      for (const test of module.children.allTests()) {
        const result = test.result()
        if (result.state === 'passed') passed += 1
        else if (result.state === 'failed') failed += 1
        else skipped.push({ name: test.fullName, why: (result.state === 'skipped' && result.note) || '' })
      }
    }
    reportCounts({ passed, failed, skipped })
  }
}
