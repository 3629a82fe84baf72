import type { Page } from '@playwright/test'
import type { DataPoint } from '@/domain/bench/data-points'
import { DATA_POINTS } from '@/domain/bench/data-points'
import { startedSet } from '@tests/support/started-set'
import { goneOn, look, openBench, passAsked, touchAsked, trueHand } from './support/at-the-bench'
import type { Seen } from './support/at-the-bench'
import { describe, expect, it } from './support/fixtures'

/** How one builder works: every method is one action, text apart. */
interface Worker {
  read(seen: Seen, text: string): Promise<void>
  confirm(seen: Seen): Promise<void>
  sure(): Promise<void>
}

interface Count {
  readings: number
  confirmations: number
  questions: number
}

/** Steps that take one reading as often as it is asked, and go on when they are told to. */
const STAYS = new Set(['Trim the post', 'Break the edge', 'Bond'])
const isFirst = ({ title, advice }: Seen) =>
  title === 'Break the edge' && !/weight with the edge broken [\d.]+ gr taken/.test(advice)

/** From raw shafts to a set that has cured. */
async function build(page: Page, set: Awaited<ReturnType<typeof startedSet>>, seed: number, worker: Worker) {
  const hand = trueHand(set, seed)
  const count: Count = { readings: 0, confirmations: 0, questions: 0 }
  const read = async (seen: Seen, point: DataPoint) => {
    // A pass or a touch that the scale does not see says nothing new: a little more is done, and the page is seen to go on.
    const shown = hand.read(seen.no, point)
    const more = touchAsked(seen) === 'add' ? 0.1 : -0.1
    const text =
      (point === 'trimWeight' || point === 'bondWeight') && seen.said.includes(` ${shown} gr taken`)
        ? (Number(shown) + more).toFixed(1)
        : shown
    await worker.read(seen, text)
    count.readings += 1
    await page.waitForFunction(
      (said) =>
        document.querySelector('main output')?.textContent?.trim() !== said ||
        document.querySelector('#bench-answer button') !== null,
      seen.said,
      { polling: 10 },
    )
    if ((await look(page)).asked) {
      await worker.sure()
      count.questions += 1
    }
    await goneOn(page, seen)
  }
  for (let action = 0; action < 1000; action++) {
    const seen = await look(page)
    if (seen.title === 'Final inspection') return count
    if (seen.title === 'Cure') await page.clock.fastForward('48:00:00')
    const pass = seen.title === 'Trim the post' ? passAsked(seen) : null
    const touch = seen.title === 'Bond' ? touchAsked(seen) : null
    if (touch !== null) hand.touch(seen.no, touch)
    if (pass !== null) {
      hand.pass(seen.no, pass)
      await read(seen, 'trimWeight')
    } else if (seen.point !== '' && (touch !== null || !STAYS.has(seen.title) || isFirst(seen))) {
      await read(seen, seen.point)
    } else {
      await worker.confirm(seen)
      count.confirmations += 1
      await goneOn(page, seen)
    }
  }
  throw new Error('the route did not come to the cure')
}

const ARROWS = 12
/** By touch and by scale, where the route is the same: the whole set in a release run. */
const FEW = process.env['TEST_SIZE'] === 'release' ? ARROWS : 4
/** Readings of each arrow from raw shaft to dry fit; what the grinder takes comes on top. */
const READINGS = 9
/** Steps that each arrow is confirmed at, and those confirmed once for the set. */
const EACH = 7
const ONCE = 3

describe('a set, from raw shafts to cure', () => {
  it('by the keyboard alone: one Enter a reading, one a confirmation', async ({ page }) => {
    await page.clock.install({ time: new Date('2026-03-03T08:00:00Z') })
    const set = await startedSet(ARROWS)
    await openBench(page, set)
    let enters = 0
    const enter = async () => {
      enters += 1
      await page.keyboard.press('Enter')
    }
    const count = await build(page, set, 5, {
      async read(seen, text) {
        expect(seen.focus).toBe('reading')
        await page.keyboard.insertText(text)
        await enter()
      },
      async confirm(seen) {
        expect(seen.point === '' ? seen.focus : 'Done').toMatch(/^Done/)
        await enter()
      },
      async sure() {
        // To the answer of a question and on it.
        await page.keyboard.press('Tab')
        await enter()
      },
    })
    expect(enters).toBe(count.readings + count.confirmations + count.questions)
    expect(count.readings).toBeGreaterThanOrEqual(READINGS * ARROWS)
    expect(count.confirmations).toBe(EACH * ARROWS + ONCE)
    // Parts of one lot weigh the same to the last digit now and then, and are asked about.
    expect(count.questions).toBeLessThanOrEqual(ARROWS)
  })
})

describe('by touch', () => {
  it.use({ hasTouch: true, viewport: { width: 1112, height: 834 } })
  it('alone: one tap a reading, one a confirmation', async ({ page }) => {
    await page.clock.install({ time: new Date('2026-03-03T08:00:00Z') })
    const set = await startedSet(FEW)
    await openBench(page, set)
    let taps = 0
    const tap = async (name: RegExp) => {
      taps += 1
      await page.getByRole('button', { name }).first().tap()
    }
    const count = await build(page, set, 6, {
      async read(_, text) {
        await page.keyboard.insertText(text)
        await tap(/^Take /)
      },
      confirm: () => tap(/^Done/),
      sure: () => tap(/^Yes, take/),
    })
    expect(taps).toBe(count.readings + count.confirmations + count.questions)
    expect(count.readings).toBeGreaterThanOrEqual(READINGS * FEW)
    expect(count.confirmations).toBe(EACH * FEW + ONCE)
  })
})

/** A port that sends what a test lays on its pan, as a scale sends it all the time. */
async function standInPort(page: Page): Promise<void> {
  await page.addInitScript(() => {
    let gr = 0
    let swings = 0
    let steady = 0
    const shownEmpty: (() => void)[] = []
    const port = {
      open: () => Promise.resolve(),
      close: () => Promise.resolve(),
      readable: new ReadableStream({
        start(controller) {
          const bytes = new TextEncoder()
          setInterval(() => {
            const shown = swings > 0 ? gr / 2 + swings : gr
            controller.enqueue(
              bytes.encode(`${swings > 0 ? 'US' : 'ST'},GS,+${shown.toFixed(1).padStart(7, ' ')} GN\r\n`),
            )
            swings = Math.max(0, swings - 1)
            steady = swings === 0 ? steady + 1 : 0
            // Taken from the port, not only sent: a busy page reads late.
            if (steady > 3 && gr === 0 && (controller.desiredSize ?? 0) > 0) shownEmpty.splice(0).forEach((go) => go())
          }, 15)
        },
      }),
    }
    Object.assign(globalThis, {
      layOn: (weight: number) => {
        gr = weight
        swings = 2
        steady = 0
      },
      emptied: () => new Promise<void>((go) => shownEmpty.push(go)),
    })
    const serial = { requestPort: () => Promise.resolve(port), getPorts: () => Promise.resolve([]) }
    Object.defineProperty(navigator, 'serial', { value: serial, configurable: true })
  })
}
const layOn = (page: Page, gr: number) =>
  page.evaluate((weight) => (globalThis as unknown as { layOn: (gr: number) => void }).layOn(weight), gr)

describe('by a scale on a serial port', () => {
  it('alone: a weight is laid on, and nothing else', async ({ page }) => {
    await standInPort(page)
    await page.clock.install({ time: new Date('2026-03-03T08:00:00Z') })
    const set = await startedSet(FEW)
    await openBench(page, set)
    await page.getByRole('button', { name: /^Scale/ }).click()
    await page.getByRole('button', { name: 'Connect the scale' }).click()
    await page.getByRole('button', { name: 'Let it take by itself' }).click()
    await page.getByRole('button', { name: 'Close' }).click()
    let laid = 0
    let actions = 0
    const count = await build(page, set, 7, {
      async read(seen, text) {
        const point = seen.point === '' ? 'trimWeight' : seen.point
        if (DATA_POINTS[point].unit === 'gr') {
          laid += 1
          await layOn(page, 0)
          await page.evaluate(() => (globalThis as unknown as { emptied: () => Promise<void> }).emptied())
          await layOn(page, Number(text))
          return
        }
        actions += 1
        await page.keyboard.insertText(text)
        await page.keyboard.press('Enter')
      },
      async confirm() {
        actions += 1
        await page.getByRole('button', { name: /^Done/ }).click()
      },
      async sure() {
        actions += 1
        await page.getByRole('button', { name: /^Yes, take/ }).click()
      },
    })
    // Lengths and run-outs are no weights: C2C and the run-out of the cut shaft.
    expect(laid).toBe(count.readings - 2 * FEW)
    expect(actions).toBe(2 * FEW + count.confirmations + count.questions)
  })
})
