/** Takes a call by the keyboard alone and counts what it takes beside the text itself. */
import type { Page } from '@playwright/test'
import { expect } from './fixtures'

export interface CallHand {
  /** Keys and clicks so far that were no text. */
  readonly actions: () => number
  readonly press: (key: string) => Promise<void>
  readonly type: (text: string) => Promise<void>
  /** Types an answer and goes on with Enter. */
  readonly say: (text: string) => Promise<void>
}

export function callHand(page: Page): CallHand {
  let actions = 0
  const press = async (key: string) => {
    actions += 1
    await page.keyboard.press(key)
  }
  const type = (text: string) => page.keyboard.type(text)
  /** The field that is at hand; what is typed too early would land in the one before. */
  const atHand = () => page.evaluate(() => (document.activeElement as HTMLInputElement | null)?.name ?? '')
  const say = async (text: string) => {
    const before = await atHand()
    await type(text)
    await press('Enter')
    await expect.poll(atHand).not.toBe(before)
  }
  return { actions: () => actions, press, type, say }
}

export async function openShop(page: Page): Promise<void> {
  await page.goto('./')
  await page.getByRole('button', { name: 'Open my shop' }).click()
  await expect(page.getByRole('heading', { name: 'Jobs', exact: true })).toBeVisible()
}

/** A new call, at its first field. */
export async function newCall(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'New call' }).click()
  await expect(page.locator('input[name=clientSearch]')).toBeFocused()
  return new URL(page.url()).hash.split('/')[2]!
}

/** Answers a question of the topic that is shown, by its name in the records. */
export async function answer(page: Page, question: string, text: string): Promise<void> {
  const field = page.locator(`[name="${question}"]`)
  await field.fill(text)
  await field.press('Tab')
}

export async function goTo(page: Page, job: string, at: string): Promise<void> {
  await page.goto(`./#/job/${job}/call/${at}`)
}

export const isSaved = (page: Page) => expect(page.getByText(/^Saved on this device/)).toBeVisible()
