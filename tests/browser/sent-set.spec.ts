// long because one set that was sent is looked at from every side
/** A set that is signed off and sent: its papers, then what comes after. One book, one page, in this order. */
import { accepted, building } from '@/domain/bench/bench'
import { DATA_POINT_NAMES, DATA_POINTS } from '@/domain/bench/data-points'
import { codeOf } from '@/domain/records/code'
import { pointWord } from '@/ui/words/bench-words'
import { LABEL_STOCKS } from '@/ui/print/label-stock'
import { expectAccessible } from './support/accessible'
import { digitsOutsideMarks } from './support/digits-outside-marks'
import { describe, expect } from './support/fixtures'
import { clipped, codesOn, expectWhole, paper, tooLow } from './support/paper'
import { it, withOrder } from './support/sent-book'

const SIZE = { A4: [210, 297], Letter: [215.9, 279.4] } as const
const SHEET_OF = { a4: SIZE.A4, letter: SIZE.Letter } as const
const SCANNED_AT = 150 // dpi; an office printer has 300 and more
const MOST = 12 // arrows that an order may have
const LONG_NAME = 'Wilhelmina-Charlotte Featherstonehaugh-Oyelaran von Tolliver'
const LABEL = { dpi: SCANNED_AT, rimMm: 0 }

const bare = (text: string) => text.replaceAll(/\s+/g, '')

describe.configure({ mode: 'default' })

describe('the papers of a sent set', () => {
  it('fit every label stock, and a scanner reads each code back', async ({ page, book }) => {
    const { job, asBuilt } = book.order
    await page.goto(`./#/print/labels/${job.id}`)
    const codes = [codeOf(asBuilt), ...building(job.bench!).map((arrow) => arrow.code)]
    for (const stock of LABEL_STOCKS) {
      await page.getByRole('radio', { name: stock.name, exact: true }).check()
      const size = stock.paper === null ? ([stock.widthMm, stock.heightMm] as const) : SHEET_OF[stock.paper]
      const sheets = await expectWhole(page, `labels-${stock.key}`, size, LABEL)
      const read = (await Promise.all(sheets.map(({ picture }) => codesOn(picture)))).flat()
      expect(read.toSorted(), stock.name).toEqual(codes.toSorted())
    }
    await page.getByRole('radio', { name: 'Test print on plain paper' }).check()
    await expectWhole(page, 'labels-test', [LABEL_STOCKS.at(-1)!.widthMm, LABEL_STOCKS.at(-1)!.heightMm], LABEL)
    expect(await digitsOutsideMarks(page)).toEqual([])
  })

  it('are whole on A4 and on Letter, each sheet named by record, version and hash', async ({ page, book }) => {
    const { job, asBuilt } = book.order
    const sheet = job.bench!.sheet
    const PAPERS = [
      [`certificate/${job.id}`, asBuilt, 1 + building(job.bench!).length],
      [`client-sheet/${job.id}`, asBuilt, 1],
      [`guide/${job.id}`, asBuilt, 1],
      [`packing/${job.id}`, asBuilt, 1],
      [`build-sheet/${sheet}`, sheet, 1],
      [`route-card/${sheet}`, sheet, 3],
      [`summary/${job.id}`, asBuilt, 1],
      [`measuring/${job.id}`, asBuilt, 1],
    ] as const
    for (const [what, hash, pages] of PAPERS) {
      await page.goto(`./#/print/${what}`)
      for (const [name, size] of Object.entries(SIZE)) {
        await page.getByRole('radio', { name, exact: true }).check()
        const sheets = await expectWhole(page, `${what.split('/')[0]!}-${name}`, size)
        expect(sheets, `${what} on ${name}`).toHaveLength(pages)
        for (const [at, { text }] of sheets.entries())
          for (const part of [codeOf(hash), hash.slice(0, 12), `${at + 1}of${pages}`])
            expect(bare(text), `${what} on ${name}, page ${at + 1}`).toContain(part)
      }
      expect(await tooLow(page), `${what}: too low to write in`).toEqual([])
      expect(await digitsOutsideMarks(page), what).toEqual([])
    }
  })

  it('hold the largest set of a client with a long name, the same from a dark screen', async ({ browser, address }) => {
    const page = await browser.newPage({ baseURL: address })
    const { job } = await withOrder(page, MOST, LONG_NAME)
    const { sheet } = job.bench!
    await page.goto(`./#/print/labels/${job.id}`)
    for (const stock of LABEL_STOCKS) {
      await page.getByRole('radio', { name: stock.name, exact: true }).check()
      expect(await clipped(page), stock.name).toEqual([])
    }
    for (const what of [`build-sheet/${sheet}`, `route-card/${sheet}`, `packing/${job.id}`, `client-sheet/${job.id}`]) {
      await page.goto(`./#/print/${what}`)
      for (const [name, size] of Object.entries(SIZE)) {
        await page.getByRole('radio', { name, exact: true }).check()
        const light = await expectWhole(page, `most-${what.split('/')[0]!}-${name}`, size)
        if (name !== 'A4') continue
        await page.emulateMedia({ colorScheme: 'dark' })
        const dark = await paper(page, `most-${what.split('/')[0]!}-${name}-dark`)
        await page.emulateMedia({ colorScheme: null })
        const same = light.map(({ picture }, at) => Buffer.from(picture.dots).equals(dark[at]!.picture.dots))
        expect(same, `${what} on ${name}: the same from a dark screen`).toEqual(light.map(() => true))
      }
      expect(await tooLow(page), `${what}: too low to write in`).toEqual([])
    }
    await page.close()
  })

  it('say every data point of every arrow to a reader who has the paper alone', async ({ page, book }) => {
    const { job } = book.order
    await page.goto(`./#/print/certificate/${job.id}`)
    await expect(page.locator('main > section')).toHaveCount(1 + building(job.bench!).length)
    for (const [at, arrow] of building(job.bench!).entries()) {
      const rows = await page
        .locator('main > section')
        .nth(at + 1)
        .getByRole('row')
        .allTextContents()
      for (const point of DATA_POINT_NAMES) {
        const read = accepted(arrow, point)?.reading.value.toFixed(DATA_POINTS[point].decimals)
        const row = bare(pointWord(point)) + (read ?? 'nottaken')
        expect(
          rows.filter((each) => bare(each).startsWith(row)),
          `no. ${arrow.no}, ${point}`,
        ).toHaveLength(1)
      }
    }
  })
})

describe('after a set has left', () => {
  it('an arrow is repaired, weighed again and retired, each with its reason, and the record goes on', async ({
    page,
    book,
  }) => {
    const { job } = book.order
    const [one, two, three] = building(job.bench!)
    await page.goto(`./#/job/${job.id}/send`)
    const after = page.getByRole('region', { name: 'Afterwards' })

    await after.getByRole('button', { name: 'Repair no. 2' }).click()
    const dialog = page.getByRole('dialog')
    await dialog.getByRole('button', { name: 'Begin the repair' }).click()
    await expect(dialog.getByRole('status')).toContainText('Not begun.')
    await dialog.getByRole('radio', { name: 'Nock' }).check()
    await dialog.getByRole('radio', { name: 'Pin nock 8' }).check()
    await dialog.getByLabel('Reason').fill('cracked on a miss')
    await dialog.getByRole('button', { name: 'Begin the repair' }).click()
    await expect(dialog.getByRole('status')).toContainText('Weigh it first as it came back')
    await dialog.getByLabel('Weight as it came back').fill('804.8')
    await dialog.getByRole('button', { name: 'Begin the repair' }).click()
    await expect(dialog).toBeHidden()
    const repair = page.getByRole('region', { name: 'Repair of no. 2: nock' })
    for (const done of ['It is sound', 'It is off, and clean', 'It is on'])
      await repair.getByRole('button', { name: done }).click()
    await repair.getByRole('button', { name: 'Close the repair' }).click()
    await expect(repair.getByText('Not closed. Weigh the repaired arrow')).toBeVisible()
    // Grams for grains is asked about as at the bench.
    await repair.getByLabel('Finished weight now').fill('52.67')
    await repair.getByRole('button', { name: 'Close the repair' }).click()
    await expect(repair.getByText('52.67 looks like grams')).toBeVisible()
    await repair.getByLabel('Finished weight now').fill('812.9')
    await repair.getByRole('button', { name: 'Close the repair' }).click()
    await expect(repair).toBeHidden()
    const row = (no: number) => after.getByRole('row').filter({ hasText: `no. ${no},` })
    await expect(row(2)).toContainText(/nock replaced .*: cracked on a miss/)
    await expect(page.getByText(/^Signed off as version 2/)).toBeVisible()

    await after.getByRole('button', { name: 'Weighed again no. 3' }).click()
    await dialog.getByLabel('Weight now').fill('814.2')
    await dialog.getByRole('button', { name: 'Keep the weight' }).click()
    await expect(row(3).locator('[data-read="after.3.now"]')).toHaveText('814.2')

    await after.getByRole('button', { name: 'Retire no. 1' }).click()
    await dialog.getByRole('button', { name: 'Retire no. 1' }).click()
    await expect(dialog.getByRole('status')).toContainText('Not retired')
    await dialog.getByLabel('Cause').fill('cracked behind the insert')
    await dialog.getByLabel('Shots').fill('140')
    await dialog.getByRole('button', { name: 'Retire no. 1' }).click()
    await expect(row(1)).toContainText('cracked behind the insert, after 140 shots')
    await expect(row(1).getByRole('button')).toHaveCount(0)
    expect([one!.no, two!.no, three!.no]).toEqual([1, 2, 3])
    expect(await digitsOutsideMarks(page)).toEqual([])
    await expectAccessible(page)

    await page.getByRole('link', { name: 'Open it in the book' }).click()
    const changed = page.getByRole('region', { name: 'What changed' })
    await expect(changed.getByRole('row').filter({ hasText: 'No. 2, nock fitted' })).toContainText('Pin nock 8')
    await expect(changed.getByText(/^as built 2, .*: cracked on a miss$/)).toBeVisible()
    const beside = page.getByRole('region', { name: 'Plan beside as-built' })
    await expect(beside.locator('[data-read="book.built.2.finishedWeight"]')).toHaveText('812.9')
    await changed.getByRole('radio', { name: 'as built 1' }).last().check()
    await expect(changed.getByText('Nothing differs between these two.')).toBeVisible()
    expect(await digitsOutsideMarks(page)).toEqual([])

    // At the reorder: who is left, what they weigh, how many are missing.
    await page.getByRole('link', { name: 'Build this again' }).click()
    await page.getByRole('button', { name: 'Match the survivors, 813.6 gr' }).click()
    await page.getByRole('button', { name: 'Build 1, to make the set whole' }).click()
    await expect(page.getByLabel('Finished weight to match')).toHaveValue('813.6')
    await expect(page.getByText(/in use; nock replaced .*: cracked on a miss/)).toBeVisible()
    await expect(page.getByLabel('Arrows this time')).toHaveValue('1')
    await expect(page.getByText('cracked behind the insert, after 140 shots')).toBeVisible()
    expect(await digitsOutsideMarks(page)).toEqual([])
  })

  it('a refletch is begun, reloaded in the middle, and closed once its glue has had its time', async ({
    page,
    book,
  }) => {
    const { job } = book.order
    await page.goto(`./#/job/${job.id}/send`)
    const after = page.getByRole('region', { name: 'Afterwards' })
    const signedOff = page.getByText(/^Signed off as version/)
    const version = Number(/version (\d+)/.exec((await signedOff.textContent())!)![1])
    await after.getByRole('button', { name: 'Refletch no. 3' }).click()
    const dialog = page.getByRole('dialog')
    await dialog.getByLabel('Reason').fill('torn on the butt')
    await dialog.getByLabel('Weight as it came back').fill('799.4')
    await dialog.getByRole('button', { name: 'Begin the refletch' }).click()
    await expect(dialog).toBeHidden()
    const refletch = page.getByRole('region', { name: 'Refletch of no. 3' })
    const press = (name: string) => refletch.getByRole('button', { name }).click()
    await press('It is sound')
    await press('It is off, and clean')
    await expect(refletch.getByText(/Set the jig: .*, right, 2°, tail 1 in/)).toBeVisible()
    await press('Glued: start its time')
    await expect(refletch.getByText('Not begun: read the room first')).toBeVisible()
    const room = refletch.getByLabel('The room is at')
    await room.fill('2')
    await press('Glued: start its time')
    await expect(refletch.getByText(/^Not begun\. .*cold/)).toBeVisible()
    await room.fill('22')
    await press('Glued: start its time')
    const time = refletch.getByText(/vane glue, no\. 3: ready .*, at 22 °C/)
    await expect(time).toBeVisible()
    const due = await time.textContent()

    await page.reload()
    await expect(time).toHaveText(due!)
    await refletch.getByLabel('Finished weight now').fill('814.4')
    await press('Close the repair')
    await expect(refletch.getByText(/^Not closed\. The vane glue, no\. 3 is ready /)).toBeVisible()
    await refletch.getByText('Another time for the glue').click()
    await press('End the cure early')
    await expect(refletch.getByText('Not ended: say why.')).toBeVisible()
    expect(await digitsOutsideMarks(page)).toEqual([])
    await expectAccessible(page)
    // The next day.
    await page.clock.setSystemTime(new Date(Date.now() + 25 * 3_600_000))
    await page.reload()
    await expect(refletch.getByText('ready since')).toBeVisible()
    await refletch.getByLabel('Finished weight now').fill('814.4')
    await press('Close the repair')
    await expect(refletch).toBeHidden()
    const row = after.getByRole('row').filter({ hasText: 'no. 3,' })
    await expect(row).toContainText(/refletched .*: torn on the butt/)
    await expect(row.locator('[data-read="after.3.now"]')).toHaveText('814.4')
    await expect(signedOff).toContainText(`version ${version + 1}`)
    await page.goto(`./#/print/certificate/${job.id}`)
    await expect(
      page.getByText(
        /Refletched: torn on the butt\. Begun .* at 799\.4 gr\. vane glue, no\. 3 from .* at 22 °C\. 814\.4 gr after it/,
      ),
    ).toBeVisible()
  })

  it('a test kit goes out, comes back, and changes the spine on the sheet', async ({ page, book }) => {
    const { job } = book.order
    await page.goto(`./#/job/${job.id}/kit`)
    const send = page.getByRole('button', { name: 'Send the kit today' })
    await send.click()
    await expect(page.getByText('Not sent. A kit needs two shafts at least')).toBeVisible()
    // No lot of this shop was ever counted.
    await page.getByRole('button', { name: 'Propose a kit' }).click()
    await expect(page.getByText('Nothing to propose: no shaft that is counted free')).toBeVisible()
    await page.getByRole('checkbox', { name: 'Heron 175' }).check()
    await page.getByRole('checkbox', { name: 'Heron 200' }).check()
    // Built on the bench, the kit is a small set of its own, and does not leave before it is weighed.
    await page.getByRole('button', { name: 'Build the kit on the bench' }).click()
    const onBench = page.getByRole('region', { name: 'Test kit on the bench' })
    await expect(onBench.getByRole('row')).toHaveCount(3)
    await onBench.getByRole('button', { name: 'Send the built kit today' }).click()
    await expect(onBench.getByText('Not sent. No. 1 has no finished weight yet')).toBeVisible()
    await onBench.getByRole('link', { name: 'Go to its bench' }).click()
    await expect(page.getByRole('heading', { name: 'Receive' })).toBeVisible()
    // Nor is it signed off: each arrow is named with what it lacks.
    await page.goto(page.url().replace(/bench.*$/, 'send'))
    await page.getByRole('button', { name: 'Sign off the set' }).click()
    const lacks = page.getByRole('alert')
    for (const no of [1, 2]) {
      await expect(lacks).toContainText(`No. ${no}: the finished weight is missing.`)
      await expect(lacks).toContainText(`No. ${no}: the final inspection is not confirmed.`)
    }
    await page.goto(`./#/job/${job.id}/kit`)
    await page.getByRole('checkbox', { name: 'Heron 175' }).check()
    await page.getByRole('checkbox', { name: 'Heron 200' }).check()
    await page.getByLabel('Finished weight of this one').first().fill('836')
    await page.getByLabel('Finished weight of this one').first().press('Enter')
    await send.click()
    const bare = async (no: number, high: string, left: string) => {
      for (const [point, text] of [
        ['bareHighIn', high],
        ['bareLeftIn', left],
      ] as const) {
        const field = page.locator(`input[name="${point}.${no}"]`)
        await field.fill(text)
        await field.press('Enter')
      }
    }
    await bare(3, '0.5', '-0.5')
    await bare(4, '3', '4')
    await page.locator('input[name=markAtRestIn]').fill('26.9')
    await page.locator('input[name=markAtRestIn]').press('Enter')
    await expect(page.getByText('No. 3 hits nearest with its bare shaft')).toBeVisible()
    await page.getByRole('button', { name: 'Put its shaft on the sheet' }).click()
    await expect(page.getByText('Not decided')).toBeVisible()
    await page.getByRole('radio', { name: 'no. 3' }).check()
    await page.getByLabel('Why').fill('bare shaft nearest')
    await page.getByRole('button', { name: 'Put its shaft on the sheet' }).click()
    await expect(page.getByText(/This bow likes a column reserve above/)).toBeVisible()
    expect(await digitsOutsideMarks(page)).toEqual([])
    await expectAccessible(page)
    await page.getByRole('link', { name: 'Print the return form' }).click()
    await expect(page.getByRole('heading', { name: 'Test kit: please shoot and send back' })).toBeVisible()
    await expectWhole(page, 'kit', [210, 297])
    await page.goto(`./#/job/${job.id}/sheet`)
    await expect(page.getByText('Heron 175', { exact: true }).first()).toBeVisible()
    await expect(page.getByText('changed: was Heron 200, lot')).toBeVisible()
  })
})
