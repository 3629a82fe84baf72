/** What a field of a part is called, in the words of the trade. */
const NAMES: Readonly<Record<string, string>> = {
  weightGr: 'Catalogue weight, each',
  toleranceGr: 'Maker’s tolerance, ±',
  weightPerInchGr: 'Weight per inch',
  staticSpineIn: 'Static spine',
  outerDiameterMm: 'Outer diameter',
  innerDiameterMm: 'Inner diameter',
  rawLengthIn: 'Raw length',
  straightnessIn: 'Straightness, ±',
  maxDrawWeightLb: 'Maker’s most draw weight',
  maxFrontWeightGr: 'Maker’s most front weight',
  fit: 'Fit',
  standoutIn: 'Throat to shaft end',
  plugIn: 'Plug inside the shaft',
  flangeIn: 'Rim behind the shaft',
  insideIn: 'Length inside the shaft',
  material: 'Material',
  postDiameterMm: 'Post diameter',
  postBoreMm: 'Post bore, 0 for solid',
  postLengthIn: 'Post length',
  leastBondMm: 'Least bond',
  trimmable: 'May be trimmed',
  thread: 'Thread',
  shoulderIn: 'Shoulder, length ahead',
  shoulderDiameterMm: 'Shoulder diameter',
  aheadIn: 'Length ahead of the shaft',
  bodyDiameterMm: 'Body diameter',
  overIn: 'Length over the shaft',
  lengthIn: 'Length',
  setbackIn: 'Set back from the shaft front',
  diameterMm: 'Diameter',
  bladeRearIn: 'Seat to rear of the blades',
  blades: 'Blades',
  cuttingWidthIn: 'Cutting width',
  bevel: 'Bevel',
  heightIn: 'Height',
  tipLengthIn: 'Length at the tip',
  sweepIn: 'Sweep of the front edge',
  handleH: 'Handle after',
  shootH: 'Shoot after',
  fullH: 'Full strength after',
  atC: 'At temperature',
  leastC: 'Not below',
  mostC: 'Never above',
  vanesJointGr: 'Glue left by one fletch',
  postJointGr: 'Glue left by one post',
  collarJointGr: 'Glue left by one collar',
}

/** @throws for a field without words: a new field is not shown before it has a name */
export function partFieldWord(field: string): string {
  const name = NAMES[field]
  if (name === undefined) throw new Error(`no words for the field ${field}`)
  return name
}

export const PRICE_LABEL = 'Price, each'
