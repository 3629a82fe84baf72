import type { Page } from '@playwright/test'
import { describe, expect, it } from './support/fixtures'
import { digitsOutsideMarks } from './support/digits-outside-marks'
import { addFromShelf, jobOf, setField } from './support/plan-arrow'
import { answer, goTo, newCall } from './support/take-call'

const PARTS = [
  ['Shaft', 'Heron 200'],
  ['Nock', 'Clip 11'],
  ['Insert', 'Long post 158'],
  ['Collar', 'Ring 15'],
  ['Head', 'Two-blade 250'],
  ['Vanes', 'Broad vane 2.6'],
  ['Glue', 'Vane glue'],
  ['Glue', 'Slow epoxy'],
] as const

/** @param expected what the build sheet must say */
async function freezeAndPrint(page: Page, expected: RegExp): Promise<void> {
  await page.getByRole('button', { name: 'Freeze version 1' }).click()
  await expect(page.getByText('Frozen as version 1.')).toBeVisible()
  for (const [link, words] of [
    ['Print the route card', /Receive/],
    ['Print the client’s sheet', /Your arrows/],
    ['Print the build sheet', expected],
  ] as const) {
    await page.getByRole('link', { name: link }).click()
    await expect(page.locator('main section[aria-label^=Page]').first()).toBeVisible()
    await expect(page.getByText(words).first()).toBeVisible()
    expect(await digitsOutsideMarks(page)).toEqual([])
    await page.goBack()
    await expect(page.getByRole('link', { name: link })).toBeVisible()
  }
}

describe('the sheet', () => {
  it('finds an arrow for an empty sheet, takes it, freezes and prints it; absurd wishes get words', async ({
    page,
  }) => {
    await page.goto('./')
    await page.getByRole('button', { name: 'Look around the demo shop' }).click()
    await page.getByRole('button', { name: /call/i }).first().click()
    await page.waitForURL(/#\/job\/.+/)
    const job = jobOf(page)
    await page.goto(`./#/job/${job}/call/bow`)
    await setField(page, 'Peak draw weight', '72')
    await page.goto(`./#/job/${job}/sheet`)
    await page.getByRole('button', { name: 'Find parts' }).click()
    await page.getByRole('button', { name: 'Search the shelf' }).click()
    await expect(page.getByText(/No finished weight to look for/)).toBeVisible()
    await setField(page, 'Finished weight', '815')
    const wished = page.getByLabel('Weight wished', { exact: true })
    await wished.fill('0')
    await page.getByRole('button', { name: 'Search the shelf' }).click()
    await expect(page.getByText(/a search takes 50/)).toBeVisible()
    await wished.fill('815')
    await page.getByRole('button', { name: 'Search the shelf' }).click()
    await expect(page.getByText(/found among/)).toBeVisible({ timeout: 120_000 })
    const finished = page.locator('[data-figure="find.1.finished"]')
    await expect(finished).toHaveAttribute('data-value', /^81[45]/)
    expect(await digitsOutsideMarks(page)).toEqual([])
    const foc = await page.locator('[data-figure="find.1.foc"]').textContent()
    await page.getByRole('button', { name: /^Take it.*Found 1/ }).click()
    await expect(page.locator('[data-figure="sheet.foc"]')).toHaveText(foc!)
    await freezeAndPrint(page, /Heron|Plover/)
  })

  it('is planned from nothing by hand, and from what the call ended in, each frozen and printed three ways', async ({
    page,
  }) => {
    await page.goto('./')
    await page.getByRole('button', { name: 'Look around the demo shop' }).click()
    await page.getByRole('button', { name: 'New call' }).click({ timeout: 120_000 }) // filling the shop, on a busy machine
    await page.waitForURL(/#\/job\/.+/)
    await page.goto(`./#/job/${jobOf(page)}/sheet`)
    for (const [kind, name] of PARTS) await addFromShelf(page, kind, name)
    await setField(page, 'C2C', '28.5')
    await setField(page, 'Finished weight', '795')
    await freezeAndPrint(page, /Heron 200/)

    await page.goto('./#/jobs')
    const job = await newCall(page)
    await answer(page, 'quarry', 'moose')
    await goTo(page, job, 'bow')
    await answer(page, 'peakDrawWeightLb', '72')
    await answer(page, 'drawLengthIn', '28.5')
    await goTo(page, job, 'wishes')
    await answer(page, 'wishWeightGr', '795')
    await answer(page, 'headWeightGr', '250')
    await answer(page, 'quantity', '3')
    await goTo(page, job, 'read-back')
    await page.getByRole('button', { name: 'Agreed, plan the arrow' }).click()
    await expect(page.getByLabel('Finished weight', { exact: true })).toHaveValue('795')
    await expect(page.getByLabel('Arrows in the set', { exact: true })).toHaveValue('3')
    await expect(page.getByLabel('C2C', { exact: true })).not.toHaveValue('')
    // What the call has settled is not asked again: only what is still open is added.
    const heads = await page.locator('[data-line]').filter({ hasText: 'Two-blade 250' }).count()
    for (const [kind, name] of PARTS) if (kind !== 'Head' || heads === 0) await addFromShelf(page, kind, name)
    await freezeAndPrint(page, /moose/)
  })

  it('says what brings a reserve back into its band, and the cut it names does so', async ({ page }) => {
    await page.goto('./')
    await page.getByRole('button', { name: 'Look around the demo shop' }).click()
    await page.getByRole('link', { name: /Achterberg/ }).click({ timeout: 120_000 }) // filling the shop, on a busy machine
    await page.waitForURL(/#\/job\/.+/)
    const job = jobOf(page)
    await goTo(page, job, 'bow')
    await answer(page, 'peakDrawWeightLb', '125')
    await page.goto(`./#/job/${job}/sheet`)
    const soft = page.locator('[data-finding="reserve-below-band"]')
    await expect(soft).toBeVisible()
    const ways = page.getByRole('region', { name: /into its band/ })
    await expect(ways.locator('[data-figure="sheet.intoBand.spine"]')).toBeVisible()
    const cut = ways.locator('[data-figure="sheet.intoBand.c2c"]')
    const [text, value] = [await cut.textContent(), Number(await cut.getAttribute('data-value'))]
    expect(await digitsOutsideMarks(page)).toEqual([])
    await setField(page, 'C2C', String(value + 0.05))
    await expect(page.locator('[data-figure="sheet.offNock"]')).toHaveAttribute(
      'data-value',
      String((32 - value - 0.05) / 2),
    )
    await expect(soft).toBeVisible()
    await expect(cut).toHaveText(text!)
    await setField(page, 'C2C', text!)
    await expect(soft).toHaveCount(0)
    await expect(ways).toHaveCount(0)
  })

  it('shows the straightest window of a shaft that was spun, and follows the C2C', async ({ page }) => {
    await page.goto('./')
    await page.getByRole('button', { name: 'Look around the demo shop' }).click()
    await page.getByRole('link', { name: /Oyelaran/ }).click({ timeout: 120_000 }) // filling the shop, on a busy machine
    await page.waitForURL(/#\/job\/.+/)
    const job = jobOf(page)
    await page.goto(`./#/job/${job}/sheet`)
    const half = page.locator('[data-figure="sheet.offNock"]')
    await expect(half).toBeVisible()
    const c2c = Number(await page.getByLabel('C2C', { exact: true }).inputValue())
    const spare = 2 * Number(await half.getAttribute('data-value'))
    await setField(page, 'Arrows in the set', '1')
    await setField(page, 'Spares built with it', '0')
    await page.getByLabel('Reason for the next version').fill('one to try')
    await page.getByRole('button', { name: /^Freeze version/ }).click()
    await expect(page.getByText(/^Frozen as version/)).toBeVisible()
    await page.getByRole('button', { name: 'Start the set' }).click()
    const weight = page.locator('form').getByLabel('Raw weight')
    await weight.fill('377')
    await weight.press('Enter')
    const runOut = page.locator('input[name=runOut]')
    // The nock end is bent.
    for (const tir of ['0.009', '0.007', '0.003', '0.001', '0.001']) {
      await runOut.fill(tir)
      await page.getByRole('button', { name: '90°', exact: true }).click()
      await expect(runOut).toHaveValue('')
    }
    await page.goto(`./#/job/${job}/sheet`)
    const off = page.locator('[data-figure="sheet.window.1.offNock"]')
    await expect(off).toBeVisible()
    const number = async (name: string) =>
      Number(await page.locator(`[data-figure="sheet.window.1.${name}"]`).getAttribute('data-value'))
    expect((await number('offNock')) + (await number('offPoint'))).toBeCloseTo(spare, 6)
    expect(await number('offNock')).toBeGreaterThan(await number('offPoint'))
    expect(await number('runOut')).toBeLessThan(await number('equal'))
    expect(await digitsOutsideMarks(page)).toEqual([])
    const before = await off.getAttribute('data-value')
    await setField(page, 'C2C', String(c2c + 0.5))
    await expect(off).not.toHaveAttribute('data-value', before!)
    expect((await number('offNock')) + (await number('offPoint'))).toBeCloseTo(spare - 0.5, 6)
  })

  it('has its lines replaced, counted and put in order, by hand and by keys', async ({ page }) => {
    await page.goto('./')
    await page.getByRole('button', { name: 'Look around the demo shop' }).click()
    await page.getByRole('link', { name: /Achterberg/ }).click({ timeout: 120_000 }) // filling the shop, on a busy machine
    await page.goto(page.url().replace(/\/?$/, '/sheet'))
    const names = page.locator('[data-line] > button')
    const first = ['Head', 'Collar', 'Insert', 'Shaft']
    await expect(names).toHaveText([...first, 'Vanes', 'Nock', 'Glue', 'Glue'])

    await names.nth(1).press('Alt+ArrowUp')
    await expect(names).toHaveText(['Collar', 'Head', 'Insert', 'Shaft', 'Vanes', 'Nock', 'Glue', 'Glue'])
    await expect(page.getByText('Now line 1 of 8.')).toBeAttached()
    await expect(names.first()).toBeFocused()
    await names.first().press('Alt+ArrowDown')
    await expect(names.nth(1)).toBeFocused()
    const [from, to] = [(await names.nth(3).boundingBox())!, (await names.first().boundingBox())!]
    await page.mouse.move(from.x + 10, from.y + 10)
    await page.mouse.down()
    await page.mouse.move(to.x + 10, to.y + 40, { steps: 4 })
    await page.mouse.move(to.x + 10, to.y + 10, { steps: 4 })
    await page.mouse.up()
    await expect(names).toHaveText(['Shaft', 'Head', 'Collar', 'Insert', 'Vanes', 'Nock', 'Glue', 'Glue'])
    await page.reload()
    await expect(names.first()).toHaveText('Shaft')
    await page.getByRole('button', { name: 'Order by position' }).click()
    await expect(names.first()).toHaveText('Head')

    const dialog = page.getByRole('dialog')
    await page.getByRole('button', { name: 'Change Broad vane 2.6' }).click()
    await dialog.getByLabel('Pieces on one arrow').fill('4')
    await dialog.getByLabel('Pieces on one arrow').press('Enter')
    await dialog.getByRole('button', { name: 'Move up' }).click()
    await expect(dialog.getByText('Now line 4 of 8.')).toBeVisible()
    await dialog.getByRole('button', { name: 'Done' }).click()
    await expect(page.getByText('4 × Broad vane 2.6')).toBeVisible()
    await page.getByRole('button', { name: 'Change Two-blade 300' }).click()
    await dialog.getByRole('button', { name: 'Replace by another part' }).click()
    await dialog
      .getByRole('button', { name: /^Two-blade 250, lot/ })
      .first()
      .click()
    await expect(page.getByRole('button', { name: 'Change Two-blade 250' })).toBeVisible()
    await expect(names).toHaveCount(8)

    // What is otherwise than in version 1 is marked: lines, fields, figures.
    await expect(page.getByText('changed: was 3 × Broad vane 2.6, lot V-49 as frozen')).toBeVisible()
    await expect(page.getByText(/^changed: was Two-blade 300, lot/)).toBeVisible()
    await expect(page.locator('[data-figure="sheet.plan.c2cIn.was"]')).toHaveCount(0)
    const [finished, foc] = ['finished', 'foc'].map((figure) => page.locator(`[data-figure="sheet.${figure}"]`))
    const frozenFoc = page.locator('[data-figure="sheet.foc.was"]')
    await expect(frozenFoc).toHaveText('28.1')
    await expect(foc!).not.toHaveText('28.1')
    await setField(page, 'C2C', '28.5')
    await expect(page.locator('[data-figure="sheet.plan.c2cIn.was"]')).toHaveText('28.00')

    await expect(finished!).toHaveAttribute('data-unit', 'gr')
    await page.getByRole('button', { name: 'Metric units' }).click()
    await expect(finished!).toHaveAttribute('data-unit', 'g')
    await page.getByRole('button', { name: 'Finished, once trimmed' }).click()
    await expect(dialog).toContainText(/\d gr/)
    await expect(dialog).toContainText(/\d g(?!r)/)
    await dialog.getByRole('button', { name: 'Close' }).click()
    expect(await digitsOutsideMarks(page)).toEqual([])
    await page.getByRole('button', { name: 'Trade units' }).click()
    await expect(finished!).toHaveAttribute('data-unit', 'gr')
    expect(await digitsOutsideMarks(page)).toEqual([])
  })
})
