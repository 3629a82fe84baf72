// long because the builder has a rule for every turn of the way
/**
 * A builder who takes one way or another through the job, by the dice: from the empty shop to the box and the rebuild, or to
 * a refusal that is said in words. Each page on the way shows what the core makes of the exported record, and nothing else.
 */
import type { Page } from '@playwright/test'
import { dice } from '@/demo/dice'
import type { Dice } from '@/demo/dice'
import { implications } from '@/domain/call/implications'
import { draftSheet } from '@/domain/sheet/draft-sheet'
import { readable } from '@/domain/records/read-fact'
import { lotsOf } from '@/domain/stock/lots-of-part'
import type { AppRepository } from '@/state/app-repository'
import { loadShelf } from '@/state/load-shelf'
import { openBuild } from '@/state/open-build'
import { openJob } from '@/state/open-job'
import { doNext } from './support/bench-hand'
import type { BenchHand } from './support/bench-hand'
import { unlikeFirstPrinciples, wrongFigures } from './support/check-figures'
import { dicedOrder, handOf, oneOf } from './support/diced-order'
import type { DicedOrder } from './support/diced-order'
import { digitsOutsideMarks } from './support/digits-outside-marks'
import { buildFigures, lotFigures } from './support/expected-book-figures'
import {
  benchFigures,
  callFigures,
  sendFigures,
  sheetPageFigures,
  thenAndNowFigures,
  wasFigures,
} from './support/expected-figures'
import { describe, expect, it } from './support/fixtures'
import { addFromShelf, jobOf, setField, typeIn } from './support/plan-arrow'
import { restoredBook } from './support/restored-book'

const DAY = '2026-03-02'

async function onCall(page: Page, job: string, plan: DicedOrder): Promise<void> {
  await page.goto(`./#/job/${job}/call/bow`)
  const unknown = page.getByRole('button', { name: /don.t know yet/i })
  if (plan.drawLb === undefined) await unknown.first().click()
  else await setField(page, 'Peak draw weight', `${plan.drawLb}`)
  await setField(page, 'Draw length', '28.5')
  if (plan.bow === 'rating') await setField(page, 'Rated speed', '330')
  if (plan.bow === 'nothing') await unknown.last().click()
}

/** A lot of the shafts comes in, three of it go over the scale, and the sheet takes its shafts from it. */
async function receiveShafts(page: Page, job: string, plan: DicedOrder, chance: Dice): Promise<void> {
  await page.goto('./#/parts')
  await page.getByRole('link', { name: 'Own shaft' }).click()
  await page.getByLabel('Lot code').fill('W-1')
  await page.getByLabel('Pieces', { exact: true }).fill('24')
  await page.getByRole('button', { name: 'Receive', exact: true }).click()
  await expect(page.getByText('Lot W-1')).toBeVisible()
  for (let taken = 1; taken <= 3; taken += 1) {
    const field = page.getByLabel('Weight of one')
    await field.fill((plan.shaftGpi * 32 + chance.normal(0, 1)).toFixed(1))
    await field.press('Enter')
    await expect(page.getByText(`${taken} taken in this sitting`)).toBeVisible()
  }
  await page.goto(`./#/job/${job}/sheet`)
  await page.getByRole('button', { name: 'Remove Own shaft' }).click()
  await addFromShelf(page, 'Shaft', 'Own shaft')
}

async function onSheet(page: Page, job: string, plan: DicedOrder, chance: Dice): Promise<void> {
  await page.goto(`./#/job/${job}/sheet`)
  await typeIn(page, 'Shaft', 'Own shaft', {
    'Weight per inch': plan.shaftGpi.toFixed(1),
    'Static spine': '175',
    'Outer diameter': '7.2',
    'Inner diameter': '5.28',
    'Raw length': '32',
  })
  await typeIn(page, 'Nock', 'Own nock', { 'Catalogue weight, each': '11', 'Throat to shaft end': '0.55' })
  const post = { 'Catalogue weight, each': '158', 'Post diameter': '5.2', 'Post length': '2.165' }
  await (plan.post === 'Insert'
    ? typeIn(page, 'Insert', 'Own post', { ...post, 'Shoulder diameter': '7.2' })
    : typeIn(page, 'Half-out', 'Own half-out', { ...post, 'Length ahead of the shaft': '0.4', 'Body diameter': '7.4' }))
  if (plan.collar && plan.post === 'Insert')
    await typeIn(page, 'Collar', 'Own ring', {
      'Catalogue weight, each': '15',
      Length: '0.4',
      'Outer diameter': '8.5',
      'Inner diameter': '7.22',
    })
  await typeIn(page, 'Head', 'Own head', {
    'Catalogue weight, each': `${plan.headGr}`,
    Length: '2.15',
    'Cutting width': '1.125',
  })
  if (plan.vanes)
    await typeIn(page, 'Vanes', 'Own vane', { 'Catalogue weight, each': '7', Length: '2.6', Height: '0.55' })
  if (plan.arrows > 1) await receiveShafts(page, job, plan, chance)
  await setField(page, 'C2C', '28.25')
  await setField(page, 'Arrows in the set', `${plan.arrows}`)
  await setField(page, 'Finished weight', '700')
  const heads = Number(await page.locator('[data-figure="sheet.forecast"]').getAttribute('data-value'))
  await setField(page, 'Finished weight', (heads - plan.overGr).toFixed(1))
}

/** With the lots that are used up: the page of a part shows them, and a job that names one. */
async function wholeShelf(book: AppRepository) {
  const { parts } = await loadShelf(book)
  const lots = await Promise.all([...parts.keys()].map((part) => book.lotsOfPart(part)))
  return loadShelf(book, lots.flat())
}

/** Every page of the job against the record, and nothing written beside the marks. */
async function look(page: Page, job: string): Promise<void> {
  const book = await restoredBook(page)
  const [shelf, open] = [await wholeShelf(book), await openJob(book, job)]
  if (open === null) throw new Error('the job is not in the backup')
  const at = page.url()
  const draft = draftSheet(open.job, shelf, open.clientFact)
  const past = open.job.of === null ? null : await openBuild(book, open.job.of.asBuilt)
  const compared = past === null ? [] : thenAndNowFigures(past.sheet, past.arrows, draft)
  const last = open.sheets.get(open.job.frozen.at(-1)?.sheet ?? '')
  const expected = new Map([
    [`job/${job}/call`, callFigures(implications(open.job.answers, shelf.rules, shelf, DAY))],
    [
      `job/${job}/sheet`,
      new Map([...sheetPageFigures(draft, open.job.bench), ...(last ? wasFigures(last) : []), ...compared]),
    ],
  ])
  const frozen = open.sheets.get(open.job.bench?.sheet ?? '')
  if (open.job.bench !== null && frozen !== undefined) {
    expected.set(`job/${job}/bench`, benchFigures(open.job.bench, frozen, shelf.lotViews))
    expected.set(`job/${job}/send`, sendFigures(open.job.bench, frozen))
  }
  for (const { id, body } of shelf.parts.values()) {
    const lots = lotsOf(shelf, id).map((lot) => [lot.body, shelf.lotViews.get(lot.id)] as const)
    if (lots.length > 0) expected.set(`parts/${body.kind}/${id}`, lotFigures(body, lots))
  }
  for (const { hash } of readable(await book.versionsOf('asBuilt', job))) {
    const build = await openBuild(book, hash)
    if (build !== null) expected.set(`book/${hash}`, buildFigures(build.sheet, build.arrows))
  }
  for (const [place, figures] of expected) {
    await page.goto(`./#/${place}`)
    await expect(page.locator('h1').first()).toBeVisible()
    await expect(async () => expect(await wrongFigures(page, figures), place).toEqual([])).toPass()
    if (place.endsWith('/sheet'))
      expect(await unlikeFirstPrinciples(page, draft.bow.peakDrawWeightLb), 'from first principles').toEqual([])
    expect(await digitsOutsideMarks(page), place).toEqual([])
  }
  for (const place of ['jobs', 'book', 'parts', 'shop']) {
    await page.goto(`./#/${place}`)
    await expect(page.locator('h1').first()).toBeVisible()
    expect(await digitsOutsideMarks(page), place).toEqual([])
  }
  book.close()
  await page.goto(at)
}

/** Where an empty entry goes on instead of asking. */
const STAYS = ['Trim the post', 'Break the edge', 'Bond']

/** Walks the bench with slips, second thoughts, reloads and scrap. */
async function build(page: Page, job: string, plan: DicedOrder, chance: Dice): Promise<void> {
  const hand = handOf(plan, chance)
  let scrapped = false
  for (let i = 0; i < 300; i++) {
    const step = (await page.locator('h1').first().textContent()) ?? ''
    if (step === 'Every step is done') return
    if (step === 'Cure') await page.clock.runFor('48:00:00')
    const input = page.locator('input[name=reading]')
    const [reloads, slips, scraps] = [chance.next() < 0.05, chance.next() < 0.05, chance.next() < 0.3]
    if (reloads) {
      await page.reload()
      await page.goto(`./#/job/${job}/bench`)
      await expect(page.locator('h1').first()).toHaveText(step)
    } else if ((await input.count()) > 0 && !STAYS.includes(step) && slips) {
      await input.fill(oneOf(chance, 'abc', '', '-4', '3 ft', '9999'))
      await input.press('Enter')
      await expect(page.locator('#bench-answer')).not.toBeEmpty()
      await input.fill('')
    } else if (step === 'Weigh the cut shaft' && !scrapped && plan.arrows > 1 && scraps) {
      scrapped = true
      await page.getByText(/^Everything read of no\./).click()
      await page.getByRole('button', { name: /^Scrap no\./ }).click()
      await page.getByRole('dialog').getByLabel('Cause').fill('cracked at the nock end')
      await page
        .getByRole('dialog')
        .getByRole('button', { name: oneOf(chance, 'Scrap it, build another', 'Scrap it'), exact: true })
        .click()
      await expect(page.getByRole('dialog')).toBeHidden()
      await page.goto(`./#/job/${job}/bench`)
    }
    const expected = page.locator('[data-figure$=".expected"]')
    const finished = (await expected.count()) > 0 ? Number(await expected.getAttribute('data-value')).toFixed(1) : ''
    const read: BenchHand['read'] = (label, no) =>
      label.toLowerCase().startsWith('finished weight') ? finished : hand.read(label, no)
    await doNext(page, { ...hand, read })
  }
  throw new Error('the route did not come to its end')
}

async function decideAll(page: Page): Promise<void> {
  const undecided = page.getByRole('button', { name: 'use as is' })
  for (let left = await undecided.count(); left > 0; left -= 1) {
    await page.getByLabel('Why, and what was done').first().fill('within what the client agreed to')
    await undecided.first().click()
    await expect(undecided).toHaveCount(left - 1)
  }
}

/** @returns whether the set was signed off; a refusal names what is missing, and not every builder mends it */
async function signOff(page: Page, job: string, chance: Dice): Promise<boolean> {
  await page.goto(`./#/job/${job}/send`)
  await page.getByRole('button', { name: 'Sign off the set' }).click()
  const signed = page.getByText(/^Signed off as version 1/)
  const refused = page.getByText('Not signed off yet:')
  await expect(signed.or(refused)).toBeVisible()
  if (await refused.isHidden()) return true
  const why = page.getByRole('alert').getByText(/not decided yet|do not add up|is missing/)
  await expect(why.first(), 'the refusal names what is missing').toBeVisible()
  if (chance.next() < 0.3) return false
  await decideAll(page)
  await page.getByRole('button', { name: 'Sign off the set' }).click()
  await expect(signed.or(refused)).toBeVisible()
  return refused.isHidden()
}

describe('a walk through the job from the empty shop', () => {
  for (const seed of process.env['TEST_SIZE'] === 'release' ? [1, 4, 5, 7, 11] : [1, 4]) {
    it(`ends in the box or at a refusal in words, seed ${seed}`, async ({ page }) => {
      const chance = dice(seed * 7919)
      const plan = dicedOrder(chance)
      await page.clock.install({ time: new Date(`${DAY}T09:00:00Z`) })
      await page.goto('./')
      await page.getByRole('button', { name: 'Open my shop' }).click()
      await page.getByRole('button', { name: /call/i }).first().click()
      await page.waitForURL(/#\/job\/.+/)
      const job = jobOf(page)
      await onCall(page, job, plan)
      await onSheet(page, job, plan, chance)
      await look(page, job)
      await page.goto(`./#/job/${job}/sheet`)
      await page.getByRole('button', { name: 'Freeze version 1' }).click()
      const answer = page.getByRole('status').filter({ hasText: /rozen/ })
      await expect(answer.first()).toContainText(/Frozen as version 1\.|Not frozen/)
      if ((await answer.filter({ hasText: 'Not frozen' }).count()) > 0) return
      await page.getByRole('button', { name: 'Start the set' }).click()
      await expect(page.getByRole('heading', { name: 'Receive' })).toBeVisible()
      await build(page, job, plan, chance)
      const isSigned = await signOff(page, job, chance)
      await look(page, job)
      if (!isSigned) return
      await page.clock.setSystemTime(new Date('2029-03-02T09:00:00Z'))
      await page.goto('./#/book')
      await page
        .getByRole('link', { name: /^Build this again/ })
        .first()
        .click()
      await page.getByRole('button', { name: 'Open the rebuild sheet' }).click()
      await expect(page.getByRole('heading', { name: 'Then and now' })).toBeVisible()
      expect(jobOf(page)).not.toBe(job)
      await look(page, jobOf(page))
    })
  }
})
