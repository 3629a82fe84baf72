/** docs/simulated-year.md, from the year itself: `npm run test:release` holds it current. */
import type { YearArrow } from './year'

export const TOLERANCE = 0.5 + 1e-9 // gr, and what binary fractions do to a difference
export const lands = ({ off }: YearArrow) => Math.abs(off) <= TOLERANCE
export const notQuestioned = (arrows: readonly YearArrow[]) => arrows.filter((each) => !each.isQuestioned)
export const share = (arrows: readonly YearArrow[], is: (arrow: YearArrow) => boolean) =>
  arrows.filter(is).length / arrows.length
export const mean = (arrows: readonly YearArrow[], of: (arrow: YearArrow) => number) =>
  arrows.reduce((total, each) => total + of(each), 0) / arrows.length
export const spread = (arrows: readonly YearArrow[], of: (arrow: YearArrow) => number) => {
  const middle = mean(arrows, of)
  return Math.sqrt(mean(arrows, (each) => (of(each) - middle) ** 2))
}

const percent = (n: number) => `${(100 * n).toFixed(1)} %`
const gr = (n: number) => n.toFixed(2)
const worst = (arrows: readonly YearArrow[]) => Math.max(...arrows.map(({ off }) => Math.abs(off)))

function row(arrows: readonly YearArrow[]): string {
  const kept = notQuestioned(arrows)
  return [
    arrows.length,
    arrows.length - kept.length,
    percent(share(kept, lands)),
    percent(share(kept, ({ trueOff }) => Math.abs(trueOff) <= TOLERANCE)),
    gr(mean(kept, ({ off }) => off)),
    gr(spread(kept, ({ off }) => off)),
    gr(worst(kept)),
    mean(kept, ({ passes }) => passes).toFixed(1),
    mean(kept, ({ wetWeighings }) => wetWeighings).toFixed(1),
    arrows.filter(({ isWeighedAgain }) => isWeighedAgain).length,
  ].join(' | ')
}

function named(arrows: readonly YearArrow[]): string {
  const rest = arrows.filter((each) => each.isQuestioned || !lands(each))
  if (rest.length === 0) return 'None.'
  return rest
    .map(({ code, off, trueOff, isQuestioned }) => {
      const why = isQuestioned ? 'questioned at the bond' : 'a deviation at the final inspection'
      return `- ${code}: ${gr(off)} gr by the scale, ${gr(trueOff)} in truth; ${why}`
    })
    .join('\n')
}

export const yearPage = (sets: number, wet: readonly YearArrow[], byEye: readonly YearArrow[]): string =>
  `# A simulated year

${sets} sets of three to twelve arrows, built by a simulated builder who does what the bench says and nothing else
(\`src/demo/simulated-build.ts\`). Parts, passes, glue and scale scatter as common practice has it, no source: a pass
0.6 ± 0.2, 1.2 ± 0.35 or 3 ± 0.8 gr, a post's glue 1.8 ± 0.4, a collar's 0.8 ± 0.25, a reading ± 0.07, and at each step the
scale stands ± 0.1 gr off, in common for all that is weighed there: an hour after its check. A touch of glue takes or adds
0.2 ± 0.07 gr: assumed, no source. The tolerance is ± 0.5 gr about each arrow's own target.

| the joint is | arrows | questioned | within by the scale | within in truth | mean, gr | s.d., gr | worst, gr | passes | wet weighings | weighed again |
| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |
| weighed wet, and touched up | ${row(wet)} |
| wiped by eye | ${row(byEye)} |

## What it shows

The post is trimmed before it is glued, and the glue of a post with its collar scatters by √(0.4² + 0.25²) = 0.47 gr. However
well an arrow is trimmed, at most 2Φ(0.5/0.47) − 1 = 71 % land within half a grain when the squeeze-out is wiped by eye. So
the bench weighs the wiped arrow wet, its own head and nock on the pan beside it, and the coach says wipe, add or done until
less than half a touch is left. It never moves a joint out of the 95 % band of what the shop's joints take, for a starved
joint fails and a heaped one hides it; an arrow that only such a joint would save is questioned instead, with its figure.

A finished weight that is off while the wet one was on its number is asked about: glue loses nothing as it cures, so the scale
is checked with its weight and the arrow weighed again (the last column counts them: they would have read as misses, though
none was one in truth). What is off after that is a deviation, decided and on the record.

## The rest, by name

${named(wet)}

Made by \`YEAR_SETS=${sets} npx vitest run tests/demo/simulated-year.test.ts --update\`; the release run holds it current.
`
