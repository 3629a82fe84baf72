/** What may go into a test kit: every shaft on the shelf at the length of the set, and what was proposed at another. */
import type { Job } from '../job/job'
import type { Id } from '../records/scalars'
import type { KitSample } from '../search/test-kit'
import { lotsOfPart } from '../stock/lots-of-part'
import { partsOfKind } from '../stock/shelf'
import type { Shelf } from '../stock/shelf'
import { reserveWith } from './kit'

export interface KitChoice {
  readonly key: string
  readonly part: Id
  readonly lot: Id | null
  readonly name: string
  /** Undefined while the sheet has no length. */
  readonly c2cIn: number | undefined
  readonly reserve: ReturnType<typeof reserveWith>
}

export const kitKey = ({ part, c2cIn }: Pick<KitSample, 'part'> & { readonly c2cIn: number | undefined }): string =>
  `${part} ${c2cIn ?? ''}`

export function kitChoices(job: Job, shelf: Shelf, proposed: readonly KitSample[]): readonly KitChoice[] {
  const { c2cIn } = job.plan
  const shafts = partsOfKind(shelf, 'shaft').filter(({ body }) => !body.discontinued)
  return shafts.flatMap(({ id, body: { name } }) => {
    const own = proposed.filter(({ part, c2cIn: cut }) => part === id && cut !== c2cIn)
    const here = proposed.find(({ part, c2cIn: cut }) => part === id && cut === c2cIn)
    const lot = here?.lot ?? lotsOfPart(shelf, id).at(-1)?.id ?? null
    return [{ part: id, lot, c2cIn }, ...own].map(
      (each): KitChoice => ({
        key: kitKey(each),
        part: id,
        lot: each.lot,
        name,
        c2cIn: each.c2cIn,
        reserve: each.c2cIn === undefined ? undefined : reserveWith(job, shelf, { ...each, c2cIn: each.c2cIn }),
      }),
    )
  })
}
