/** A typed part against its own record and against itself: missing fields, and fields that contradict each other. */
import { part } from './part'
import type { Part, PartKind } from './part'
import { PART_FIELDS, partFromEntries } from './part-fields'
import type { PartEntries } from './part-fields'
import { weightBySize } from './weight-by-size'

export type PartProblem =
  | { readonly code: 'missing'; readonly field: string }
  | { readonly code: 'no-name'; readonly field: 'name' }
  | { readonly code: 'refused'; readonly field: string; readonly detail: string }
  /** The second must be less than the first. */
  | { readonly code: 'not-inside'; readonly field: string; readonly inner: number; readonly outer: number }
  | {
      readonly code: 'bond-longer-than-post'
      readonly field: 'leastBondMm'
      readonly bondMm: number
      readonly postMm: number
    }
  /** Outside what a body of this size and material can weigh. */
  | {
      readonly code: 'weight-off-size'
      readonly field: 'weightGr' | 'weightPerInchGr'
      readonly weightGr: number
      readonly leastGr: number
      readonly mostGr: number
    }
  /** A shaft's weight was given as well, and is not its weight per inch times its length. */
  | {
      readonly code: 'weight-off-length'
      readonly field: 'weightPerInchGr'
      readonly weightGr: number
      readonly perInchGr: number
      readonly lengthIn: number
    }
  | { readonly code: 'no-joint'; readonly field: 'vanesJointGr' }
  | { readonly code: 'times-reversed'; readonly field: 'shootH' }
  | { readonly code: 'temperatures-reversed'; readonly field: 'leastC' }

export type CheckedPart =
  | { readonly kind: 'ok'; readonly part: Part }
  | { readonly kind: 'problems'; readonly problems: readonly [PartProblem, ...PartProblem[]] }

const MM_PER_IN = 25.4 // exact [SP811]

export function checkPart(kind: PartKind, name: string, entries: PartEntries, before?: Part): CheckedPart {
  const missing = PART_FIELDS[kind]
    .filter((field) => entries[field.field] === undefined && !('optional' in field && field.optional))
    .map((field): PartProblem => ({ code: 'missing', field: field.field }))
  const problems: PartProblem[] = name.trim() === '' ? [{ code: 'no-name', field: 'name' }, ...missing] : missing
  const [first, ...rest] = problems
  if (first !== undefined) return { kind: 'problems', problems: [first, ...rest] }
  const read = part.safeParse(partFromEntries(kind, name.trim(), entries, before))
  if (!read.success) {
    const [issue] = read.error.issues
    const field = String(issue?.path.at(-1) ?? 'name')
    return { kind: 'problems', problems: [{ code: 'refused', field, detail: issue?.message ?? '' }] }
  }
  const [fault, ...others] = contradictions(read.data)
  return fault === undefined ? { kind: 'ok', part: read.data } : { kind: 'problems', problems: [fault, ...others] }
}

const inside = (field: string, inner: number, outer: number): readonly PartProblem[] =>
  inner < outer ? [] : [{ code: 'not-inside', field, inner, outer }]

/** Fields of one part that cannot both be right. */
export function contradictions(told: Part): readonly PartProblem[] {
  const between = betweenFields(told)
  // A weight is held against a size that is itself possible.
  return between.length === 0 ? offSize(told) : between
}

function offSize(told: Part): readonly PartProblem[] {
  const can = weightBySize(told)
  const { weightGr } = told
  if (can === undefined || (weightGr >= can.leastGr && weightGr <= can.mostGr)) return []
  return [{ code: 'weight-off-size', field: told.kind === 'shaft' ? 'weightPerInchGr' : 'weightGr', weightGr, ...can }]
}

const SAME_WEIGHT = 0.02 // of it: a weight per inch is rounded to a tenth

/** @param weightGr of the raw shaft, where a table gives it beside its weight per inch */
export function shaftWeightProblem(told: Part, weightGr: number): PartProblem | undefined {
  if (told.kind !== 'shaft' || Math.abs(weightGr / told.weightGr - 1) <= SAME_WEIGHT) return undefined
  const { weightPerInchGr: perInchGr, rawLengthIn: lengthIn } = told
  return { code: 'weight-off-length', field: 'weightPerInchGr', weightGr, perInchGr, lengthIn }
}

function betweenFields(told: Part): readonly PartProblem[] {
  switch (told.kind) {
    case 'shaft':
      return inside('innerDiameterMm', told.innerDiameterMm, told.outerDiameterMm)
    case 'insert':
    case 'half-out': {
      const postMm = told.postLengthIn * MM_PER_IN
      const bond: readonly PartProblem[] =
        told.leastBondMm > postMm
          ? [{ code: 'bond-longer-than-post', field: 'leastBondMm', bondMm: told.leastBondMm, postMm }]
          : []
      return [...inside('postBoreMm', told.postBoreMm, told.postDiameterMm), ...bond]
    }
    case 'outsert':
    case 'collar':
    case 'sleeve':
    case 'footing':
      return inside('innerDiameterMm', told.innerDiameterMm, told.outerDiameterMm)
    case 'broadhead':
      return inside('bladeRearIn', told.bladeRearIn, told.lengthIn)
    case 'glue': {
      const { vanes, post, collar } = told.joints
      return [
        ...((vanes ?? post ?? collar) ? [] : [{ code: 'no-joint', field: 'vanesJointGr' } as const]),
        ...(told.handleH <= told.shootH && told.shootH <= told.fullH
          ? []
          : [{ code: 'times-reversed', field: 'shootH' } as const]),
        ...(told.leastC < told.mostC ? [] : [{ code: 'temperatures-reversed', field: 'leastC' } as const]),
      ]
    }
    default:
      return []
  }
}
