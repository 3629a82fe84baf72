/** Everything that can be asked of an arrow, by the name a finding or a broken wish carries, with the unit it is told in. */
export const WISH_UNITS = {
  'finished weight': 'gr',
  'grains over target': 'gr',
  FOC: '%',
  reserve: '1',
  'cut length': 'in',
  'shaft front clear of the rest': 'in',
  'blades clear of the riser': 'in',
  'front weight limit of the shaft': 'gr',
  'chance for the set': '1',
  quantity: '1',
  'arrows to show': '1',
  'vane tail': 'in',
  'draw weight': 'lbf',
  'virtual mass': 'gr',
} as const
export type WishName = keyof typeof WISH_UNITS
