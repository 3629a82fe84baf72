import { readFile } from 'node:fs/promises'
import { AxeBuilder } from '@axe-core/playwright'
import { axeFinds, expectAccessible } from './support/accessible'
import { expect, it } from './support/fixtures'
import { printPdf } from './support/print-pdf'
import { shoot } from './support/shoot'

const PNG = Buffer.from([0x89, 0x50, 0x4e, 0x47])

it('takes pictures at three widths, light and dark, and puts the page back', async ({ page }) => {
  await page.goto('./')
  const before = page.viewportSize()
  await shoot(page, 'support')
  for (const width of [360, 834, 1440]) {
    for (const colours of ['light', 'dark']) {
      const picture = await readFile(`test-results/shots/support-${width}-${colours}.png`)
      expect(picture.subarray(0, PNG.length)).toEqual(PNG)
      expect(picture.readUInt32BE(16)).toBe(width)
    }
  }
  expect(page.viewportSize()).toEqual(before)
})

it('prints sheet by sheet', async ({ page }) => {
  await page.setContent('<p>first</p><p style="break-before: page">second</p>')
  const { texts, pictures } = await printPdf(page, 'support')
  expect(texts.map((text) => text.trim())).toEqual(['first', 'second'])
  expect(pictures).toHaveLength(2)
})

it('finds a field without a label', async ({ page }) => {
  await page.setContent('<html lang="en"><title>Shop</title><main><h1>Shop</h1><input></main></html>')
  await expect(expectAccessible(page)).rejects.toThrow('label')
})

it('finds what the runner of axe itself finds', async ({ page }) => {
  await page.setContent(
    '<title></title><h3>Shop</h3><img src="x.png"><button></button><p style="color:#aaa">pale</p><a href="#a">.</a>',
  )
  const { violations } = await new AxeBuilder({ page }).analyze()
  const found = new Set((await axeFinds(page)).said.map((each) => each.split(':')[0]))
  expect(violations.length).toBeGreaterThan(4)
  expect(found).toEqual(new Set(violations.map(({ id }) => id)))
})

it('keeps what a browser stored when it is closed and opened again', async ({ profile, address }) => {
  const first = await (await profile.open()).newPage()
  await first.goto(address)
  await first.evaluate(() => localStorage.setItem('mark', 'here'))
  const second = await (await profile.open()).newPage()
  await second.goto(address)
  expect(await second.evaluate(() => localStorage.getItem('mark'))).toBe('here')
})
