/** A figure as a client or a guide reads it: what the core says to the shop of it becomes a few words, or stays in the shop. */
import type { Dimension } from '../../core/quantity'
import type { FigureProps } from '../figures/figure'
import { Figure } from '../figures/figure'

/** @param stretched said where a speed goes beyond the weights that were shot */
export function PlainFigure<D extends Dimension>({ of, stretched, ...shown }: FigureProps<D> & { stretched?: string }) {
  const isStretched = of?.findings.some(({ code }) => code === 'extrapolated') === true
  return (
    <Figure {...shown} of={of?.ok ? { ...of, findings: [] } : undefined} note={isStretched ? stretched : undefined} />
  )
}
