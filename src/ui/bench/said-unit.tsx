/** The unit under a huge figure, in words: the one its number is shown in, which in metric view is another. */
import type { EntryUnit } from '../../domain/entry/unit-names'
import { useUnits } from '../app/units'
import { inSystem } from '../words/unit-systems'
import { saidUnit } from '../words/unit-words'

export const SaidUnit = ({ unit }: { unit: EntryUnit }) => saidUnit(inSystem(unit, 0, useUnits()).unit)
