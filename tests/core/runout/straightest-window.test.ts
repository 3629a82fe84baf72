// long because all laws of the window are tried on the same shafts
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { degrees, difference, inches, inInches, inUnit, metres, radians, scaled } from '@/core/quantity'
import { runOutOverSpan } from '@/core/runout/over-span'
import { straightestWindow, WORTHWHILE } from '@/core/runout/straightest-window'
import { answer } from '@tests/support/answer'
import { type Bend, bowed, inThousandths, kinked, NO_GAIN, spin } from './bent-shaft'

const FIVE = [4, 10, 16, 22, 28]
const find = (bend: Bend, c2c: number, worthwhile = NO_GAIN, stations: readonly number[] = FIVE) =>
  answer(straightestWindow({ spun: spin(bend, stations), c2c: inches(c2c), worthwhile }))

describe('straightestWindow', () => {
  it('leaves of an even bow what the square of the length leaves, wherever it is cut', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.02, noNaN: true }),
        fc.double({ min: 15, max: 31.9, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (tir, c2c, angle) => {
          const { window, equal } = find(bowed(tir, 30, angle), c2c)
          // [ARR203] by runOutOverSpan
          const expected = inThousandths(answer(runOutOverSpan(inches(tir), inches(30), inches(c2c))))
          expect(inThousandths(window.runOut.tir)).toBeCloseTo(expected, 6)
          expect(inThousandths(equal.runOut.tir)).toBeCloseTo(expected, 6)
          expect(Math.cos(window.runOut.angle - angle)).toBeCloseTo(1, 8)
        },
      ),
      { numRuns: 25 },
    )
  })

  it('cuts an even bow equally off both ends, since nothing is gained by more off one', () => {
    const { window, equal } = find(bowed(0.004, 30), 27, WORTHWHILE)
    expect(window).toEqual(equal)
    expect(inInches(window.offNock)).toBeCloseTo(2.5, 10)
    expect(inInches(window.offPoint)).toBeCloseTo(2.5, 10)
  })

  it('needs only one reading to know an even bow', () => {
    expect(inThousandths(find(bowed(0.004, 30), 30, NO_GAIN, [16]).window.runOut.tir)).toBeCloseTo(4, 8)
  })

  it.each([
    { where: 7, off: 'offNock', other: 'offPoint' },
    { where: 25, off: 'offPoint', other: 'offNock' },
  ] as const)('cuts the kinked end off when the kink is at $where in', ({ where, off, other }) => {
    const { window, equal } = find(kinked(where, 0.004), 22, WORTHWHILE)
    expect(window[off]).toBeGreaterThan(window[other])
    expect(window.runOut.tir).toBeLessThan(equal.runOut.tir * 0.5)
  })

  it('finds a window past the kink straight, and goes no further than it has to', () => {
    const { window } = find(kinked(4, 0.004), 18, WORTHWHILE)
    expect(inThousandths(window.runOut.tir)).toBeLessThanOrEqual(0.5 + 1e-9)
    const [nearer] = [inInches(window.offNock)]
    expect(nearer).toBeGreaterThanOrEqual(7 - 1e-9) // equal ends are 7 in
  })

  it('does not leave equal ends for less than is worthwhile', () => {
    const slight = find(kinked(4, 0.000_3), 24, WORTHWHILE)
    expect(slight.window).toEqual(slight.equal)
    expect(find(kinked(4, 0.000_3), 24, NO_GAIN).window.offNock).not.toBe(slight.equal.offNock)
  })

  it('is never worse than equal ends and always of the length asked for', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            tir: fc.double({ min: 0, max: 0.03, noNaN: true }),
            angle: fc.double({ min: -180, max: 360, noNaN: true }),
          }),
          {
            minLength: 5,
            maxLength: 5,
          },
        ),
        fc.double({ min: 15, max: 32, noNaN: true }),
        (readings, c2c) => {
          const spun = {
            ...spin(bowed(0, 30), FIVE),
            stations: readings.map(({ tir, angle }, i) => ({
              at: inches(FIVE[i]!),
              tir: inches(tir),
              angle: degrees(angle),
            })),
          }
          const { window, equal } = answer(straightestWindow({ spun, c2c: inches(c2c), worthwhile: NO_GAIN }))
          expect(window.runOut.tir).toBeLessThanOrEqual(equal.runOut.tir)
          expect(inInches(spun.rawLength) - inInches(window.offNock) - inInches(window.offPoint)).toBeCloseTo(c2c, 9)
          expect(inInches(window.offNock)).toBeGreaterThanOrEqual(-1e-9)
          expect(inInches(window.offPoint)).toBeGreaterThanOrEqual(-1e-9)
          expect(window.at).toBeGreaterThanOrEqual(window.offNock)
        },
      ),
      { numRuns: 60 },
    )
  })

  it('turns its answer with the zero of the angles, and end for end with the shaft', () => {
    const bend: Bend = (at) => [kinked(7, 0.003)(at)[0], kinked(24, 0.002)(at)[0]]
    const spun = spin(bend, FIVE)
    const ask = (s: typeof spun) => answer(straightestWindow({ spun: s, c2c: inches(26), worthwhile: NO_GAIN })).window
    const turned = { ...spun, stations: spun.stations.map((s) => ({ ...s, angle: radians(s.angle + 1) })) }
    const swapped = {
      ...spun,
      stations: spun.stations.map((s) => ({ ...s, at: difference(spun.rawLength, s.at) })),
    }
    expect(ask(turned).runOut.tir).toBeCloseTo(ask(spun).runOut.tir, 12)
    expect(ask(turned).offNock).toBeCloseTo(ask(spun).offNock, 12)
    expect(Math.cos(ask(turned).runOut.angle - ask(spun).runOut.angle - 1)).toBeCloseTo(1, 9)
    expect(ask(swapped).runOut.tir).toBeCloseTo(ask(spun).runOut.tir, 12)
    expect(ask(swapped).offNock).toBeCloseTo(ask(spun).offPoint, 12)
  })

  it('grows in proportion to what was read', () => {
    const spun = spin(kinked(9, 0.002), FIVE)
    const double = { ...spun, stations: spun.stations.map((s) => ({ ...s, tir: scaled(s.tir, 2) })) }
    const ask = (s: typeof spun) => answer(straightestWindow({ spun: s, c2c: inches(27), worthwhile: NO_GAIN })).window
    expect(ask(double).runOut.tir / ask(spun).runOut.tir).toBeCloseTo(2, 10)
  })

  it('says when it had to guess past the outermost roller', () => {
    const spun = spin(bowed(0.003, 30), FIVE)
    const long = straightestWindow({ spun, c2c: inches(31), worthwhile: WORTHWHILE })
    expect(long).toMatchObject({ ok: true, findings: [{ code: 'run-out-extrapolated' }] })
    expect(long.findings[0]).toMatchObject({ by: expect.closeTo(inches(0.5), 10) })
    expect(straightestWindow({ spun, c2c: inches(29.9), worthwhile: WORTHWHILE }).findings).toEqual([])
  })

  it('puts the run-out of a straight shaft, which is none, at the middle of the cut', () => {
    const { window } = find(bowed(0, 30), 20)
    expect(window.runOut.tir).toBe(0)
    expect(inInches(window.at)).toBeCloseTo(16, 10)
  })

  it('takes the whole shaft when nothing comes off', () => {
    expect(find(bowed(0.002, 30), 32).window).toMatchObject({ offNock: 0, offPoint: 0 })
  })

  const good = spin(bowed(0.002, 30), FIVE)
  it.each([
    ['a window longer than the shaft', { c2c: inches(32.01) }, { code: 'window-longer-than-shaft' }],
    ['a window of less than an inch', { c2c: inches(0.99) }, { input: 'carbon to carbon' }],
    ['a window of no length', { c2c: inches(NaN) }, { input: 'carbon to carbon' }],
    ['a negative gain', { worthwhile: inches(-0.001) }, { input: 'worthwhile gain' }],
    ['too great a gain', { worthwhile: inches(0.101) }, { input: 'worthwhile gain' }],
    ['a raw shaft too short', { spun: { ...good, rawLength: inches(9.9) } }, { input: 'raw length' }],
    ['a raw shaft too long', { spun: { ...good, rawLength: inches(60.1) } }, { input: 'raw length' }],
    ['a roller behind the shaft', { spun: { ...good, rearSupport: inches(-0.1) } }, { input: 'rear support' }],
    ['a roller ahead of it', { spun: { ...good, frontSupport: inches(32.1) } }, { input: 'front support' }],
    ['rollers too close', { spun: { ...good, rearSupport: inches(29) } }, { code: 'supports-too-close' }],
    [
      'rollers swapped',
      { spun: { ...good, rearSupport: inches(31), frontSupport: inches(1) } },
      { code: 'supports-too-close' },
    ],
    ['no stations', { spun: { ...good, stations: [] } }, { code: 'no-stations' }],
    ['a station on a roller', { spun: spin(bowed(0.002, 30), [1.2, 16]) }, { code: 'stations-coincide' }],
    ['one station twice', { spun: spin(bowed(0.002, 30), [16, 16]) }, { code: 'stations-coincide' }],
    ['a station off the shaft', { spun: spin(bowed(0.002, 30), [33]) }, { input: 'station' }],
    [
      'a reading that is none',
      { spun: { ...good, stations: [{ ...good.stations[0]!, tir: metres(NaN) }] } },
      { input: 'run-out' },
    ],
    [
      'a reading below nothing',
      { spun: { ...good, stations: [{ ...good.stations[0]!, tir: inches(-0.001) }] } },
      { input: 'run-out' },
    ],
    [
      'a reading beyond belief',
      { spun: { ...good, stations: [{ ...good.stations[0]!, tir: inches(0.501) }] } },
      { input: 'run-out' },
    ],
    [
      'an angle past a full turn',
      { spun: { ...good, stations: [{ ...good.stations[0]!, angle: degrees(360.1) }] } },
      { input: 'angle' },
    ],
  ])('says what is wrong with %s', (_, changed, finding) => {
    const question = { spun: good, c2c: inches(28), worthwhile: WORTHWHILE, ...changed }
    expect(straightestWindow(question)).toMatchObject({ ok: false, findings: [finding] })
  })

  it('never answers with anything but finite lengths, whatever it is given', { timeout: 60_000 }, () => {
    const wild = fc.oneof(fc.double({ min: -1, max: 40 }), fc.constantFrom(0, NaN, Infinity, -Infinity, 1e300))
    fc.assert(
      fc.property(
        fc.array(fc.tuple(wild, fc.oneof(fc.double({ min: 0, max: 0.5 }), wild), wild), { maxLength: 4 }),
        wild,
        wild,
        wild,
        wild,
        (stations, raw, rear, front, c2c) => {
          const found = straightestWindow({
            spun: {
              rawLength: inches(raw),
              rearSupport: inches(rear),
              frontSupport: inches(front),
              stations: stations.map(([at, tir, angle]) => ({
                at: inches(at),
                tir: inches(tir),
                angle: degrees(angle),
              })),
            },
            c2c: inches(c2c),
            worthwhile: WORTHWHILE,
          })
          const numbers = found.ok
            ? [found.value.window, found.value.equal].flatMap((w) => [
                w.offNock,
                w.offPoint,
                w.at,
                w.runOut.tir,
                w.runOut.angle,
              ])
            : []
          expect(numbers.every(Number.isFinite)).toBe(true)
          expect(found.ok || found.findings.length > 0).toBe(true)
        },
      ),
      { numRuns: 1000 },
    )
  })
})

describe('runOutOverSpan', () => {
  it.each([
    // [ARR203] spans of 28 and 25 in; 0.001·(25/28)² by hand
    { tir: 0.001, from: 28, to: 25, printed: 0.000_797, half: 0.000_000_5 },
    { tir: 0.003, from: 28, to: 28, printed: 0.003, half: 1e-15 },
    { tir: 0.002, from: 14, to: 28, printed: 0.008, half: 1e-15 },
  ])('turns $tir in on $from in into $printed on $to in', ({ tir, from, to, printed, half }) => {
    const there = answer(runOutOverSpan(inches(tir), inches(from), inches(to)))
    expect(Math.abs(inUnit(there, 'in') - printed)).toBeLessThanOrEqual(half)
  })

  it.each([
    [-0.001, 28, 25, 'run-out'],
    [NaN, 28, 25, 'run-out'],
    [0.501, 28, 25, 'run-out'],
    [0.001, 1.99, 25, 'span measured on'],
    [0.001, 60.1, 25, 'span measured on'],
    [0.001, 28, NaN, 'span'],
    [0.001, 28, 0, 'span'],
  ])('gives no run-out for %d in on %d in to %d in', (tir, from, to, input) => {
    expect(runOutOverSpan(inches(tir), inches(from), inches(to))).toMatchObject({ ok: false, findings: [{ input }] })
  })
})
