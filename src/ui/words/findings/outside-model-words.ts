import type { OutsideModel } from '../../../core/finding'
import type { Unit } from '../../../core/quantity'
import { UNITS } from '../../../core/quantity'
import { showSignificant } from '../format'
import { saidUnit } from '../unit-words'

/** An input beyond what a model was made for, or no number: which, what it is, what it may be. */
export function outsideModelWords({ input, at, bounds, unit }: OutsideModel): string {
  const said = (si: number) => showSignificant(si / UNITS[unit as Unit].si)
  const range = `${said(bounds.min)} to ${said(bounds.max)} ${saidUnit(unit)}`.trim()
  return `The ${input} is ${said(at)}; this can be worked out for ${range}. Change the ${input}.`
}
