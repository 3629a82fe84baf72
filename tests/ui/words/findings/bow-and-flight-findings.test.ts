import { describe, expect, it } from 'vitest'
import { bowSpeed } from '@/core/bow/bow-speed'
import { chronographFit } from '@/core/bow/chronograph-fit'
import type { BowFinding } from '@/core/bow/findings'
import type { KnownBow } from '@/core/bow/known-bow'
import { powerStroke } from '@/core/bow/power-stroke'
import { type DrawPoint, storedEnergy } from '@/core/bow/stored-energy'
import { grainsPerPound } from '@/core/energy/grains-per-pound'
import type { FlightFinding } from '@/core/flight/findings'
import { humidAirDensity } from '@/core/air/humid-air-density'
import { celsius, degrees, feetPerSecond, grains, inches, pascals, poundsForce, ratio, yards } from '@/core/quantity'
import { airWords } from '@/ui/words/findings/air-findings'
import { bowWords } from '@/ui/words/findings/bow-findings'
import { energyWords } from '@/ui/words/findings/energy-findings'
import { flightWords } from '@/ui/words/findings/flight-findings'

const reading = (gr: number, fps: number) => ({ mass: grains(gr), speed: feetPerSecond(fps) })
const curve = (...rows: readonly (readonly [number, number])[]): DrawPoint[] =>
  rows.map(([draw, force]) => ({ draw: inches(draw), force: poundsForce(force) }))
const COMPOUND: KnownBow = { kind: 'compound' }
const RATED: KnownBow = {
  kind: 'compound',
  ratedSpeed: feetPerSecond(335),
  peakDrawWeight: poundsForce(70),
  drawLength: inches(29),
}

/** The finding of a code as a model gives it, so that sentence and model are tested as one. */
const found = <C extends BowFinding['code']>(outcome: { readonly findings: readonly { code: string }[] }, code: C) =>
  outcome.findings.find((finding): finding is Extract<BowFinding, { code: C }> => finding.code === code)!

const isSentence = (words: string) => {
  expect(words).toMatch(/^[A-Z0-9].*[.]$/s)
  expect(words).not.toMatch(/NaN|undefined|Infinity|\[object|no number|no finite/)
}

describe('the words of the bow', () => {
  it.each<[BowFinding['code'], { readonly findings: readonly { code: string }[] }, RegExp]>([
    ['too-few-points', storedEnergy(curve([7, 0])), /1 point in the force-draw curve; at least 3/],
    ['equal-weights', chronographFit([reading(450, 268), reading(450, 267)]), /one arrow weight, 450\.0 gr/],
    ['weights-too-close', chronographFit([reading(450, 268), reading(455, 267)]), /450\.0 to 455\.0 gr/],
    ['speed-does-not-fall-with-weight', chronographFit([reading(450, 250), reading(600, 255)]), /no bow does that/],
    ['negative-virtual-mass', chronographFit([reading(450, 280), reading(600, 220)]), /−\d+\.\d gr/],
    [
      'wild-reading',
      chronographFit([reading(450, 253.4), reading(520, 253), reading(600, 223.7), reading(700, 208.9)]),
      /Reading 2, 253\.0 ft\/s at 520\.0 gr/,
    ],
    [
      'readings-scatter',
      chronographFit(
        [reading(420, 275), reading(480, 251), reading(560, 246), reading(640, 222), reading(700, 222)],
        feetPerSecond(1),
      ),
      /times as much as a chronograph’s 1\.0 ft\/s/,
    ],
    [
      'extrapolated',
      bowSpeed(grains(825), { ...COMPOUND, chronograph: [reading(452, 268), reading(601, 236.5)] }),
      /825\.0 gr is beyond the weights shot \(452\.0 to 601\.0 gr\).*2\.6 ft\/s/,
    ],
    ['draw-does-not-go-on', storedEnergy(curve([7, 0], [10, 40], [10, 41])), /point 3 at 10\.00 in/],
    ['curve-starts-with-force', storedEnergy(curve([7, 20], [15, 60], [28, 70])), /starts with 20\.0 lb/],
    [
      'let-down-spans-another-draw',
      storedEnergy(curve([7, 0], [15, 60], [28, 70]), curve([7, 0], [15, 50], [27, 60])),
      /7\.00 to 27\.00 in, the draw from 7\.00 to 28\.00 in/,
    ],
    [
      'let-down-above-draw',
      storedEnergy(curve([7, 0], [15, 60], [28, 70]), curve([7, 0], [15, 65], [28, 70])),
      /not swapped/,
    ],
    ['no-power-stroke', powerStroke(inches(12), inches(9.5)), /12\.00 in with a brace height of 9\.50 in/],
    ['rating-needs', bowSpeed(grains(600), { ...COMPOUND, ratedSpeed: feetPerSecond(335) }), /draw length are needed/],
    [
      'less-trusted-source',
      bowSpeed(grains(600), { ...RATED, chronograph: [reading(450, 250), reading(600, 255)] }),
      /comes from the bow’s rated speed, because the chronograph readings/,
    ],
    ['speed-not-known', bowSpeed(grains(600), COMPOUND), /Enter a chronograph reading/],
  ])('say %s with what was entered', (code, outcome, words) => {
    const said = bowWords(found(outcome, code))
    isSentence(said)
    expect(said).toMatch(words)
  })

  it('say one and many right', () => {
    const needs = bowWords({ code: 'rating-needs', missing: ['draw length'] })
    expect(needs).toMatch(/draw length is needed/)
    expect(bowWords({ code: 'too-few-points', of: 'let-down curve', count: 2, needed: 3 })).toMatch(
      /There are 2 points/,
    )
  })
})

describe('the words of the arrow’s weight on its bow', () => {
  it('warn hard below the floor and softly below what is recommended', () => {
    const said = (gr: number) => {
      const [finding] = grainsPerPound(grains(gr), poundsForce(70)).findings
      return finding?.code === 'arrow-light-for-bow' ? energyWords(finding) : ''
    }
    isSentence(said(340))
    isSentence(said(400))
    expect(said(340)).toMatch(/injure the archer/)
    expect(said(400)).toMatch(/recommended/)
    expect(said(400)).not.toMatch(/injure/)
  })
})

describe('the words of the flight', () => {
  it.each<[FlightFinding, RegExp]>([
    [{ code: 'range-beyond-flight', range: yards(400) }, /400 yd/],
    [{ code: 'no-ranges' }, /Enter at least one/],
    [
      { code: 'speed-does-not-fall-with-distance', near: feetPerSecond(240), far: feetPerSecond(250) },
      /250\.0 ft\/s, is not below the near one, 240\.0 ft\/s/,
    ],
    [
      { code: 'distances-too-close', apart: yards(20), uncertainty: ratio(0.5), speedSd: feetPerSecond(1.5) },
      /20\.0 yd.*1\.5 ft\/s.*50 %/,
    ],
    [{ code: 'drag-beyond-published', drag: ratio(3.1), low: ratio(1.3), high: ratio(2.6) }, /3\.10.*1\.3 to 2\.6/],
    [{ code: 'head-outsteers-vanes', margin: inches(-1.9), angle: degrees(1) }, /1° off its path.* 1\.9 in ahead/],
    [
      { code: 'steering-margin-thin', margin: inches(2.7), share: ratio(0.09), wanted: ratio(0.1) },
      /2\.7 in at its least, 9\.0 % .*10 % wanted/,
    ],
    [{ code: 'broadhead-takes-steering', broadhead: inches(8.2), fieldPoint: inches(12.8) }, /8\.2 in.*12\.8 in/],
  ])('say $code with what was entered', (finding, words) => {
    const said = flightWords(finding)
    isSentence(said)
    expect(said).toMatch(words)
  })

  it('say where the air is outside what its equation was published for', () => {
    const [finding] = humidAirDensity(celsius(-20), pascals(95_000), ratio(0.5)).findings
    const said = finding?.code === 'air-beyond-published-range' ? airWords(finding) : ''
    isSentence(said)
    expect(said).toMatch(/−20\.0 °C/)
  })
})
