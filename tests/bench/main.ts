/**
 * npm run bench: runs every race of tests/bench/*.bench.ts and takes every measure of tests/bench/*.measure.ts; fails when
 * a ratio or a figure is over its limit.
 */
import { tally } from '../run/tally'
import type { Measure } from './measure'
import { lastResult, race, type Race } from './race'

const files = import.meta.glob<{ default: readonly Race[] }>('./*.bench.ts', { eager: true })
const counts = tally()
for (const contest of Object.values(files).flatMap((file) => file.default)) {
  const { ratio, subject, reference } = race(contest)
  const said = `${contest.name}: ${microseconds(subject)} against ${microseconds(reference)}, ratio ${ratio.toPrecision(3)}, at most ${contest.atMost}`
  await counts.check(said, () => {
    if (!(ratio <= contest.atMost)) throw new Error('slower than it may be')
  })
}
const measures = import.meta.glob<{ default: readonly Measure[] }>('./*.measure.ts', { eager: true })
for (const { name, take } of Object.values(measures).flatMap((file) => file.default)) {
  const { said, over } = await take()
  await counts.check(`${name}: ${said}`, () => {
    if (over.length > 0) throw new Error(over.join('; '))
  })
}
if (lastResult() === undefined) throw new Error('no race was run')
counts.close()

function microseconds(seconds: number): string {
  return `${(seconds * 1e6).toPrecision(3)} µs`
}
