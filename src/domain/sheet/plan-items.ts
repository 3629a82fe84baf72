/**
 * What each line of a sheet is expected to weigh on one arrow, with its spread, and known from what: the catalogue until
 * the shop has weighed some of the lot, then ever more the lot itself.
 */
import type { Finding } from '../../core/finding'
import type { Derivation } from '../../core/outcome'
import { grains, scaled } from '../../core/quantity'
import type { ForecastItem } from '../../core/weight/forecast-item'
import { expectedItem } from '../../core/weight/forecast-item'
import { predictedPart } from '../../core/weight/predicted-part'
import type { LotReading, PredictedPart } from '../../core/weight/predicted-part'
import { TYPICAL_GLUE, USUAL_OWN_SHARE } from '../../core/weight/typical-spread'
import type { Id } from '../records/scalars'
import type { CatalogueFigures } from '../stock/catalogue-weight'
import { catalogueWeight, UNIFORM } from '../stock/catalogue-weight'
import type { Part } from '../stock/part'
import type { Geometry, Joint, Placed } from './geometry'
import type { PlanLine } from './plan'
import type { Learned, Sheet } from './sheet'

/** One line of the weight: where it sits, what it is expected to weigh, and the working of that. */
export interface PlanItem {
  readonly key: string
  readonly line: PlanLine
  readonly part: Part
  readonly at: { readonly kind: 'part'; readonly placed: Placed } | { readonly kind: 'glue'; readonly joint: Joint }
  readonly item: ForecastItem
  readonly findings: readonly Finding[]
  readonly derivation: Derivation | null
}

const weighingsOf = (learned: readonly Learned[], subject: Id | null, what: Learned['what'], share = 1): LotReading[] =>
  learned
    .filter((each) => each.subject === subject && each.what === what)
    .flatMap((each) => each.weighings.map(({ gr, pieces }) => ({ mass: grains(gr * share), pieces })))

/** The numbered piece that a line chose, when its lot numbers them and its weight is therefore known. */
const numbered = (sheet: Sheet, line: PlanLine) =>
  line.no === undefined
    ? undefined
    : sheet.lots.find((each) => each.id === line.lot)?.lot.numbered.find((piece) => piece.no === line.no)

const lotCode = (sheet: Sheet, id: Id | null) => sheet.lots.find((each) => each.id === id)?.lot.code

const SCALE_OWN = grains(0.07) // one reading of a 0.1 gr scale, common practice, no source [CP]

/** @returns one item for each placed part (a fletch of four is one) and each glue joint */
export function planItems(sheet: Sheet, geometry: Geometry): readonly PlanItem[] {
  const c2cIn = geometry.shaftFrontIn - geometry.shaftRearIn
  const parts = geometry.placed.map((placed, i): PlanItem => {
    const { line, part, pieces } = placed
    const key = `${line.id}:${i}`
    const ref = lotCode(sheet, line.lot)
    const base = { key, line, part, at: { kind: 'part', placed } as const }
    const piece = numbered(sheet, line)
    if (piece !== undefined) {
      const item: ForecastItem = {
        name: part.name,
        kind: 'read',
        mean: grains(piece.weightGr),
        ownSd: SCALE_OWN,
        sharedSd: grains(0),
        origin: 'read',
        ref: `no. ${piece.no}`,
      }
      return { ...base, item, findings: [], derivation: null }
    }
    const share = part.kind === 'shaft' ? c2cIn / part.rawLengthIn : 1
    const predicted = predictedPart(catalogueWeight(part, c2cIn), weighingsOf(sheet.learned, line.lot, 'weight', share))
    return { ...base, ...told(part.name, line.lot ?? line.part, predicted, pieces, ref) }
  })
  const joints = geometry.joints.map((joint, i): PlanItem => {
    const { line, glue, joint: kind } = joint
    const own = glue.joints[kind]
    const typical = TYPICAL_GLUE[kind]
    const catalogue: CatalogueFigures = {
      nominal: own === undefined ? typical.nominal : grains(own.gr),
      tolerance: scaled(own === undefined ? typical.sd : grains(own.sdGr), UNIFORM),
      ownShare: USUAL_OWN_SHARE,
    }
    const weighings = weighingsOf(sheet.learned, line.part, `${kind} joint`)
    const predicted = predictedPart(catalogue, weighings)
    return {
      key: `${line.id}:${kind}:${i}`,
      line,
      part: glue,
      at: { kind: 'glue', joint },
      ...told(`glue, ${kind}`, `${line.part}:${kind}`, predicted, 1, glue.name),
    }
  })
  return [...parts, ...joints]
}

/** The item of a prediction; where the core has no answer the part counts as nothing and its findings say why. */
function told(
  name: string,
  sharedKey: string,
  predicted: ReturnType<typeof predictedPart>,
  pieces: number,
  ref: string | undefined,
): Pick<PlanItem, 'item' | 'findings' | 'derivation'> {
  const nothing: PredictedPart = {
    estimate: { value: grains(0), sd: grains(0), low: grains(0), high: grains(0) },
    ownSd: grains(0),
    sharedSd: grains(0),
    pieces: 0,
  }
  const named = { name, sharedKey, ...(ref === undefined ? {} : { ref }) }
  return {
    item: expectedItem(named, predicted.ok ? predicted.value : nothing, pieces),
    findings: predicted.findings,
    derivation: predicted.ok ? predicted.derivation : null,
  }
}
