import { cp, readFile, rm, writeFile } from 'node:fs/promises'
import { expect, it } from './support/fixtures'
import { serve } from './support/serve'

const FIRST = 'test-results/build-first'
const NEXT = 'test-results/build-next'

/** The build again, told apart by its title and, as a real one would be, by its worker's version. */
async function copyOfBuild(folder: string, title: string) {
  await rm(folder, { recursive: true, force: true })
  await cp('dist', folder, { recursive: true })
  const edit = async (file: string, change: (text: string) => string) => {
    const before = await readFile(`${folder}/${file}`, 'utf8')
    const after = change(before)
    expect(after).not.toBe(before)
    await writeFile(`${folder}/${file}`, after)
  }
  await edit('index.html', (text) => text.replace('lang="en"', `lang="en" data-build="${title}"`))
  await edit('sw.js', (text) => text.replace(/"version": ?"\w+"/, `"version":"${title}"`))
}

it('offers a newer build, and takes it only when that is accepted', async ({ profile }) => {
  await copyOfBuild(FIRST, 'first')
  await copyOfBuild(NEXT, 'next')
  const first = await serve(FIRST)
  const port = Number(new URL(first.address).port)
  const context = await profile.open()
  const page = await context.newPage()
  const build = () => page.locator('html').getAttribute('data-build')
  await page.goto(first.address)
  await page.getByRole('button', { name: 'Open my shop' }).click()
  await page.evaluate(async () => void (await navigator.serviceWorker.ready))
  const offer = page.getByRole('button', { name: 'Take it now' })
  await expect(offer).toBeHidden()
  await first.stop()

  const next = await serve(NEXT, port)
  const other = await context.newPage()
  await other.goto(next.address)
  await page.reload()
  expect(await build(), 'the build of a reload before the offer is taken').toBe('first')
  await expect(offer).toBeVisible()
  await offer.click()
  await expect.poll(build).toBe('next')

  // The other tab may be in the middle of a step: it goes on, on what it was.
  await expect(other.locator('html')).toHaveAttribute('data-build', 'first')
  await next.stop()
})
