/** Compares what a page was told was saved with what is there after a fresh start. */
import type { Page } from '@playwright/test'

export interface Losses {
  /** Acknowledged and gone. */
  readonly lost: readonly number[]
  /** Everything that is wrong with what is there: twice, not readable, not chained, not the state of an open book. */
  readonly torn: readonly string[]
  readonly found: number
}

/** @param of the whole book is verified with the job, or not */
export async function losses(
  page: Page,
  job: string,
  acknowledged: readonly number[],
  of: 'the whole book' | 'the job alone' = 'the whole book',
): Promise<Losses> {
  await page.waitForFunction(() => 'shop' in window)
  const audit = await page.evaluate(([id, all]) => window.shop.audit(id, all), [job, of === 'the whole book'] as const)
  const there = new Set(audit.values)
  return {
    lost: acknowledged.filter((value) => !there.has(value)),
    torn: [
      ...(there.size < audit.values.length ? [`${audit.values.length - there.size} values are there twice`] : []),
      ...(audit.unread > 0 ? [`${audit.unread} events do not read`] : []),
      ...audit.problems.map((problem) => JSON.stringify(problem)),
      ...(audit.state.kind === 'open' ? [] : [`the book opens as ${audit.state.kind}`]),
    ],
    found: audit.values.length,
  }
}

/** @throws Error that says what was lost or torn */
export function nothingLost({ lost, torn, found }: Losses, acknowledged: number): void {
  console.log(`          ${acknowledged} acknowledged, ${found} found, ${lost.length} lost, ${torn.length} torn`)
  if (lost.length > 0) throw new Error(`lost ${lost.length} of ${acknowledged} acknowledged readings`)
  if (torn.length > 0) throw new Error(torn.slice(0, 5).join('; '))
}

/** Starts saving readings in the page; the list grows with each that was acknowledged. */
export async function readForEver(
  page: Page,
  options: { readonly job?: string; readonly from?: number; readonly early?: boolean } = {},
): Promise<{ readonly job: string; readonly acknowledged: readonly number[] }> {
  const acknowledged: number[] = []
  await page.waitForFunction(() => 'shop' in window)
  await page.exposeFunction('saved', (value: number) => void acknowledged.push(value))
  const job = options.job ?? (await page.evaluate(() => window.shop.openJob()))
  await page.evaluate(
    ({ id, from, early }) => void window.shop.readForEver(id, from, (value) => window.saved(value), early),
    { id: job, from: options.from ?? 1, early: options.early ?? false },
  )
  return { job, acknowledged }
}
