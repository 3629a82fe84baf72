import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const css = readFileSync('src/ui/look/tokens.css', 'utf8')

/** Every `--name: light-dark(#…, #…)` of the file. */
const colours = new Map(
  [...css.matchAll(/--([a-z-]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/g)].map(([, name, light, dark]) => [
    name!,
    { light: light!, dark: dark! },
  ]),
)

/** Relative luminance of an sRGB colour. [WCAG 2.2, "relative luminance"] */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!
}

/** [WCAG 2.2, "contrast ratio"] */
function contrast(a: string, b: string): number {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y)
  return (high! + 0.05) / (low! + 0.05)
}

const TEXT = 4.5 // WCAG 2.2, 1.4.3
const LINES = 3 // WCAG 2.2, 1.4.11
const GROUNDS = ['paper', 'sheet']
const pairs: [string, string, number][] = [
  ...GROUNDS.flatMap((ground) =>
    ['ink', 'soft', 'accent', 'amber', 'red'].map((text) => [text, ground, TEXT] as [string, string, number]),
  ),
  ...['accent-wash', 'amber-wash', 'red-wash'].flatMap((wash) =>
    ['ink', 'soft'].map((text) => [text, wash, TEXT] as [string, string, number]),
  ),
  ['accent', 'accent-wash', TEXT],
  ['amber', 'amber-wash', TEXT],
  ['red', 'red-wash', TEXT],
  ['on-accent', 'accent', TEXT],
  ...GROUNDS.map((ground) => ['rule-strong', ground, LINES] as [string, string, number]),
]

describe('the colours', () => {
  it('know black on white as 21 to 1', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10)
  })

  it.each(['light', 'dark'] as const)('can be read, each pair that meets, in %s', (theme) => {
    const ratios = pairs.map(([front, back, least]) => ({
      pair: `${front} on ${back}`,
      ratio: contrast(colours.get(front)![theme], colours.get(back)![theme]),
      least,
    }))
    expect(ratios.filter(({ ratio, least }) => ratio < least)).toEqual([])
  })

  it.each(['(forced-colors: active)', 'print'])('are all given again for %s', (medium) => {
    const block = css.slice(css.indexOf(`@media ${medium} {`)).split('@media ')[1]!
    expect([...colours.keys()].filter((name) => !block.includes(`--${name}:`))).toEqual([])
  })
})
