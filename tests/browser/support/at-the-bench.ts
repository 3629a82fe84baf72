/** A builder at the bench page: sees what it asks for, reads it off a true set, and goes on when the page has. */
import type { Page } from '@playwright/test'
import { dice } from '@/demo/dice'
import { PASSES, TOUCH, trueSet, truth, typed } from '@/demo/true-set'
import type { DataPoint } from '@/domain/bench/data-points'
import { DATA_POINT_NAMES, DATA_POINTS } from '@/domain/bench/data-points'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import { pointInLine } from '@/ui/words/bench-words'
import type { StartedSet } from '@tests/support/started-set'
import { expect } from './fixtures'

/** Brings the book in as a backup and opens the bench of its job. */
export async function openBench(page: Page, { job, backup }: StartedSet): Promise<void> {
  await page.goto('./')
  await page.getByRole('button', { name: 'Open my shop' }).click()
  await page.goto('./#/shop')
  const file = { name: 'book.jsonl', mimeType: 'application/jsonl', buffer: backup }
  await page.getByLabel('Add a backup').setInputFiles(file)
  await page.getByRole('button', { name: 'Add it' }).click()
  await expect(page.getByText('Added.')).toBeVisible()
  await page.goto(`./#/job/${job.id}/bench`)
  await expect(page.locator('h1').first()).toHaveText('Receive')
}

export interface Seen {
  readonly title: string
  readonly no: number
  /** What is to be read; empty where only a confirmation is left. */
  readonly point: DataPoint | ''
  readonly takeOff: number | null
  readonly advice: string
  readonly asked: boolean
  readonly said: string
  readonly focus: string
}

const POINT_OF = new Map(DATA_POINT_NAMES.map((point) => [pointInLine(point), point]))

export async function look(page: Page): Promise<Seen> {
  const seen = await page.evaluate(() => {
    const text = (selector: string) => document.querySelector(selector)?.textContent?.trim() ?? ''
    const takeOff = document.querySelector('[data-figure$=".takeOff"]')?.getAttribute('data-value')
    const at = document.activeElement
    return {
      title: text('h1'),
      label: document.querySelector('form [name=reading]') === null ? '' : text('form label > span'),
      at: text('[aria-current=true]'),
      takeOff: takeOff === null || takeOff === undefined ? null : Number(takeOff),
      advice: text('main'),
      asked: [...document.querySelectorAll('#bench-answer button')].length > 0,
      said: text('main output'),
      focus: at === null ? '' : (at.getAttribute('name') ?? at.textContent ?? ''),
    }
  })
  const [, no, word] = /^No\. (\d+), (.*)$/.exec(seen.label) ?? []
  const point = POINT_OF.get((word ?? '').trim()) ?? ''
  const tile = /no\. (\d+)/.exec(seen.at)?.[1]
  return { ...seen, no: Number(no ?? tile ?? 0), point }
}

/** What a true set reads, arrow by arrow; a pass at the grinder takes some off. */
export function trueHand({ sheet }: StartedSet, seed: number) {
  const chance = dice(seed)
  const { items } = sheetFigures(sheet)!
  const arrows = trueSet(items, sheet, sheet.plan.quantity, chance)
  const real = (no: number) => arrows[no - 1]!
  return {
    read: (no: number, point: DataPoint) =>
      Number(typed(point, truth(point, real(no), items, sheet), chance)).toFixed(DATA_POINTS[point].decimals),
    touch(no: number, kind: 'none' | 'wipe' | 'add') {
      if (kind === 'none') return
      const [mean, sd] = TOUCH
      real(no).touchedGr += (kind === 'add' ? 1 : -1) * Math.max(0.06, chance.normal(mean, sd))
    },
    pass(no: number, kind: keyof typeof PASSES) {
      const [mean, sd] = PASSES[kind]
      real(no).trimmedGr += Math.max(0.05, chance.normal(mean, sd))
    },
  }
}

/** Which pass the coach asks for; none when it says stop. */
export function passAsked({ advice }: Seen): keyof typeof PASSES | null {
  const said = /A (heavy|usual|light) pass now/.exec(advice)
  return said === null ? null : (said[1] as keyof typeof PASSES)
}

/** What the coach asks of the open joint: `none` to weigh it first as it was spread; null when it says stop. */
export function touchAsked({ advice }: Seen): 'none' | 'wipe' | 'add' | null {
  if (/then weigh it wet/.test(advice)) return 'none'
  if (/Wipe a touch off/.test(advice)) return 'wipe'
  return /A touch more/.test(advice) ? 'add' : null
}

/** Until the page has gone on from what was seen. */
export async function goneOn(page: Page, { title, said }: Seen): Promise<void> {
  await page.waitForFunction(
    ([before, words]) => {
      const saved = /Saved on this device/.test(document.querySelector('header')?.textContent ?? '')
      const now = document.querySelector('main output')?.textContent?.trim() ?? ''
      return saved && (document.querySelector('h1')?.textContent?.trim() !== before || now !== words)
    },
    [title, said] as const,
    { polling: 10 },
  )
}
