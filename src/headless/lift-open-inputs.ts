/** The open inputs as the core takes them. */
import type { ArrowInputs } from '../core/arrow/arrow-figures'
import type { Piece } from '../core/arrow/arrow'
import { feetPerSecond, gigapascals, grains, inches, millimetres, poundsForce } from '../core/quantity'
import type { FlexuralRigidity } from '../core/quantity'
import type { OpenInputs } from './open-inputs'

export function liftOpenInputs(told: OpenInputs, rigidity: FlexuralRigidity): ArrowInputs {
  const { bow = {}, shaft } = told
  const pieces = told.parts.map(
    ({ name, weightGr, fromIn, toIn, bonded }): Piece => ({
      name,
      mass: grains(weightGr),
      from: inches(fromIn),
      to: inches(toIn),
      ...(bonded === undefined
        ? {}
        : {
            bonded: {
              outerDiameter: millimetres(bonded.outerDiameterMm),
              innerDiameter: millimetres(bonded.innerDiameterMm),
              youngsModulus: gigapascals(bonded.youngsModulusGPa),
            },
          }),
    }),
  )
  const glueAt = inches(told.glueAtIn ?? told.lengthIn)
  if (told.glueGr !== undefined) pieces.push({ name: 'glue', mass: grains(told.glueGr), from: glueAt, to: glueAt })
  return {
    arrow: {
      length: inches(told.lengthIn),
      shaft: { mass: grains(shaft.weightGr), rear: inches(shaft.rearIn), rigidity },
      pieces,
    },
    bow: {
      kind: bow.kind ?? 'compound',
      chronograph: (bow.chronograph ?? []).map(({ arrowGr, speedFps }) => ({
        mass: grains(arrowGr),
        speed: feetPerSecond(speedFps),
      })),
      ...(bow.peakDrawWeightLbf === undefined ? {} : { peakDrawWeight: poundsForce(bow.peakDrawWeightLbf) }),
      ...(bow.drawLengthIn === undefined ? {} : { drawLength: inches(bow.drawLengthIn) }),
      ...(bow.braceHeightIn === undefined ? {} : { braceHeight: inches(bow.braceHeightIn) }),
      ...(bow.virtualMassGr === undefined ? {} : { virtualMass: { value: grains(bow.virtualMassGr) } }),
      ...(bow.ratedSpeedFps === undefined ? {} : { ratedSpeed: feetPerSecond(bow.ratedSpeedFps) }),
    },
  }
}
