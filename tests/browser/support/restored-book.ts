/** The book that stands on a page, backed up through the page and restored into a book of its own in this process. */
import { readFile } from 'node:fs/promises'
import { IDBFactory, IDBKeyRange } from 'fake-indexeddb'
import type { Page } from '@playwright/test'
import { VIEW_RULES } from '@/domain/job/view-rules'
import type { AppRepository } from '@/state/app-repository'
import { openRepository } from '@/storage/open-repository'
import { countedIds, heldSurroundings } from '@tests/storage/fresh-shop'
import { expect } from './fixtures'

/** Leaves the page where it was. */
export async function restoredBook(page: Page): Promise<AppRepository> {
  const at = page.url()
  await page.goto('./#/shop')
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Back up now' }).click(),
  ])
  const bytes = new Uint8Array(await readFile(await download.path()))
  await page.goto(at)

  const repository = await openRepository({
    name: 'grainwright-restored',
    rules: VIEW_RULES,
    ids: countedIds(),
    surroundings: heldSurroundings().surroundings,
    engine: { indexedDB: new IDBFactory(), IDBKeyRange },
  })
  const staged = await repository.archive.stage(new Blob([bytes]).stream())
  expect(staged.check.kind, 'the backup').toBe('whole')
  expect((await repository.archive.addStaged()).kind).toBe('saved')
  return repository
}
