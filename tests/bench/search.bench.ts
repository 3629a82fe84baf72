import { findParts } from '@/domain/search/find-parts'
import type { Race } from './race'
import { searchSpace } from './search-spaces'
import { stagedLoops } from './staged-loops'

const million = searchSpace('10⁶')

export default [
  {
    name: 'finding parts among 10⁶ combinations, against staged nested loops with the cheap checks first',
    subject: () => findParts(million),
    reference: () => stagedLoops(million, false),
    atMost: 1 / 20,
  },
  {
    name: 'the same, against loops that also leave out the columns of what could not come among the best',
    subject: () => findParts(million),
    reference: () => stagedLoops(million, true),
    atMost: 1 / 2,
  },
] satisfies readonly Race[]
