// long because each thing that becomes of records needs a shop of its own to be told
/** What becomes of records as a person sees it: somebody is forgotten, two devices are brought together, a file is kept. */
import { IDBFactory, IDBKeyRange } from 'fake-indexeddb'
import type { Page } from '@playwright/test'
import { VIEW_RULES } from '@/domain/job/view-rules'
import { personalOf } from '@/domain/records/personal'
import { newEvent, newFact } from '@/domain/records/write'
import { openRepository } from '@/storage/open-repository'
import { backupOf, fileOf } from '@tests/storage/backup/backup-of'
import { countedIds, heldSurroundings } from '@tests/storage/fresh-shop'
import { demoSheet } from '@tests/support/demo-sheet'
import { hostileStrings } from '@tests/support/hostile-strings'
import { startedSet } from '@tests/support/started-set'
import type { StartedSet } from '@tests/support/started-set'
import { expectAccessible } from './support/accessible'
import { openBench } from './support/at-the-bench'
import { digitsOutsideMarks } from './support/digits-outside-marks'
import { describe, expect, it } from './support/fixtures'
import { withOrder } from './support/sent-book'

const PATIENT = { timeout: 120_000 }

async function addBackup(page: Page, buffer: Buffer<ArrayBuffer>) {
  await page.goto('./#/shop')
  await page.getByLabel('Add a backup').setInputFiles({ name: 'book.jsonl', mimeType: 'application/jsonl', buffer })
  await page.getByRole('button', { name: 'Add it' }).click(PATIENT)
  await expect(page.getByText('Added.')).toBeVisible(PATIENT)
}

describe('a client who was forgotten', () => {
  it('stands on no page, print, table or backup, not even when an older backup is added again', async ({ page }) => {
    const { job, asBuilt, repository } = await withOrder(page)
    const PERSON = /Maren|Tolliver|0155 ?0100/
    const sheet = job.frozen.at(-1)!.sheet
    const pages = [
      'jobs',
      'book',
      `job/${job.id}`,
      `job/${job.id}/call/client`,
      `job/${job.id}/call/read-back`,
      `job/${job.id}/send`,
      `book/${asBuilt}`,
      `book/${asBuilt}/again`,
      ...['certificate', 'client-sheet', 'guide', 'labels', 'packing', 'measuring', 'summary'].map(
        (print) => `print/${print}/${job.id}`,
      ),
      ...['build-sheet', 'route-card'].map((print) => `print/${print}/${sheet}`),
    ]
    const seen = (on = page) =>
      on.evaluate(() =>
        [
          document.title,
          document.body.innerText,
          ...[...document.querySelectorAll('input, textarea')].map((field) => (field as HTMLInputElement).value),
        ].join('\n'),
      )
    /** The pages that show the person; each is looked at once it shows its job. */
    const showing = async () => {
      const found: string[] = []
      for (const address of pages) {
        await page.goto(`./#/${address}`)
        await expect.poll(() => seen(), address).toContain(job.code)
        if (PERSON.test(await seen())) found.push(address)
      }
      return found
    }
    const before = await showing()
    expect(before.length, before.join(' ')).toBeGreaterThan(7)
    const old = Buffer.from(await backupOf(repository))
    expect(old.toString()).toMatch(PERSON)

    const other = await page.context().newPage()
    await other.goto(`${new URL(page.url()).origin}/#/job/${job.id}/call/read-back`)
    await expect.poll(() => seen(other)).toMatch(PERSON)
    await other.goto(`${new URL(page.url()).origin}/#/job/${job.id}/call/client`)
    const name = other.getByLabel('Name', { exact: true })
    await expect(name).toHaveValue(/Maren/)
    await name.fill('Maren, half typed')
    await name.press('Tab')
    await expect(other.getByRole('heading', { level: 1 })).toContainText('half typed')

    await page.goto('./#/shop')
    await page.getByLabel('Client to forget').fill('maren')
    await page.getByLabel('Client to forget').press('Enter')
    await page.getByRole('button', { name: 'Forget Maren, half typed' }).click()
    const dialog = page.getByRole('dialog')
    await dialog.getByLabel('Reason').fill('asked by the client')
    await dialog.getByRole('button', { name: 'Forget for good' }).click()
    await expect(page.getByText('Forgotten. Make a new backup now')).toBeVisible()
    // Neither the page that was open elsewhere, nor what its fields would take back, nor what lies behind it.
    const shows = () => seen(other)
    await expect.poll(shows).not.toMatch(PERSON)
    expect(await shows()).toContain(job.code)
    for (const field of await other.getByRole('textbox').all()) {
      await field.focus()
      await other.keyboard.press('Control+Z')
      expect(await shows()).not.toMatch(PERSON)
    }
    await other.goBack()
    await expect.poll(shows).toContain(job.code)
    expect(await shows()).not.toMatch(PERSON)
    await other.close()
    await addBackup(page, old)

    expect(await showing()).toEqual([])
    await page.goto('./#/book')
    await page.getByLabel(/^Find by client/).fill('tolliver')
    await expect(page.getByText('Nothing found')).toBeVisible()
    await page.goto('./#/shop')
    for (const name of ['Back up now', 'Readings as a table', 'Builds as a table', 'Archive as one page']) {
      const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name }).click()])
      const text = (await (await download.createReadStream()).toArray()).join('')
      expect(text.length, name).toBeGreaterThan(100)
      expect(text, name).not.toMatch(PERSON)
    }
    await page.getByRole('button', { name: 'Check the whole book' }).click()
    await expect(page.getByText('Every one is whole.')).toBeVisible(PATIENT)
  })
})

/** The same book on another device: what is done there, and its backup. */
async function onAnotherDevice(
  set: StartedSet,
  seed: number,
  by: string,
  rawWeight: number,
  toleranceGr: number,
): Promise<Buffer<ArrayBuffer>> {
  const ids = countedIds(seed)
  const repository = await openRepository({
    name: 'grainwright-other',
    rules: VIEW_RULES,
    ids,
    surroundings: heldSurroundings().surroundings,
    engine: { indexedDB: new IDBFactory(), IDBKeyRange },
  })
  await repository.archive.stage(fileOf(Uint8Array.from(set.backup)))
  await repository.archive.addStaged()
  const said = { by, at: `2026-03-03T09:${seed % 60}:00.000Z` }
  const part = [...set.shelf.parts.values()].find(({ body }) => body.kind === 'shaft')!
  const reading = {
    point: 'rawWeight' as const,
    value: rawWeight,
    unit: 'gr' as const,
    raw: `${rawWeight}`,
    source: 'typed' as const,
    stable: true,
    attempt: 1,
    scale: 'Scale 1',
    takenAt: said.at,
  }
  const about = { job: set.job.id, arrow: set.job.bench!.arrows[0]!.id }
  await repository.commit({
    id: ids.id(),
    ...said,
    events: [newEvent('read', about, { step: 'receive', reading })],
    facts: [
      newFact(said, 'part', part.id, { ...part.body, toleranceGr }, { parents: [part.hash], reason: 'the new list' }),
    ],
  })
  return Buffer.from(await backupOf(repository))
}

describe('two devices brought together by their backups', () => {
  it('keep both readings and both versions in sight until a person chooses', async ({ page }) => {
    const set = await startedSet(2)
    const [here, there] = [
      await onAnotherDevice(set, 41, 'Ansa', 371.2, 1.25),
      await onAnotherDevice(set, 42, 'Eero', 369.8, 1.75),
    ]
    await openBench(page, { ...set, backup: here })
    await expect(page.getByRole('region', { name: 'Read on two devices' })).toBeHidden()
    await addBackup(page, there)
    await page.goto(`./#/job/${set.job.id}/bench/receive/1`)
    const apart = page.getByRole('region', { name: 'Read on two devices' })
    await expect(apart.getByRole('listitem')).toHaveText([/^371\.2 gr.*Ansa/, /^369\.8 gr.*Eero/])
    expect(await digitsOutsideMarks(page)).toEqual([])
    await expectAccessible(page)
    await apart.getByRole('button', { name: /^Keep this one by Eero/ }).click()
    await expect(apart).toBeHidden()

    const shaft = [...set.shelf.parts.values()].find(({ body }) => body.kind === 'shaft')!
    await page.goto(`./#/parts/shaft/${shaft.id}`)
    await expect(page.getByText('2 versions stand')).toBeVisible()
    const kept = page.getByRole('button', { name: /^Keep this one by Ansa/ })
    await expect(page.getByRole('listitem').filter({ has: kept })).toContainText('tolerance, gr: 1.25')
    expect(await digitsOutsideMarks(page)).toEqual([])
    await expectAccessible(page)
    await kept.click()
    await expect(page.getByText('2 versions stand')).toBeHidden()
    await page.reload()
    await expect(page.getByLabel('Maker’s tolerance, ±')).toHaveValue('1.25')
    await expect(page.getByText('2 versions stand')).toBeHidden()
  })
})

describe('a file chosen for backups', () => {
  it('holds the book at once, and again when the page is left', async ({ page }) => {
    // The browser asks for a file in a window of its own; a file of the page's origin stands in for it.
    await page.addInitScript(() => {
      const picker = async () => (await navigator.storage.getDirectory()).getFileHandle('kept.jsonl', { create: true })
      Object.assign(window, { showSaveFilePicker: picker })
    })
    const kept = () =>
      page.evaluate(async () => {
        const handle = await (await navigator.storage.getDirectory()).getFileHandle('kept.jsonl')
        return (await (await handle.getFile()).text()).split('\n')
      })
    await page.goto('./')
    await page.getByRole('button', { name: 'Open my shop' }).click()
    await page.getByRole('button', { name: 'New call' }).first().click()
    await expect(page).toHaveURL(/call/)
    await page.goto('./#/shop')
    await expect(page.getByText('There is no backup yet')).toBeVisible()
    await page.getByRole('button', { name: 'Choose a file for backups' }).click()
    await expect(page.getByText('Saved to the file:')).toBeVisible()
    await expect(page.getByText('There is no backup yet')).toBeHidden()
    await expect(page.getByText('complete', { exact: false }).first()).toBeVisible()
    const first = await kept()
    expect(first.at(-2)).toContain('"footer"')

    await page.goto('./#/jobs')
    await page.getByRole('button', { name: 'New call' }).first().click()
    await expect(page).toHaveURL(/call/)
    await page.evaluate(() => {
      Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true })
      document.dispatchEvent(new Event('visibilitychange'))
    })
    await expect.poll(async () => (await kept()).length).toBeGreaterThan(first.length)
    expect((await kept()).at(-2)).toContain('"footer"')
  })
})

const STRINGS = Number(process.env['HOSTILE_STRINGS'] ?? 300)

/** A book in which every text a person can give is hostile. */
async function hostileBook(strings: readonly string[]): Promise<Buffer<ArrayBuffer>> {
  const ids = countedIds(51)
  const repository = await openRepository({
    name: 'grainwright-hostile',
    rules: VIEW_RULES,
    ids,
    surroundings: heldSurroundings().surroundings,
    engine: { indexedDB: new IDBFactory(), IDBKeyRange },
  })
  const at = '2026-03-02T09:00:00.000Z'
  const { parts } = demoSheet({})
  for (const [n, text] of strings.entries()) {
    const said = { by: text, at }
    const [job, client, part, lot] = [ids.id(), ids.id(), ids.id(), ids.id()]
    const who = personalOf(ids.salt(), { name: text, phone: text, address: text, notes: text })
    const note = personalOf(ids.salt(), { text })
    const receipt = await repository.commit({
      id: ids.id(),
      ...said,
      facts: [
        newFact(said, 'client', client, { personal: who.hash, consent: true }, { reason: text }),
        newFact(said, 'part', part, { ...parts[n % parts.length]!.part, name: text }),
        newFact(said, 'lot', lot, {
          part,
          code: text,
          receivedOn: '2026-01-05',
          received: 3,
          hold: text,
          numbered: [],
        }),
      ],
      events: [
        newEvent('opened', { job }, { kind: 'order', of: null }),
        newEvent('clientSet', { job }, { client }),
        newEvent('answered', { job }, { question: 'quarry', answer: { value: text, how: 'told' } }),
        newEvent('answered', { job }, { question: 'bowName', answer: { value: text, how: 'told' } }),
        newEvent('noted', { job }, { step: text, note: note.hash }),
      ],
      personal: [who, note],
    })
    if (receipt.kind !== 'saved') throw new Error(receipt.detail)
  }
  const views = await repository.jobViews(STRINGS)
  expect(new Set(views.map(({ clientName }) => clientName)).size).toBe(new Set(strings).size)
  return Buffer.from(await backupOf(repository))
}

describe('hostile texts in every field', () => {
  it(`are shown and printed as they were typed, ${STRINGS} of them, and nothing of them runs`, async ({ page }) => {
    it.setTimeout(300_000 + STRINGS * 200) // a release run has seven times as many
    const strings = hostileStrings(STRINGS, 190)
    const backup = await hostileBook(strings)
    await page.addInitScript(() => {
      Object.assign(window, { ran: () => document.documentElement.setAttribute('data-ran', '') })
    })
    await page.goto('./')
    await page.getByRole('button', { name: 'Open my shop' }).click()
    await addBackup(page, backup)
    const isUnharmed = async (what: string) => {
      const harm = await page.evaluate(() => ({
        ran: document.documentElement.hasAttribute('data-ran'),
        foreign: document.querySelectorAll('main :is(script, iframe, img[src="x"], base, style, a[href^="javascript"])')
          .length,
      }))
      expect(harm, what).toEqual({ ran: false, foreign: 0 })
    }
    await page.goto('./#/jobs')
    const jobs = page.locator('main li a')
    await expect(jobs).toHaveCount(Math.min(200, STRINGS))
    const known = new Set(strings.map((text) => text.normalize()))
    for (const name of await jobs.allTextContents()) expect(known).toContain(name.normalize())
    await isUnharmed('jobs')
    const addresses = await jobs.evaluateAll((links) =>
      links.map((link) => link.getAttribute('href')?.split('/').at(-1) ?? ''),
    )
    await page.goto('./#/parts')
    await expect(page.getByRole('heading', { level: 1, name: 'Parts' })).toBeVisible()
    await isUnharmed('parts')
    await page.goto('./#/book')
    await expect(page.getByText(`of ${STRINGS} jobs`)).toBeVisible()
    await isUnharmed('book')
    for (const job of addresses.slice(0, 3)) {
      for (const address of [
        `job/${job}/call/client`,
        `job/${job}/call/read-back`,
        `print/measuring/${job}`,
        `print/summary/${job}`,
      ]) {
        await page.goto(`./#/${address}`)
        await expect(page.locator('main').first()).toBeVisible()
        await isUnharmed(address)
      }
    }
  })
})
