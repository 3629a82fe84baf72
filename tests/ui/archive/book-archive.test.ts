import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { accepted, building } from '@/domain/bench/bench'
import { DATA_POINT_NAMES, DATA_POINTS } from '@/domain/bench/data-points'
import { codeOf } from '@/domain/records/code'
import { newEvent } from '@/domain/records/write'
import { bookArchive } from '@/ui/archive/book-archive'
import { pointWord } from '@/ui/words/bench-words'
import { fileOf, textOf } from '@tests/storage/backup/backup-of'
import { sentOrder } from '@tests/support/sent-order'

const { repository, job, asBuilt, commit } = await sentOrder()
const HOSTILE = '<script>alert(1)</script><img src=x onerror=alert(1)> & "so"'
const arrow = building(job.bench!)[1]!
await commit({ events: [newEvent('retired', { job: job.id, arrow: arrow.id }, { cause: HOSTILE, shots: 3 })] })
const steps: number[] = []
const told = (records: number) => void steps.push(records)
const html = await (await bookArchive(repository, 'Ridge <b>Shop</b>', '2031-05-04T12:00:00.000Z', told)).text()
const page = new DOMParser().parseFromString(html, 'text/html')

describe('the archive of the whole book', () => {
  it('is one page that runs nothing and asks for nothing', () => {
    const outside = [...page.querySelectorAll('script, img, link, iframe, object, embed, form, base')]
    expect(outside.map((each) => each.outerHTML)).toEqual([])
    const addresses = [...page.querySelectorAll('[href], [src]')].map((each) => each.getAttribute('href') ?? '')
    expect(addresses.every((address) => address.startsWith('#'))).toBe(true)
    for (const each of page.querySelectorAll('*'))
      for (const { name } of each.attributes) expect(name).not.toMatch(/^on/)
    expect(page.querySelector('meta[http-equiv]')!.getAttribute('content')).toContain("default-src 'none'")
  })

  it('tells on the way how many records it is through, up to twice the book and never back', async () => {
    const { facts, events } = await repository.tally()
    expect(steps.length).toBeGreaterThan(1)
    expect(steps).toEqual(steps.toSorted((a, b) => a - b))
    expect(steps.at(-1)).toBeGreaterThan(facts + events)
    expect(steps.at(-1)).toBeLessThanOrEqual(2 * (facts + events))
  })

  it('has what a person wrote as text', () => {
    expect(page.body.textContent).toContain(`retired, ${HOSTILE}`)
    expect(page.querySelector('h1')!.textContent).toBe('The book of Ridge <b>Shop</b>')
  })

  it('says every reading of every arrow', () => {
    expect(page.body.textContent).toContain(`record ${codeOf(asBuilt)}`)
    for (const built of building(job.bench!)) {
      const caption = [...page.querySelectorAll('caption')].find(
        (each) => each.textContent === `Every reading of no. ${built.no}`,
      )!
      const rows = [...caption.parentElement!.querySelectorAll('tbody tr')].map((row) => row.textContent)
      for (const point of DATA_POINT_NAMES) {
        const kept = accepted(built, point)
        if (kept === undefined) continue
        const read = kept.reading.value.toFixed(DATA_POINTS[point].decimals)
        expect(
          rows.some((row) => row.startsWith(pointWord(point)) && row.includes(read)),
          point,
        ).toBe(true)
      }
    }
  })

  it('leads to each job it names', () => {
    const links = [...page.querySelectorAll('nav a')].map((link) => link.getAttribute('href')!.slice(1))
    expect(links.length).toBeGreaterThan(0)
    for (const id of links) expect(page.getElementById(id), id).not.toBeNull()
  })

  it('holds the records to the byte: taken out, they are a backup that checks', async () => {
    const records = page.querySelector('pre')!.textContent
    expect(records).toBe(await textOf(repository))
    expect((await repository.archive.check(fileOf(records))).kind).toBe('whole')
  })

  it('is checked by the program that needs nothing of the app, and a changed one is found', () => {
    const folder = mkdtempSync(join(tmpdir(), 'grainwright-archive-'))
    const verify = (text: string) => {
      const file = join(folder, 'book.html')
      writeFileSync(file, text)
      return spawnSync(process.execPath, ['docs/verify-backup.mjs', file], { encoding: 'utf8' })
    }
    expect(verify(html).stdout).toContain('Every hash fits.')
    const changed = verify(html.replaceAll('Heron 200', 'Heron 201'))
    expect(changed.stdout).toContain('does not fit its hash')
    expect(changed.status).toBe(1)
    rmSync(folder, { recursive: true })
  })
})
