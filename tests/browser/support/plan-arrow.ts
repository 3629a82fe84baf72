import type { Page } from '@playwright/test'
import { expect } from './fixtures'

/** Adds a part of the shelf to the sheet, from its first lot. */
export async function addFromShelf(page: Page, kind: string, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Add a part' }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByRole('button', { name: kind, exact: true }).click()
  await dialog
    .getByRole('button', { name: new RegExp(`^${name}, lot [^u]`) })
    .first()
    .click()
  await expect(dialog).toBeHidden()
}

/** Types a part in on the spot: its name and the fields by label; what is not named keeps what is usual. */
export async function typeIn(
  page: Page,
  kind: string,
  name: string,
  fields: Readonly<Record<string, string>>,
): Promise<void> {
  await page.getByRole('button', { name: 'Add a part' }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByRole('button', { name: kind, exact: true }).click()
  await dialog.getByRole('button', { name: 'Type one in' }).click()
  await dialog.getByLabel('Name').fill(name)
  for (const [label, value] of Object.entries(fields)) {
    await dialog.getByLabel(label, { exact: true }).fill(value)
    await dialog.getByLabel(label, { exact: true }).blur()
  }
  await dialog.getByRole('button', { name: 'Keep and add' }).click()
  await expect(dialog).toBeHidden()
}

export async function setField(page: Page, label: string, value: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true })
  await field.fill(value)
  await field.press('Enter')
  await expect(page.getByText(/^Saved on this device/)).toBeVisible()
}

export const jobOf = (page: Page): string => /job\/([^/]+)/.exec(page.url())![1]!
