/**
 * The search at 10⁴ to 10⁹ combinations, all constraints on. Counts are the same on every machine and are held closely;
 * time is processor time of one thread.
 */
import { findParts } from '@/domain/search/find-parts'
import { type Measure, overLimit } from './measure'
import { SPACES, searchSpace } from './search-spaces'

interface Limits {
  readonly visited: number
  readonly bounded: number
  readonly solved: number
  readonly seconds: number
}
/** About half as much again as was seen on the worst of three shelves. */
const LIMITS: Readonly<Record<string, Limits>> = {
  '10⁴': { visited: 1_000, bounded: 150, solved: 15, seconds: 0.2 },
  '10⁵': { visited: 2_000, bounded: 300, solved: 15, seconds: 0.2 },
  '10⁶': { visited: 7_000, bounded: 650, solved: 25, seconds: 0.3 },
  '10⁷': { visited: 35_000, bounded: 1_800, solved: 50, seconds: 0.6 },
  '2·10⁸': { visited: 280_000, bounded: 7_500, solved: 100, seconds: 1.5 },
  '10⁹': { visited: 1_100_000, bounded: 15_000, solved: 120, seconds: 4 },
}
const MEMORY_MB = 150
const SHELVES = [1, 2, 3]

export default Object.keys(SPACES).flatMap((name) =>
  SHELVES.map(
    (seed): Measure => ({
      name: `finding parts among ${name} combinations, shelf ${seed}`,
      take() {
        const problem = searchSpace(name, seed)
        const heldBefore = process.memoryUsage().heapUsed
        const began = process.cpuUsage()
        const { counts, found } = findParts(problem)
        const { user, system } = process.cpuUsage(began)
        const seconds = (user + system) / 1e6
        const megabytes = (process.memoryUsage().heapUsed - heldBefore) / 1e6 // garbage included
        const limits = LIMITS[name]!
        const { combinations, visited, bounded, solved } = counts
        return {
          said: `${combinations} combinations, ${found.length} found: ${visited} visited, ${bounded} columns bounded, ${solved} solved, ${(seconds * 1000).toFixed(0)} ms, ${megabytes.toFixed(0)} MB`,
          over: [
            ...overLimit('visited', visited, limits.visited),
            ...overLimit('columns bounded', bounded, limits.bounded),
            ...overLimit('columns solved', solved, limits.solved),
            ...overLimit('seconds', seconds, limits.seconds),
            ...overLimit('megabytes', megabytes, MEMORY_MB),
          ],
        }
      },
    }),
  ),
)
