/**
 * The shelf of the demo shop, all of it invented: no such makers, no such parts. Weights scatter by the trade's usual
 * figures (common practice, no source).
 */
import type { Part, PartKind, PartOf } from '../domain/stock/part'

const each = (name: string, weightGr: number, toleranceGr: number, priceCents: number) => ({
  name,
  weightGr,
  toleranceGr,
  priceCents,
  discontinued: false,
  alternates: [],
})

type Own<K extends PartKind> = Omit<PartOf<K>, 'kind' | keyof ReturnType<typeof each>>
const made = <K extends PartKind>(kind: K, base: ReturnType<typeof each>, own: Own<K>) =>
  ({ kind, ...base, ...own }) as unknown as PartOf<K>

const heron = (spine: number, gpi: number, draw: number, front: number) =>
  made('shaft', each(`Heron ${spine}`, gpi * 32, 5, 2400), {
    weightPerInchGr: gpi,
    staticSpineIn: spine / 1000,
    outerDiameterMm: 7.2,
    innerDiameterMm: 5.28,
    rawLengthIn: 32,
    straightnessIn: 0.001,
    maxDrawWeightLb: draw,
    maxFrontWeightGr: front,
  })
const plover = (spine: number, gpi: number) =>
  made('shaft', each(`Plover ${spine}`, gpi * 31.5, 5, 1500), {
    weightPerInchGr: gpi,
    staticSpineIn: spine / 1000,
    outerDiameterMm: 7.7,
    innerDiameterMm: 6.22,
    rawLengthIn: 31.5,
    straightnessIn: 0.003,
  })

const insert = (name: string, gr: number, cents: number, own: Partial<Own<'insert'>>) =>
  made('insert', each(name, gr, 0.8, cents), {
    material: 'stainless 303/304',
    postDiameterMm: 5.2,
    postBoreMm: 0,
    postLengthIn: 2.165,
    leastBondMm: 25,
    trimmable: true,
    thread: '8-32',
    shoulderIn: 0.06,
    shoulderDiameterMm: 7.2,
    ...own,
  })
const ring = (name: string, gr: number, lengthIn: number, outerDiameterMm: number, innerDiameterMm = 7.22) =>
  made('collar', each(name, gr, 0.4, 700), {
    material: 'stainless 303/304',
    lengthIn,
    outerDiameterMm,
    innerDiameterMm,
    setbackIn: 0,
  })
const broadhead = (name: string, gr: number, cents: number, own: Partial<Own<'broadhead'>>) =>
  made('broadhead', each(name, gr, 2, cents), {
    lengthIn: 2.15,
    bladeRearIn: 0.35,
    blades: 2,
    cuttingWidthIn: 1.125,
    bevel: 'right',
    thread: '8-32',
    ...own,
  })
const fieldPoint = (gr: number) =>
  made('field point', each(`Field point ${gr}`, gr, 1.4, 250), { lengthIn: 1.1, diameterMm: 8.7, thread: '8-32' })

export const DEMO_PARTS: readonly Part[] = [
  heron(150, 13.3, 100, 700),
  heron(175, 12.6, 95, 650),
  heron(200, 11.8, 90, 600),
  heron(230, 11.1, 85, 500),
  heron(260, 10.4, 80, 450),
  heron(300, 9.8, 75, 400),
  plover(250, 10.2),
  plover(300, 9.4),
  plover(340, 8.9),
  plover(400, 8.2),
  insert('Long post 158', 158, 1900, {}),
  insert('Long post 125', 125, 1700, { postLengthIn: 1.7 }),
  insert('Long post 210', 210, 2300, { postLengthIn: 2.95 }),
  insert('Brass post 150', 150, 2100, { material: 'brass C36000', postLengthIn: 1.95 }),
  insert('Light insert 45', 45, 600, { material: 'aluminium 7075', postLengthIn: 1.5, trimmable: false }),
  insert('Wide post 140', 140, 1800, { postDiameterMm: 6.14, postLengthIn: 1.35, shoulderDiameterMm: 7.7 }),
  made('half-out', each('Half-out 110', 110, 0.8, 1600), {
    material: 'stainless 303/304',
    postDiameterMm: 5.2,
    postBoreMm: 0,
    postLengthIn: 1.3,
    leastBondMm: 25,
    trimmable: true,
    thread: '8-32',
    aheadIn: 0.45,
    bodyDiameterMm: 7.4,
  }),
  made('outsert', each('Outsert 75', 75, 0.6, 1500), {
    material: 'aluminium 7075',
    overIn: 0.75,
    aheadIn: 0.6,
    outerDiameterMm: 9.2,
    innerDiameterMm: 7.22,
    thread: '8-32',
  }),
  ring('Ring 42', 42, 0.8, 9.1),
  ring('Ring 28', 28, 0.6, 8.8),
  ring('Ring 15', 15, 0.4, 8.5),
  ring('Wide ring 30', 30, 0.6, 9.3, 7.72),
  made('footing', each('Footing 24', 24, 0.4, 800), {
    material: 'aluminium 7075',
    lengthIn: 1.5,
    outerDiameterMm: 8.2,
    innerDiameterMm: 7.22,
    setbackIn: 0,
  }),
  made('rear weight', each('Rear weight 20', 20, 0.3, 400), {
    material: 'brass C36000',
    lengthIn: 0.28,
    diameterMm: 5,
  }),
  made('rear weight', each('Rear weight 50', 50, 0.4, 500), { material: 'brass C36000', lengthIn: 0.7, diameterMm: 5 }),
  broadhead('Two-blade 250', 250, 4800, {}),
  broadhead('Two-blade 300', 300, 5200, { lengthIn: 2.4, cuttingWidthIn: 1.25 }),
  broadhead('Two-blade 200', 200, 4500, { lengthIn: 1.95, bevel: 'double' }),
  broadhead('Left-bevel 250', 250, 4800, { bevel: 'left' }),
  broadhead('Three-blade 225', 225, 4300, { blades: 3, bevel: 'double', lengthIn: 1.9 }),
  fieldPoint(200),
  fieldPoint(225),
  fieldPoint(250),
  fieldPoint(300),
  made('nock', each('Clip 11', 11, 0.2, 180), { fit: 'press', standoutIn: 0.55, plugIn: 0.4 }),
  made('nock', each('Pin nock 8', 8, 0.2, 220), { fit: 'pin', standoutIn: 0.6, plugIn: 0.2 }),
  made('nock', each('Lighted nock 24', 24, 0.8, 1400), { fit: 'lighted', standoutIn: 0.6, plugIn: 0.9 }),
  made('bushing', each('Bushing 12', 12, 0.2, 300), { flangeIn: 0.05, insideIn: 0.5 }),
  made('vane', each('Broad vane 2.6', 7.2, 0.2, 90), { lengthIn: 2.6, heightIn: 0.55, tipLengthIn: 0.9, sweepIn: 1.4 }),
  made('vane', each('Low vane 3', 6.4, 0.2, 90), { lengthIn: 3, heightIn: 0.4, tipLengthIn: 1.2, sweepIn: 1.5 }),
  made('feather', each('Feather 4', 2.9, 0.5, 150), { lengthIn: 4, heightIn: 0.52, tipLengthIn: 0.6, sweepIn: 3 }),
  made('wrap', each('Film wrap 4', 8, 0.4, 200), { lengthIn: 4 }),
  made('glue', each('Vane glue', 0, 0, 900), {
    joints: { vanes: { gr: 1.2, sdGr: 0.25 } },
    handleH: 0.05,
    shootH: 24,
    fullH: 24,
    atC: 22,
    leastC: 13,
    mostC: 45,
  }),
  made('glue', each('Slow epoxy', 0, 0, 1800), {
    joints: { post: { gr: 1.8, sdGr: 0.4 }, collar: { gr: 0.8, sdGr: 0.25 } },
    handleH: 12,
    shootH: 24,
    fullH: 168,
    atC: 22,
    leastC: 13,
    mostC: 45,
  }),
]
