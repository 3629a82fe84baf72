/** The outlines of an arrow from where its parts were placed. Nothing is moved here: positions are the geometry's own. */
import type { Geometry, Placed } from '../../../domain/sheet/geometry'
import { partKindWord } from '../../words/part-kind-words'
import type { ElevationPiece, Outline } from './elevation-piece'

const MM_PER_IN = 25.4 // exact [SP811]
const TUBE: Outline = { shape: 'tube' }

/** @returns front first, as the drawing is read */
export function piecesOf(geometry: Geometry): readonly ElevationPiece[] {
  const shaft = geometry.placed.find(({ part }) => part.kind === 'shaft')?.part
  const shaftMm = shaft?.kind === 'shaft' ? shaft.outerDiameterMm : 0
  const boreMm = shaft?.kind === 'shaft' ? shaft.innerDiameterMm : 0
  return geometry.placed
    .flatMap((placed) => outlines(placed, geometry, shaftMm, boreMm))
    .filter(({ fromIn, toIn }) => toIn > fromIn)
    .toSorted((a, b) => b.toIn - a.toIn || b.fromIn - a.fromIn)
}

function outlines(placed: Placed, geometry: Geometry, shaftMm: number, boreMm: number): readonly ElevationPiece[] {
  const { part, line, fromIn, toIn, pieces } = placed
  const { shaftRearIn, shaftFrontIn } = geometry
  const piece = (outline: Outline, from: number, to: number, widthMm: number, hidden = false): ElevationPiece => ({
    id: line.id,
    label: partKindWord(part.kind),
    outline,
    fromIn: from,
    toIn: to,
    halfWidthMm: widthMm / 2,
    hidden,
  })
  switch (part.kind) {
    case 'shaft':
      return [piece({ shape: 'shaft' }, fromIn, toIn, part.outerDiameterMm)]
    case 'nock':
      return [piece({ shape: 'nock' }, fromIn, shaftRearIn, shaftMm), piece(TUBE, shaftRearIn, toIn, boreMm, true)]
    case 'bushing':
      return [piece(TUBE, fromIn, shaftRearIn, shaftMm), piece(TUBE, shaftRearIn, toIn, boreMm, true)]
    case 'insert':
      return [
        piece(TUBE, fromIn, shaftFrontIn, part.postDiameterMm, true),
        piece(TUBE, shaftFrontIn, toIn, part.shoulderDiameterMm),
      ]
    case 'half-out':
      return [
        piece(TUBE, fromIn, shaftFrontIn, part.postDiameterMm, true),
        piece(TUBE, shaftFrontIn, toIn, part.bodyDiameterMm),
      ]
    case 'outsert':
    case 'collar':
    case 'sleeve':
    case 'footing':
      return [piece(TUBE, fromIn, toIn, part.outerDiameterMm)]
    case 'rear weight':
      return [piece(TUBE, fromIn, toIn, part.diameterMm, true)]
    case 'adapter':
      return [piece(TUBE, fromIn, toIn, shaftMm)]
    case 'broadhead':
      return [
        piece(
          { shape: 'broadhead', bladeRearIn: fromIn + part.bladeRearIn, ferruleMm: shaftMm / 2 },
          fromIn,
          toIn,
          part.cuttingWidthIn * MM_PER_IN,
        ),
      ]
    case 'field point':
      return [piece({ shape: 'field point' }, fromIn, toIn, part.diameterMm)]
    case 'vane':
    case 'feather': {
      const fin = {
        shape: 'fin',
        rootMm: shaftMm / 2,
        heightMm: part.heightIn * MM_PER_IN,
        tipLengthIn: part.tipLengthIn,
        sweepIn: part.sweepIn,
        pieces,
      } as const
      return [piece(fin, fromIn, toIn, shaftMm + 2 * fin.heightMm)]
    }
    case 'wrap':
      return [piece({ shape: 'film' }, fromIn, toIn, shaftMm)]
    case 'glue':
      return []
  }
}
