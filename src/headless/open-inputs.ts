/**
 * The small open format of `npm run compute`: an arrow on its axis and a bow, nothing else. Lengths inches from the nock
 * throat, weights grains; a part's weight is spread evenly from `fromIn` to `toIn`, the shaft's from `rearIn` to `lengthIn`.
 * The descriptions go into docs/inputs.schema.json and docs/compute.md.
 */
import * as z from 'zod/mini'

const positive = (says: string) => z.number().check(z.positive(), z.describe(says))
const amount = (says: string) => z.number().check(z.nonnegative(), z.describe(says))
const place = (says: string) => z.number().check(z.describe(says))

const chronograph = z
  .array(
    z.strictObject({
      arrowGr: positive('Weight of the arrow shot.'),
      speedFps: positive('Its speed at the bow, ft/s.'),
    }),
  )
  .check(z.maxLength(100), z.describe('Two or more weights are fitted; one is taken with the virtual mass.'))

const bow = z.strictObject({
  kind: z.optional(
    z
      .enum(['compound', 'recurve', 'longbow'])
      .check(z.describe('Sets the virtual mass that is assumed; compound where left out.')),
  ),
  peakDrawWeightLbf: z.optional(positive('Peak draw weight, lb; without it no grains per pound and no reserve.')),
  drawLengthIn: z.optional(positive('String to grip pivot at full draw, plus 1¾ in; needed with a rated speed.')),
  braceHeightIn: z.optional(positive('String to grip pivot at rest; 6.75 where left out.')),
  virtualMassGr: z.optional(
    amount(
      'Used with one chronograph reading, with a rated speed, or with none; with two readings or more it is fitted.',
    ),
  ),
  chronograph: z.optional(chronograph),
  ratedSpeedFps: z.optional(
    positive('Speed of a 350 gr arrow from 70 lb at 30 in, ft/s; used where no chronograph reading is.'),
  ),
})

const part = z.strictObject({
  name: z.string().check(z.maxLength(200), z.describe('What findings call it.')),
  weightGr: amount('Weight, spread evenly from fromIn to toIn.'),
  fromIn: place('Rear end.'),
  toIn: place('Front end, not behind fromIn; the same is a weight at a point.'),
  bonded: z.optional(
    z
      .strictObject({
        outerDiameterMm: positive('Outer diameter.'),
        innerDiameterMm: amount('Bore; 0 for a solid one.'),
        youngsModulusGPa: positive("Young's modulus."),
      })
      .check(z.describe('A tube bonded to the shaft over the part’s interval, which stiffens it there.')),
  ),
})

const flight = z.strictObject({
  airDensityKgM3: z.optional(positive('Air density; 1.225 where left out.')),
  dragCoefficient: z.optional(
    positive('On the shaft’s section; a band of 2.0 to 2.6 where left out, its middle given.'),
  ),
  diameterMm: positive('Outer diameter of the shaft.'),
  rangesYd: z.array(positive('A range, yd.')).check(z.maxLength(100), z.describe('In any order.')),
})

export const openInputs = z.strictObject({
  format: z.literal('grainwright.inputs/1'),
  bow: z.optional(bow),
  lengthIn: positive('Throat to shaft front.'),
  shaft: z.strictObject({
    weightGr: positive('Weight of the cut shaft.'),
    rearIn: place('Its rear end; its front end is at lengthIn.'),
    staticSpineIn: positive('Deflection under 1.94 lb on supports 28 in apart: 0.200, not 200.'),
  }),
  parts: z.array(part).check(z.maxLength(200), z.describe('They may overlap.')),
  glueGr: z.optional(amount('Weight of all glue.')),
  glueAtIn: z.optional(place('Where the glue sits; the shaft front where left out.')),
  targetGr: z.optional(positive('Finished weight aimed at.')),
  flight: z.optional(flight),
})
export type OpenInputs = z.infer<typeof openInputs>
