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

/** Where the name alone leaves a question. Weights of glue: common practice, no source [CP]. */
const HINTS: Readonly<Record<string, string>> = {
  staticSpineIn: '0.340, or 340 as it is quoted',
  maxDrawWeightLb: 'where the maker states one',
  maxFrontWeightGr: 'where the maker states one',
  standoutIn: 'bottom of the groove to the end of the shaft',
  leastBondMm: 'what stays glued in, however much is trimmed',
  bladeRearIn: 'from where the head sits to the rear of its blades',
  tipLengthIn: 'along the outer edge',
  sweepIn: 'how far back the front edge leans',
  vanesJointGr: 'under all vanes of one arrow, cured; commonly 1.2',
  postJointGr: 'cured; commonly 1.8',
  collarJointGr: 'cured; commonly 0.8',
}

export const partFieldHint = (field: string): string | undefined => HINTS[field]

/** @throws for a field without words: a new field is not shown before it has a name */
export function partFieldWord(field: string): string {
  const name = NAMES[field]
  if (name === undefined) throw new Error(`no words for the field ${field}`)
  return name
}

export const PRICE_LABEL = 'Price, each'
