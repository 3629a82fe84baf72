/**
 * A shop with a sent order in its book, brought in once as a backup, as a person would; every test of a file goes on with
 * the same page, so that nothing is filled or loaded twice.
 */
import type { Page } from '@playwright/test'
import { newFact } from '@/domain/records/write'
import { backupOf } from '@tests/storage/backup/backup-of'
import type { SentOrder } from '@tests/support/sent-order'
import { sentOrder } from '@tests/support/sent-order'
import { expect, it as base } from './fixtures'
import { problemsOf } from './problems'

const PATIENT = { timeout: 120_000 } // a busy machine checks and adds the file more slowly
const GONE = 'Clip 11'
const FEW = 3
const ARROWS = 6 // fill every paper of a usual set
const BUILT_AT = '2026-03-02T09:00:00.000Z'

interface SentBook {
  readonly order: SentOrder
  readonly page: Page
}

/** Opens a shop of its own on a page, with a sent order in its book. */
export async function withOrder(page: Page, arrows = FEW, client?: string): Promise<SentOrder> {
  const order = await sentOrder(BUILT_AT, arrows, client)
  // By now one of its parts is no longer made.
  const { id, hash, body } = order.partCalled(GONE)
  await order.commit({
    facts: [newFact(order.said, 'part', id, { ...body, discontinued: true }, { parents: [hash] })],
  })
  const buffer = Buffer.from(await backupOf(order.repository))
  await page.goto('./')
  await page.getByRole('button', { name: 'Open my shop' }).click()
  await page.goto('./#/shop')
  await page.getByLabel('Add a backup').setInputFiles({ name: 'book.jsonl', mimeType: 'application/jsonl', buffer })
  await page.getByRole('button', { name: 'Add it' }).click(PATIENT)
  await expect(page.getByText('Added.')).toBeVisible(PATIENT)
  return order
}

/** `page` is the one page of the worker, left where the test before left it; `book.order` is what the book held when it came in. */
export const it = base.extend<object, { readonly book: SentBook }>({
  book: [
    async ({ browser, address }, give) => {
      const context = await browser.newContext({
        baseURL: address,
        locale: 'en-US',
        timezoneId: 'UTC',
        viewport: { width: 1440, height: 900 },
      })
      const page = await context.newPage()
      page.setDefaultTimeout(PATIENT.timeout)
      await give({ order: await withOrder(page, ARROWS), page })
      await context.close()
    },
    { scope: 'worker', timeout: 300_000 },
  ],
  page: async ({ book }, give) => {
    const { page } = book
    const { problems, stop } = problemsOf(page)
    await give(page)
    stop()
    expect(problems, 'errors and warnings on the page').toEqual([])
  },
})
