/** Every error and warning of a page from now on; `stop` looks no further. */
import type { ConsoleMessage, Page } from '@playwright/test'

export function problemsOf(page: Page) {
  const problems: string[] = []
  const failed = (error: Error) => void problems.push(error.stack ?? error.message)
  const said = (message: ConsoleMessage) => {
    if (message.type() === 'error' || message.type() === 'warning') problems.push(message.text())
  }
  page.on('pageerror', failed)
  page.on('console', said)
  const stop = () => {
    page.off('pageerror', failed)
    page.off('console', said)
  }
  return { problems, stop }
}
