/** docs/checks.md: every number from outside that the core is held to. */
import { BOW_CHECKS } from './bow'
import { AIR_CHECKS, FLIGHT_CHECKS } from './flight'
import { LAW_CHECKS } from './law'
import { halfUnit, type OutsideCheck } from './outside-check'
import { STIFFNESS_CHECKS } from './stiffness'
import { BALANCE_CHECKS, UNIT_CHECKS } from './units-and-balance'
import { TRIM_CHECKS, WEIGHT_CHECKS } from './weight-and-trim'

export const OUTSIDE_CHECKS: Readonly<Record<string, readonly OutsideCheck[]>> = {
  'Units and energy': UNIT_CHECKS,
  'Balance and FOC': BALANCE_CHECKS,
  Weights: WEIGHT_CHECKS,
  'Trim and materials': TRIM_CHECKS,
  'The bow': BOW_CHECKS,
  Stiffness: STIFFNESS_CHECKS,
  Air: AIR_CHECKS,
  Flight: FLIGHT_CHECKS,
  'Law and game': LAW_CHECKS,
}

const row = ({ what, says, unit, status, source, where, is }: OutsideCheck): string => {
  const digits = Math.max(0, Math.round(-Math.log10(2 * halfUnit(says)))) + 1
  const ours = says.includes('e') ? is().toExponential(6) : is().toFixed(digits)
  return `| ${what} | ${says} | ${ours} | ${unit} | [${source}](sources.md)${where === undefined ? '' : `, ${where}`} | ${status} |`
}

export function checksPage(): string {
  const all = Object.values(OUTSIDE_CHECKS).flat()
  const outside = all.filter(({ status }) => status === 'P' || status === 'C').length
  return [
    '# Checks against the outside',
    '',
    `${all.length} numbers from outside the project that the core is held to, each within half a unit of its last printed digit;`,
    `${outside} of them were published or computed twice by independent methods. The page is made by \`npm run docs\`; a test holds`,
    'each number and fails when the page is not current.',
    '',
    'P published and read, C computed twice from published equations, M from memory, CP common practice without a source.',
    '',
    ...Object.entries(OUTSIDE_CHECKS).flatMap(([title, checks]) => [
      `## ${title}`,
      '',
      '| what | they say | the core says | | source | |',
      '| --- | --- | --- | --- | --- | --- |',
      ...checks.map(row),
      '',
    ]),
    '## More, where a table would not do',
    '',
    '| what | against | in |',
    '| --- | --- | --- |',
    '| every conversion of units | mathjs, a general library of units | `tests/core/quantity.test.ts` |',
    '| regression: Norris, Pontius, NoInt1, Longley, Wampler1 and 2 | certified values of [STRD](sources.md) | `tests/core/numeric/least-squares.test.ts` |',
    '| mean and standard deviation | certified values of [STRD](sources.md) | `tests/core/statistics/mean-and-standard-deviation.test.ts` |',
    '| normal and Student quantiles, gamma and beta functions | jstat | `tests/core/numeric/distributions` |',
    '| eigenvalues of the column | a dense solve of the same mesh by mathjs; shooting | `tests/core/stiffness/critical-nock-force.test.ts` |',
    '| trajectories | vacuum, flat fire, balance of energy | `tests/core/flight/trajectory.test.ts` |',
    '| forecast bands, chance for a set | seeded Monte Carlo | `tests/core/weight` |',
    '| the compute command | the same example computed apart in another language | `tests/headless/compute-figures.test.ts` |',
    '',
  ].join('\n')
}
