/** Values for the pattern page: made up, so that every state of a figure can be looked at. */
import { known } from '@/core/outcome'
import type { Derivation, Estimate } from '@/core/outcome'
import { feetPerSecond, grains } from '@/core/quantity'
import type { Mass } from '@/core/quantity'
import type { ElevationPiece } from '@/ui/figures/elevation/elevation-piece'

export const WORKING: Derivation = {
  equation: 'v = √(2E / (m + mᵥ))',
  inputs: [
    { name: 'stored energy', value: 75.02, unit: 'ft·lbf', origin: 'computed' },
    { name: 'virtual mass', value: 110, unit: 'gr', origin: 'assumed' },
    { name: 'arrow mass', value: 825, unit: 'gr', origin: 'lot history', ref: 'lot T-31' },
  ],
  result: [{ name: 'speed', value: 204.8, unit: 'ft/s', origin: 'computed' }],
  source: ['CP'],
  note: 'Stretched beyond the arrows measured.',
  steps: [
    {
      equation: '1/v² = m/(2E) + mᵥ/(2E)',
      inputs: [
        { name: 'reading 1', value: 268, unit: 'ft/s', origin: 'read' },
        { name: 'reading 2', value: 236.5, unit: 'ft/s', origin: 'read' },
      ],
      result: [{ name: 'stored energy', value: 75.02, unit: 'ft·lbf', origin: 'computed' }],
      source: ['OWN'],
    },
  ],
}

export const speed = known(
  { value: feetPerSecond(204.8), sd: feetPerSecond(1.05), low: feetPerSecond(202.7), high: feetPerSecond(206.9) },
  WORKING,
)
export const weights = known({ min: grains(780), max: grains(900) }, WORKING)

export const around = (value: number, half: number): Estimate<Mass> => ({
  value: grains(value),
  sd: grains(half / 2),
  low: grains(value - half),
  high: grains(value + half),
})

const tube = { shape: 'tube' } as const
const piece = (
  id: string,
  label: string,
  outline: ElevationPiece['outline'],
  fromIn: number,
  toIn: number,
  widthMm: number,
  hidden = false,
): ElevationPiece => ({ id, label, outline, fromIn, toIn, halfWidthMm: widthMm / 2, hidden })

export const PIECES: readonly ElevationPiece[] = [
  piece('head', 'Head', { shape: 'broadhead', bladeRearIn: 28.95, ferruleMm: 3 }, 28.55, 30.8, 30),
  piece('collar', 'Collar', tube, 27.9, 28.55, 8.4),
  piece('insert', 'Insert', tube, 26.6, 28.55, 4.2, true),
  piece('shaft', 'Shaft', { shape: 'shaft' }, 0.55, 28.55, 6.2),
  piece('wrap', 'Wrap', { shape: 'film' }, 0.55, 4.4, 6.3),
  piece(
    'vanes',
    'Vanes',
    { shape: 'fin', rootMm: 3.1, heightMm: 12.4, tipLengthIn: 0.7, sweepIn: 1.9, pieces: 4 },
    1.4,
    4.1,
    31,
  ),
  piece('nock', 'Nock', { shape: 'nock' }, 0, 0.55, 6.2),
  piece('nock', 'Nock', tube, 0.55, 1.1, 4.2, true),
]

export const CLEARANCE_AT = { restAtIn: 27.25, riserFrontAtIn: 28.15, riserBelowIn: 0.85 }
