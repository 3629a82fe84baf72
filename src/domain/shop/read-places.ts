/** The place rules that were read, as rows of the shop's own table, one for each game that is asked differently. */
import { inGrains, inInches, inUnit } from '../../core/quantity'
import type { Demand, PlaceRule, RuleStanding } from '../../core/law/place-rule'
import { PLACE_RULES } from '../../core/law/place-rules'
import type { Rules } from './rules'

type Row = Rules['places'][number]

/** The day on which the rows were put into this table; the instruments' own dates stand with them. */
const READ_ON = '2026-11-25'

const STANDING: Readonly<Record<RuleStanding, string>> = {
  read: 'as read',
  'since replaced': 'since replaced: look for what replaced it',
  'from press': 'from press reports, not from the instrument',
}
const rounded = (n: number) => Math.round(n * 1000) / 1000

function figureOf(demand: Demand): Partial<Row> {
  switch (demand.what) {
    case 'peak draw weight':
      return { leastDrawWeightLb: rounded(inUnit(demand.least, 'lbf')) }
    case 'arrow weight':
      return { leastArrowGr: rounded(inGrains(demand.least)) }
    case 'arrow weight per draw weight':
      return { leastArrowPerLbGr: rounded(inUnit(demand.least, 'gr/lb')) }
    case 'arrow length':
      return { leastArrowLengthIn: rounded(inInches(demand.least)) }
    case 'broadhead width':
      return { leastHeadWidthIn: rounded(inInches(demand.least)) }
    default:
      return {}
  }
}

function rowsOf({ place, instrument, dated, standing, note, demands }: PlaceRule): readonly Row[] {
  const games = [...new Set(demands.flatMap(({ game }) => (game === undefined ? [] : [game.join(', ')])))]
  const isForAll = demands.some(({ game }) => game === undefined)
  return [...(isForAll ? ['any'] : []), ...games].map((game): Row => {
    // What a game asks for itself stands over what is asked for all.
    const fits = demands.filter((demand) => demand.game === undefined || demand.game.join(', ') === game)
    const confirmed = fits.map(({ what }) => what).filter((what) => !IS_FIGURE.has(what))
    const said = [STANDING[standing], ...confirmed, ...(note === undefined ? [] : [note])]
    return Object.assign(
      { place, game, instrument: dated === undefined ? instrument : `${instrument} (${dated})`, readOn: READ_ON },
      ...fits.filter(({ what }) => IS_FIGURE.has(what)).map(figureOf),
      { note: said.join('; ') },
    ) as Row
  })
}
const IS_FIGURE: ReadonlySet<string> = new Set([
  'peak draw weight',
  'arrow weight',
  'arrow weight per draw weight',
  'arrow length',
  'broadhead width',
])

export const readPlaces = (): readonly Row[] => PLACE_RULES.flatMap(rowsOf)
