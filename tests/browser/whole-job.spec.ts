// long because it is one job
/**
 * One order through the whole job, in the demo shop and from the empty one, with what goes wrong on the way: a slip that is corrected, a shaft that
 * wobbles and is cut unevenly, an arrow that comes out light and is mended, a deviation that has to be decided, a page
 * reloaded in mid-step, a browser closed and opened again. Three years later three more are built from another lot.
 */
import type { BrowserContext, Page } from '@playwright/test'
import { dice } from '@/demo/dice'
import { doNext } from './support/bench-hand'
import type { BenchHand } from './support/bench-hand'
import { digitsOutsideMarks } from './support/digits-outside-marks'
import { describe, expect, it } from './support/fixtures'
import { addFromShelf, jobOf, setField, typeIn } from './support/plan-arrow'

const SET = 6
const [WRONG, WOBBLES, LIGHT, DEVIATES] = [2, 3, 4, 5]

const PARTS = [
  ['Shaft', 'Heron 200'],
  ['Nock', 'Clip 11'],
  ['Insert', 'Long post 210'],
  ['Collar', 'Ring 28'],
  ['Head', 'Two-blade 300'],
  ['Vanes', 'Broad vane 2.6'],
  ['Glue', 'Slow epoxy'],
  ['Glue', 'Vane glue'],
] as const

const LIGHT_PARTS = [
  ['Shaft', 'Heron 260'],
  ['Nock', 'Clip 11'],
  ['Insert', 'Long post 125'],
  ['Head', 'Two-blade 200'],
  ['Vanes', 'Low vane 3'],
  ['Glue', 'Slow epoxy'],
  ['Glue', 'Vane glue'],
] as const

/** A hand whose weights add up: each shaft is its own. Scatter: common practice, no source. */
function steadyHand(): BenchHand {
  const chance = dice(11)
  const own = Array.from({ length: SET + 1 }, () => chance.normal(0, 0.7))
  const of = (no: number) => (own[no] ?? 0) - (no === LIGHT ? 7 : 0)
  const shaft = 329.8
  const values: Readonly<Record<string, (no: number) => number>> = {
    'raw weight': (no) => ((shaft + of(no)) * 32) / 28,
    c2c: () => 28,
    'run-out of the cut shaft': () => 0.001,
    'cut weight': (no) => shaft + of(no),
    insert: (no) => 210 + no / 10,
    'collar or sleeve': (no) => 28 + no / 20,
    head: (no) => 300 + no / 10,
    'fletched weight': (no) => shaft + of(no) + 33.8,
    'dry weight, with head': (no) => shaft + of(no) + 33.8 + 210 + 28 + 300 + no / 4,
    'balance point, from the throat': () => 22.1,
    'run-out at the point': () => 0.002,
  }
  return {
    read: (label, no) => {
      const name = label.toLowerCase()
      const value = values[name]
      if (value === undefined) throw new Error(`nothing to read at ${label}`)
      return value(no).toFixed(name.includes('run-out') ? 4 : name === 'c2c' ? 2 : 1)
    },
    pass: (wanted) => Math.min(wanted, wanted > 2.5 ? 1.2 : wanted > 1 ? 0.6 : 0.3),
  }
}

const heading = (page: Page) => page.locator('h1').first()
const saved = (page: Page) => expect(page.getByText(/^Saved on this device/)).toBeVisible()

async function openPage(context: BrowserContext, at: string): Promise<Page> {
  const page = await context.newPage()
  page.on('pageerror', (error) => {
    throw error
  })
  await page.clock.install({ time: new Date(at) })
  return page
}

async function freeze(page: Page, targetGr: number, arrows: number) {
  await setField(page, 'C2C', '28')
  await setField(page, 'Arrows in the set', `${arrows}`)
  await setField(page, 'Finished weight', `${targetGr}`)
  await page.getByRole('button', { name: 'Freeze version 1' }).click()
  await expect(page.getByText('Frozen as version 1.')).toBeVisible()
}

async function newJob(page: Page): Promise<string> {
  await page.goto('./#/jobs')
  await page.getByRole('button', { name: /call/i }).first().click()
  await page.waitForURL(/#\/job\/.+/)
  return jobOf(page)
}

/** The dial at five stations, the nock end bent: the high side is always at the same place of the clock. */
async function spin(page: Page): Promise<void> {
  for (const tir of ['0.009', '0.007', '0.003', '0.001', '0.001']) {
    await page.locator('input[name=runOut]').fill(tir)
    await page.getByRole('button', { name: '90°', exact: true }).click()
    await expect(page.locator('input[name=runOut]')).toHaveValue('')
    await saved(page)
  }
}

async function correct(page: Page, to: string): Promise<void> {
  await page.getByText(/^Everything read of no\./).click()
  await page.getByRole('button', { name: 'Correct Raw weight' }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByLabel('It should say').fill(to)
  await dialog.getByRole('button', { name: 'Keep the correction' }).click()
  await expect(dialog.getByText('Why is it corrected?')).toBeVisible()
  await dialog.getByLabel('Why').fill('two figures the wrong way round')
  await dialog.getByRole('button', { name: 'Keep the correction' }).click()
  await expect(dialog).toBeHidden()
}

interface Seen {
  corrected: boolean
  uneven: boolean
  mended: boolean
  decided: boolean
}

/** Works on until a step begins, or the route is done. What happens on the way is noted in `seen`. */
async function work(page: Page, job: string, seen: Seen, until?: string): Promise<void> {
  const hand = steadyHand()
  for (let i = 0; i < 500; i++) {
    const step = (await heading(page).textContent()) ?? ''
    if (step === 'Every step is done' || step === until) return
    const label =
      (await page
        .locator('form label')
        .first()
        .textContent({ timeout: 500 })
        .catch(() => '')) ?? ''
    const at = Number(
      /no\. (\d+)/.exec(
        (await page
          .locator('main [aria-current=true] [data-label]')
          .first()
          .textContent({ timeout: 500 })
          .catch(() => '')) ?? '',
      )?.[1] ?? 0,
    )
    if (step === 'Receive' && at === WRONG && !seen.corrected) {
      const right = hand.read('raw weight', WRONG)
      const wrong = (Number(right) + 4).toFixed(1)
      await doNext(page, { ...hand, read: () => wrong })
      await page.goto(`./#/job/${job}/bench/receive/${WRONG}`)
      await correct(page, right)
      seen.corrected = true
      await page.goto(`./#/job/${job}/bench`)
      continue
    }
    if (step === 'Spin and mark' && at === WOBBLES && (await page.locator('[data-figure$=".offNock"]').count()) === 0) {
      await spin(page)
    }
    if (at === WOBBLES && /c2c/i.test(label)) {
      const off = async (end: string) =>
        Number(await page.locator(`[data-figure$=".${end}"]`).first().getAttribute('data-value'))
      seen.uneven = (await off('offNock')) > (await off('offPoint')) + 0.25
    }
    const fit = page.getByRole('button', { name: /^Fit it/ })
    if (step === 'Trim the post' && at === LIGHT && !seen.mended) {
      await page.screenshot({ path: 'test-results/shots/mend-1440-light.png', fullPage: true })
      await fit.first().click()
      await saved(page)
      seen.mended = true
      await page.goto(`./#/job/${job}/bench`)
      continue
    }
    if (step === 'Cure') await page.clock.runFor('48:00:00')
    const expected = page.locator('[data-figure$=".expected"]')
    const shown = (await expected.count()) > 0 ? Number(await expected.getAttribute('data-value')) : undefined
    const read: BenchHand['read'] = (name, no) => {
      const finished = name.toLowerCase().startsWith('finished weight')
      if (finished && shown !== undefined) return (shown + (no === DEVIATES ? 1.4 : 0)).toFixed(1)
      // After a mend the builder weighs what is new; it weighs what its lot does.
      if (no === LIGHT && seen.mended && shown !== undefined) return shown.toFixed(1)
      return hand.read(name, no)
    }
    await doNext(page, { ...hand, read })
    const undecided = page.getByRole('button', { name: 'use as is' })
    if ((await undecided.count()) > 0) {
      await undecided.first().click()
      await expect(page.getByText('A decision needs its reason')).toBeVisible()
      await page.getByLabel('Why, and what was done').first().fill('agreed with the client on the telephone')
      await undecided.first().click()
      await saved(page)
      seen.decided = true
    }
  }
  throw new Error('the route did not come to its end')
}

interface Shop {
  readonly name: string
  readonly targetGr: number
  readonly enter: (page: Page) => Promise<void>
  /** Brings the parts onto the open sheet. */
  readonly stock: (page: Page) => Promise<void>
}

const ring = (weight: string, length: string, outer: string) => ({
  'Catalogue weight, each': weight,
  Length: length,
  'Outer diameter': outer,
  'Inner diameter': '7.22',
})

const SHOPS: readonly Shop[] = [
  {
    name: 'the demo shop',
    targetGr: 900,
    async enter(page) {
      await page.getByRole('button', { name: 'Look around the demo shop' }).click()
      await expect(page.getByText('Maren Tolliver')).toBeVisible({ timeout: 120_000 }) // the shop is being filled
    },
    async stock(page) {
      for (const [kind, name] of PARTS) await addFromShelf(page, kind, name)
    },
  },
  {
    name: 'the empty shop',
    targetGr: 896,
    async enter(page) {
      await page.getByRole('button', { name: 'Open my shop' }).click()
      // A heavier ring lies on the shelf, in case an arrow comes out light.
      await page.goto('./#/parts')
      await page.getByRole('button', { name: 'Add the first part' }).click()
      const dialog = page.getByRole('dialog')
      await dialog.getByRole('button', { name: 'Collar', exact: true }).click()
      await dialog.getByLabel('Name').fill('Ring 42')
      for (const [label, value] of Object.entries(ring('42', '0.8', '9.1'))) {
        await dialog.getByLabel(label, { exact: true }).fill(value)
        await dialog.getByLabel(label, { exact: true }).blur()
      }
      await dialog.locator('button[type=submit]').click()
      await expect(dialog).toBeHidden()
    },
    async stock(page) {
      await typeIn(page, 'Shaft', 'Heron 200', {
        'Weight per inch': '11.8',
        'Static spine': '200',
        'Outer diameter': '7.2',
        'Inner diameter': '5.28',
        'Raw length': '32',
      })
      await typeIn(page, 'Nock', 'Clip 11', { 'Catalogue weight, each': '11', 'Throat to shaft end': '0.55' })
      await typeIn(page, 'Insert', 'Long post 210', {
        'Catalogue weight, each': '210',
        'Post diameter': '5.2',
        'Post length': '2.95',
        'Shoulder diameter': '7.2',
      })
      await typeIn(page, 'Collar', 'Ring 28', ring('28', '0.6', '8.8'))
      await typeIn(page, 'Head', 'Two-blade 300', {
        'Catalogue weight, each': '300',
        Length: '2.4',
        'Cutting width': '1.25',
      })
      await typeIn(page, 'Vanes', 'Broad vane 2.6', { 'Catalogue weight, each': '7.2', Length: '2.6', Height: '0.55' })
    },
  },
]

/** What a builder may type by mistake: each is answered in words, stays in the entry, and nothing is stored. */
async function mistype(page: Page): Promise<void> {
  const input = page.locator('input[name=reading]')
  const answer = page.locator('#bench-answer')
  for (const [typed, words] of [
    ['', /is empty/],
    ['abc', /not a number/],
    ['-3', /below zero/],
    ['99999', /expected/i],
    ['12 ft', /expected/i],
  ] as const) {
    await input.fill(typed)
    await input.press('Enter')
    await expect(answer).toContainText(words)
    await expect(input).toHaveValue(typed)
  }
  await input.fill('24,4')
  await input.press('Enter')
  await expect(answer).toContainText('looks like grams')
  await page.getByRole('button', { name: 'Weigh again' }).click()
  await page.reload()
  await page.getByText(/^Everything read of no\./).click()
  await expect(page.getByRole('button', { name: /^Correct / })).toHaveCount(0)
  await page.getByText(/^Everything read of no\./).click()
  expect(await digitsOutsideMarks(page)).toEqual([])
}

describe('an order of six', () => {
  for (const shop of SHOPS) {
    it(`goes from call to box in ${shop.name} through all that goes wrong, and three more are built from another lot`, async ({
      profile,
      address,
    }) => {
      await wholeJob(shop, async (at) => openPage(await profile.open({ baseURL: address }), at), profile.close)
    })
  }
})

async function wholeJob(shop: Shop, open: (at: string) => Promise<Page>, close: () => Promise<void>): Promise<void> {
  let page = await open('2026-03-02T09:00:00Z')
  await page.goto('./')
  await shop.enter(page)
  const job = await newJob(page)
  await setField(page, 'Quarry', 'bison')
  await page.goto(`./#/job/${job}/call/bow`)
  await setField(page, 'Peak draw weight', '74')
  await setField(page, 'Draw length', '28')
  for (let i = 0; i < 3; i++)
    await page
      .getByRole('button', { name: /don.t know yet/i })
      .nth(i)
      .click()
  await expect(
    page
      .getByText('3 open questions')
      .or(page.getByText(/[3-9] open/))
      .first(),
  ).toBeVisible()
  await page.goto(`./#/job/${job}/sheet`)
  await shop.stock(page)
  await freeze(page, shop.targetGr, SET)
  await page.getByRole('button', { name: 'Start the set' }).click()
  await expect(heading(page)).toHaveText('Receive')
  await mistype(page)

  const seen: Seen = { corrected: false, uneven: false, mended: false, decided: false }
  await work(page, job, seen, 'Weigh the cut shaft')
  expect(await digitsOutsideMarks(page)).toEqual([])
  await page.locator('input[name=reading]').fill('329')
  await page.reload()
  await expect(heading(page)).toHaveText('Weigh the cut shaft')
  await work(page, job, seen, 'Weigh fletched')

  await close()
  page = await open('2026-03-03T08:00:00Z')
  await page.goto('./')
  await page.goto(`./#/job/${job}/bench`)
  await work(page, job, seen)
  expect(seen).toEqual({ corrected: true, uneven: true, mended: true, decided: true })

  await page.goto(`./#/job/${job}/send`)
  await expect(page.getByText(`Ordered ${SET}, started ${SET}, scrapped 0, to be accepted ${SET}.`)).toBeVisible()
  await page.getByRole('button', { name: 'Sign off the set' }).click()
  await expect(page.getByText(/^Signed off as version 1/)).toBeVisible()
  await page.getByRole('button', { name: 'Mark as sent today' }).click()
  await expect(page.getByText(/^Sent /)).toBeVisible()
  expect(await digitsOutsideMarks(page)).toEqual([])

  // Three years later the shafts are of another lot, and a little heavier.
  await page.clock.setSystemTime(new Date('2029-03-05T09:00:00Z'))
  await page.goto('./#/parts')
  await page.getByRole('link', { name: 'Heron 200', exact: true }).click()
  await expect(page.getByRole('heading', { name: 'Receive a lot' })).toBeVisible()
  if ((await page.getByText('Put it on hold').count()) > 0) {
    await page.getByText('Put it on hold').first().click()
    await page.getByLabel('Reason to hold it').first().fill('kept for the shop')
    await page.getByRole('button', { name: 'Put on hold' }).first().click()
    await saved(page)
  }
  await page.getByLabel('Lot code').fill('S-2029')
  await page.getByLabel('Pieces', { exact: true }).fill('12')
  await page.getByRole('button', { name: 'Receive', exact: true }).click()
  await expect(page.getByText('Lot S-2029').first()).toBeVisible()
  for (const weight of ['379.4', '380.1', '379.0']) {
    await page.getByLabel('Weight of one').first().fill(weight)
    await page.getByLabel('Weight of one').first().press('Enter')
    await saved(page)
  }
  await page.goto('./#/book')
  await page
    .getByRole('link', { name: /^Build this again/ })
    .first()
    .click()
  await page.getByRole('button', { name: 'Open the rebuild sheet' }).click()
  await expect(page.getByRole('heading', { name: 'Then and now' })).toBeVisible()
  const apart = async (what: string) =>
    Math.abs(Number(await page.locator(`[data-figure="sheet.difference.${what}"]`).getAttribute('data-value')))
  expect(await apart('finished')).toBeLessThanOrEqual(0.5)
  expect(await apart('foc')).toBeLessThanOrEqual(0.2)
  const reserve = Number(await page.locator('[data-figure="sheet.past.reserve"]').getAttribute('data-value'))
  expect(await apart('reserve')).toBeLessThanOrEqual(0.03 * reserve)
  await expect(page.getByText('lot S-2029', { exact: false }).first()).toBeVisible()
  await setField(page, 'Arrows in the set', '3')
  expect(await digitsOutsideMarks(page)).toEqual([])
  await page.getByRole('button', { name: 'Freeze version 1' }).click()
  await expect(page.getByText('Frozen as version 1.')).toBeVisible()

  // A light set beside it: 650 grains.
  if (shop.name !== 'the demo shop') return
  const light = await newJob(page)
  await page.goto(`./#/job/${light}/call/bow`)
  await setField(page, 'Peak draw weight', '65')
  await page.goto(`./#/job/${light}/sheet`)
  for (const [kind, name] of LIGHT_PARTS) await addFromShelf(page, kind, name)
  await freeze(page, 650, 6)
}
