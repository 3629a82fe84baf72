/** Holds every marked figure of a page against what the core makes of the exported record. */
import type { Page } from '@playwright/test'
import type { ExpectedFigures } from './figure-adder'

interface Shown {
  readonly name: string
  readonly value: number
  readonly unit: string
  readonly text: string
  readonly decimals: number
}

export const shownFigures = (page: Page): Promise<Shown[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('[data-figure]')].map((element) => ({
      name: element.getAttribute('data-figure')!,
      value: Number(element.getAttribute('data-value')),
      unit: element.getAttribute('data-unit')!,
      text: (element.textContent ?? '').trim(),
      decimals: Number(element.getAttribute('data-decimals')),
    })),
  )

/** @returns in words, each figure that is not the core's, that no expectation knows, or whose text is another number */
export async function wrongFigures(page: Page, expected: ExpectedFigures): Promise<readonly string[]> {
  return (await shownFigures(page)).flatMap(({ name, value, text, decimals }) => {
    const known = expected.get(name)
    if (known === undefined) return [`${name} = ${value}: nobody knows this figure`]
    const off = known.every((each) => !(Math.abs(each - value) <= 1e-9 * Math.max(1, Math.abs(each))))
    if (off) return [`${name} = ${value}, the core says ${known.join(' or ')}`]
    const written = Number(text.replaceAll(/[  ,]/g, '').replace('−', '-'))
    return Math.abs(written - value) <= 0.5000001 * 10 ** -decimals ? [] : [`${name} = ${value} is written ${text}`]
  })
}

/** Exact by definition [SP811]; written here again on purpose, so that a slip in the app's own constants is seen. */
const KG_PER_GR = 6.479891e-5
const M_PER_FT = 0.3048
const N_PER_LBF = 4.4482216152605
const J_PER_FT_LBF = N_PER_LBF * M_PER_FT
const KG_PER_LB = 0.45359237

/** Energy, momentum and grains per pound of the figures of a sheet page, from first principles. */
export async function unlikeFirstPrinciples(page: Page, drawLb: number | undefined): Promise<readonly string[]> {
  const shown = new Map((await shownFigures(page)).map(({ name, value }) => [name, value]))
  const [gr, fps] = [shown.get('sheet.finished'), shown.get('sheet.speed')]
  const should = new Map<string, number>()
  if (gr !== undefined && fps !== undefined) {
    const [kg, ms] = [gr * KG_PER_GR, fps * M_PER_FT]
    should.set('sheet.kineticEnergy', (kg * ms * ms) / 2 / J_PER_FT_LBF)
    should.set('sheet.momentum', (kg * ms) / N_PER_LBF) // a lbf·s is a slug·ft/s
  }
  if (gr !== undefined && drawLb !== undefined)
    should.set('sheet.grainsPerPound', ((gr * KG_PER_GR) / KG_PER_LB / drawLb) * 7000)
  return [...should].flatMap(([name, value]) => {
    const has = shown.get(name)
    return has !== undefined && Math.abs(has / value - 1) > 1e-9 ? [`${name} = ${has}, should be ${value}`] : []
  })
}
