/** Playwright's results for the test command. A skip without a reason, or a test that never ran, does not pass. */
import type { FullConfig, FullResult, Reporter, Suite } from '@playwright/test/reporter'
import { reportCounts, type Skip } from './counts'

export default class PlaywrightCounts implements Reporter {
  private root: Suite | undefined
  private errors = 0

  onBegin(_config: FullConfig, root: Suite): void {
    this.root = root
  }

  onError(): void {
    this.errors += 1
  }

  onEnd(_result: FullResult): void {
    let passed = 0
    let failed = this.errors
    const skipped: Skip[] = []
    for (const test of this.root?.allTests() ?? []) {
      const outcome = test.outcome()
      if (outcome === 'expected') passed += 1
      else if (outcome !== 'skipped') failed += 1
      else {
        const why = test.annotations.find((note) => note.type === 'skip' || note.type === 'fixme')?.description ?? ''
        skipped.push({ name: test.titlePath().filter(Boolean).join(' › '), why })
      }
    }
    reportCounts({ passed, failed, skipped })
  }
}
