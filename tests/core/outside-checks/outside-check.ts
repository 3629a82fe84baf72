import type { SourceKey } from '@/core/sources'

/** One number from outside the project, and the core's own. */
export interface OutsideCheck {
  readonly what: string
  /** As it was published or computed elsewhere, with all its digits: they set the tolerance. */
  readonly says: string
  readonly unit: string
  /** P published, C computed twice by independent methods, M from memory, CP common practice. */
  readonly status: 'P' | 'C' | 'M' | 'CP'
  readonly source: SourceKey
  /** Said beside the source where it is needed to find the number. */
  readonly where?: string
  readonly is: () => number
}

/** Half a unit of the last printed digit: `23.0` is good to 0.05, `8.78068e-4` to 5e-10. */
export function halfUnit(says: string): number {
  const [mantissa, exponent = '0'] = says.split('e')
  const decimals = mantissa!.split('.')[1]?.length ?? 0
  return 0.5 * 10 ** (Number(exponent) - decimals)
}

export const misses = ({ says, is }: OutsideCheck): number => Math.abs(is() - Number(says)) / halfUnit(says)

/** Rows that share their source. */
export const checks = (
  of: Pick<OutsideCheck, 'status' | 'source' | 'where'>,
  rows: readonly (readonly [what: string, says: string, unit: string, is: () => number])[],
): readonly OutsideCheck[] => rows.map(([what, says, unit, is]) => ({ ...of, what, says, unit, is }))
