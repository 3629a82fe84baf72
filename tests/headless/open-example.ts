/** The example of docs/compute.md. */
export const OPEN_EXAMPLE = {
  format: 'grainwright.inputs/1',
  bow: {
    peakDrawWeightLbf: 72,
    drawLengthIn: 28.5,
    braceHeightIn: 6.75,
    virtualMassGr: 60,
    chronograph: [
      { arrowGr: 452, speedFps: 268 },
      { arrowGr: 601, speedFps: 236.5 },
    ],
  },
  lengthIn: 28.05,
  shaft: { weightGr: 341, rearIn: 0.55, staticSpineIn: 0.2 },
  parts: [
    { name: 'nock', weightGr: 11, fromIn: 0, toIn: 0.55 },
    {
      name: 'post',
      weightGr: 152,
      fromIn: 26.45,
      toIn: 28.05,
      bonded: { outerDiameterMm: 5.2, innerDiameterMm: 0, youngsModulusGPa: 193 },
    },
    { name: 'head', weightGr: 250, fromIn: 28.05, toIn: 30.2 },
  ],
  glueGr: 2.2,
  glueAtIn: 27.5,
  targetGr: 825,
  flight: { airDensityKgM3: 1.225, dragCoefficient: 2, diameterMm: 7.2, rangesYd: [20, 40, 60] },
}
