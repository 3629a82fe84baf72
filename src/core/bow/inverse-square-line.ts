import { leastSquares } from '../numeric/least-squares'
import { type Speed, grains } from '../quantity'
import type { ChronographReading } from './reading'

/** Weights nearer than this are one weight: two arrows of a set differ as much. */
const ONE_WEIGHT = grains(1)

/**
 * The straight line 1/v² = a + b·m through readings, in SI numbers. Plain least squares: every reading counts alike. The
 * errors are carried through it as they are: an error σ of speed is 2σ/v³ of 1/v², so a slow reading errs more.
 */
export interface InverseSquareLine {
  readonly intercept: number // s²/m²
  readonly slope: number // s²/(m²·kg)
  /** What one standard error of each reading does to intercept and slope. */
  readonly shares: readonly { readonly intercept: number; readonly slope: number }[]
  readonly slopeSd: number
  /** The residuals' size over what the chronograph's error explains; at least 1, and 1 for two readings. */
  readonly scatter: number
}

/** The line, or nothing when the readings are of one weight only. */
export function inverseSquareLine(
  readings: readonly ChronographReading[],
  speedSd: Speed,
): InverseSquareLine | undefined {
  const masses = readings.map(({ mass }) => mass)
  if (Math.max(...masses) - Math.min(...masses) < ONE_WEIGHT) return undefined
  const fit = leastSquares(
    masses.map((m) => [1, m]),
    readings.map(({ speed }) => speed ** -2),
  )
  const errors = readings.map(({ speed }) => (2 * speedSd) / speed ** 3)
  const freedom = readings.length - 2
  const chiSquare = fit.residuals.reduce((total, r, i) => total + (r / errors[i]!) ** 2, 0)
  const scatter = freedom > 0 ? Math.max(1, Math.sqrt(chiSquare / freedom)) : 1
  const [first, second] = fit.inverseNormal as [readonly [number, number], readonly [number, number]]
  const shares = masses.map((m, i) => ({
    intercept: scatter * errors[i]! * (first[0] + first[1] * m),
    slope: scatter * errors[i]! * (second[0] + second[1] * m),
  }))
  return {
    intercept: fit.coefficients[0]!,
    slope: fit.coefficients[1]!,
    shares,
    slopeSd: Math.hypot(...shares.map(({ slope }) => slope)),
    scatter,
  }
}

/** 1/v² of an arrow of this mass in kg, and its standard error. */
export const onLine = (line: InverseSquareLine, mass: number) => ({
  value: line.intercept + line.slope * mass,
  sd: Math.hypot(...line.shares.map((share) => share.intercept + share.slope * mass)),
})
