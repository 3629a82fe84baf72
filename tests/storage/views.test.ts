import { describe, expect, it } from 'vitest'
import fc from 'fast-check'
import type { Book } from '@/storage/book'
import { rebuildAllViews } from '@/storage/rebuild-views'
import { freshShop } from './fresh-shop'
import { live, steps } from './random-book'
import { PLAIN_RULES } from './stand-in-rules'
import type { ViewRules } from '@/domain/records/view-rules'

const RUNS = Number(process.env['VIEW_RUNS'] ?? 60)

async function viewsOf(book: Book) {
  return {
    heads: await book.heads.toArray(),
    jobs: await book.jobView.toArray(),
    arrows: await book.arrowView.toArray(),
    lots: await book.lotView.toArray(),
  }
}

describe('views', () => {
  it('made anew from the records are what was written along the way', { timeout: 3_600_000 }, async () => {
    await fc.assert(
      fc.asyncProperty(steps(25), async (lived) => {
        const shop = await freshShop()
        await live(shop, lived)
        await shop.book.open()
        const written = await viewsOf(shop.book)
        await shop.book.transaction('rw', shop.book.tables, async () =>
          rebuildAllViews(shop.book, PLAIN_RULES as unknown as ViewRules),
        )
        expect(await viewsOf(shop.book)).toEqual(written)
      }),
      { numRuns: RUNS },
    )
  })
})
