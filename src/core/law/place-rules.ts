import { grains, inches, millimetres, poundsForce, quantity } from '../quantity'
import type { PlaceRule } from './place-rule'

const VICTORIA_LARGE = ['sambar', 'rusa', 'red deer'] as const
const VICTORIA_SMALL = ['hog deer', 'fallow', 'chital'] as const

/**
 * Rules that were read, and nothing else. Figures about game are guidance: check each with the authority, the outfitter
 * and the licensed guide before it is relied on.
 */
export const PLACE_RULES: readonly PlaceRule[] = [
  {
    place: 'Alaska',
    instrument: '5 AAC 92.085',
    standing: 'read',
    source: 'AK-5AAC92',
    demands: [
      { what: 'peak draw weight', least: poundsForce(40) },
      {
        what: 'peak draw weight',
        least: poundsForce(50),
        game: ['moose', 'elk', 'brown bear', 'musk ox', 'bison', 'goat'],
      },
      { what: 'arrow length', least: inches(20) },
      { what: 'arrow weight', least: grains(300) },
    ],
  },
  {
    place: 'Washington',
    instrument: 'WAC 220-414-070',
    standing: 'read',
    source: 'WA-220-414-070',
    demands: [
      { what: 'peak draw weight', least: poundsForce(40) },
      { what: 'arrow weight per draw weight', least: quantity(6, 'gr/lb') },
      { what: 'arrow weight', least: grains(300) },
      { what: 'broadhead width', least: inches(7 / 8) },
      { what: 'no barbs on the broadhead' },
      { what: 'no electronics on the arrow' },
    ],
  },
  {
    place: 'Arkansas',
    instrument: 'AGFC code 06.04',
    dated: '2019',
    standing: 'read',
    source: 'AR-06.04',
    demands: [
      { what: 'peak draw weight', least: poundsForce(35) },
      { what: 'broadhead width', least: inches(7 / 8) },
    ],
  },
  {
    place: 'Victoria',
    instrument: 'Wildlife (Game) Regulations 2012',
    dated: '2012',
    standing: 'since replaced',
    source: 'VIC-2012',
    note: 'Pounds and grains are the legal figures.',
    demands: [
      { what: 'peak draw weight', least: poundsForce(50), game: VICTORIA_LARGE },
      { what: 'arrow weight', least: grains(400), game: VICTORIA_LARGE },
      { what: 'peak draw weight', least: poundsForce(45), game: VICTORIA_SMALL },
      { what: 'arrow weight', least: grains(350), game: VICTORIA_SMALL },
    ],
  },
  {
    place: 'Zimbabwe',
    instrument: 'SI 114 of 2019',
    dated: '2019',
    standing: 'from press',
    source: 'ZW-SI114',
    demands: [
      { what: 'hunting with the bow', game: ['buffalo'] },
      { what: 'broadhead width', least: millimetres(30), game: ['buffalo'] },
      { what: 'trained guide', game: ['buffalo'] },
    ],
  },
]
