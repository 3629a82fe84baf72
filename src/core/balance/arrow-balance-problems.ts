import type { Arrow } from '../arrow/arrow'
import type { Finding } from '../finding'
import { outside } from '../refusal'
import { BALANCE_BOUNDS } from './balance-bounds'

/** What keeps an arrow from having a balance point: nothing, or each thing that is wrong with it. */
export const arrowBalanceProblems = ({ length, shaft, pieces }: Arrow): readonly Finding[] => [
  ...outside('arrow length', length, BALANCE_BOUNDS.length, 'in'),
  ...outside('shaft rear', shaft.rear, BALANCE_BOUNDS.place, 'in'),
  ...outside('shaft weight', shaft.mass, BALANCE_BOUNDS.partWeight, 'gr'),
  ...(shaft.rear > length ? [{ code: 'shaft-has-no-length', rear: shaft.rear, front: length } as const] : []),
  ...pieces.flatMap(({ name, mass, from, to }): readonly Finding[] => [
    ...outside(`weight of ${name}`, mass, BALANCE_BOUNDS.partWeight, 'gr'),
    ...outside(`rear end of ${name}`, from, BALANCE_BOUNDS.place, 'in'),
    ...outside(`front end of ${name}`, to, BALANCE_BOUNDS.place, 'in'),
    ...(from > to ? [{ code: 'part-runs-backwards', part: name, from, to } as const] : []),
  ]),
]
