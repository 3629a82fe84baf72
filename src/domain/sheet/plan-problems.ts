/** Looks a plan through before it is frozen, for what is missing from it or impossible in it. */
import type { Length } from '../../core/quantity'
import { grainsPerPound } from '../../core/energy/grains-per-pound'
import { difference, grains, inches, inGrains, inInches, inMillimetres, inUnit, poundsForce } from '../../core/quantity'
import { USUAL_CLAMP_IN } from '../shop/rules'
import type { Part, PartKind, PartOf } from '../stock/part'
import { isFront, isHead } from '../stock/part-places'
import type { CutFigures } from './cut-figures'
import type { Placed } from './geometry'
import type { PlanProblem } from './plan-problem'
import type { SheetFigures } from './sheet-figures'
import type { Sheet } from './sheet'
import { isWholeArrow } from './whole-arrow'

const MM_HAIR = 1e-6
const IN_HAIR = 1e-6
const LEAST_BOND_MM = 25 // of steel in the shaft, common practice, no source [CP]
const LEAST_CHANCE = 0.9 // below this the plan should be made heavier, common practice, no source [CP]

export function planProblems(
  sheet: Sheet,
  worked: SheetFigures | undefined,
  cut: CutFigures | undefined,
): readonly PlanProblem[] {
  const parts = sheet.plan.lines.flatMap((line) =>
    sheet.parts.filter(({ id }) => id === line.part).map(({ part }) => part),
  )
  return [
    ...missing(sheet, parts),
    ...construction(sheet, parts),
    ...(worked === undefined
      ? []
      : [...overlaps(worked.geometry.placed), ...bonds(worked.geometry.placed), ...landing(sheet, worked)]),
    ...limits(sheet, parts, worked),
    ...(worked === undefined || cut === undefined ? [] : cutting(sheet, cut)),
  ]
}

const of = <K extends PartKind>(parts: readonly Part[], ...kinds: readonly K[]) =>
  parts.filter((part): part is PartOf<K> => (kinds as readonly string[]).includes(part.kind))

function missing(sheet: Sheet, parts: readonly Part[]): readonly PlanProblem[] {
  const needs: readonly (readonly [Extract<PlanProblem, { code: 'missing' }>['what'], boolean, 'stop' | 'look'])[] = [
    ['target', sheet.plan.targetGr !== undefined, 'stop'],
    ['C2C', sheet.plan.c2cIn !== undefined, 'stop'],
    ['shaft', of(parts, 'shaft').length > 0, 'stop'],
    ['nock', of(parts, 'nock').length > 0, 'stop'],
    ['front end', parts.some(({ kind }) => isFront(kind)), 'stop'],
    ['head', parts.some(({ kind }) => isHead(kind)), 'stop'],
    ['vanes', of(parts, 'vane', 'feather').length > 0, 'look'],
    ['glue', of(parts, 'glue').length > 0, 'look'],
  ]
  const singles: readonly PartKind[] = ['shaft', 'nock', 'insert', 'half-out', 'outsert']
  return [
    ...needs.filter(([, there]) => !there).map(([what, , level]): PlanProblem => ({ level, code: 'missing', what })),
    ...singles
      .filter((kind) => of(parts, kind).length > 1)
      .map((kind): PlanProblem => ({ level: 'stop', code: 'two-of', kind })),
  ]
}

function construction(sheet: Sheet, parts: readonly Part[]): readonly PlanProblem[] {
  const problems: PlanProblem[] = []
  const [shaft] = of(parts, 'shaft')
  const posts = of(parts, 'insert', 'half-out')
  if (shaft !== undefined) {
    for (const post of posts) {
      if (post.postDiameterMm > shaft.innerDiameterMm + MM_HAIR) {
        const sizes = { postMm: post.postDiameterMm, boreMm: shaft.innerDiameterMm }
        problems.push({ level: 'stop', code: 'post-wider-than-bore', part: post.name, ...sizes })
      }
    }
    for (const ring of of(parts, 'collar', 'sleeve', 'footing', 'outsert')) {
      if (ring.innerDiameterMm < shaft.outerDiameterMm - MM_HAIR) {
        const sizes = { innerMm: ring.innerDiameterMm, shaftMm: shaft.outerDiameterMm }
        problems.push({ level: 'stop', code: 'ring-tighter-than-shaft', part: ring.name, ...sizes })
      }
    }
    const { c2cIn } = sheet.plan
    if (c2cIn !== undefined && c2cIn > shaft.rawLengthIn + IN_HAIR) {
      problems.push({ level: 'stop', code: 'cut-longer-than-raw', c2cIn, rawIn: shaft.rawLengthIn })
    }
  }
  const [bushing] = of(parts, 'bushing')
  for (const nock of of(parts, 'nock')) {
    if (nock.fit === 'pin' && bushing === undefined)
      problems.push({ level: 'stop', code: 'pin-without-bushing', nock: nock.name })
    if (nock.fit !== 'pin' && bushing !== undefined)
      problems.push({ level: 'stop', code: 'bushing-without-pin', nock: nock.name, bushing: bushing.name })
  }
  const clampIn = sheet.rules.clampIn ?? USUAL_CLAMP_IN
  const reachIn = sheet.plan.vaneTailIn + Math.max(0, ...of(parts, 'vane', 'feather').map(({ lengthIn }) => lengthIn))
  if (of(parts, 'vane', 'feather').length > 0 && reachIn > clampIn + IN_HAIR)
    problems.push({ level: 'stop', code: 'vanes-beyond-clamp', reachIn, clampIn })
  const seats = of(parts, 'adapter', 'insert', 'half-out', 'outsert')
  const seat = seats.find((part) => part.kind === 'adapter') ?? seats[0]
  for (const head of of(parts, 'broadhead', 'field point')) {
    if (seat !== undefined && seat.thread !== head.thread) {
      const threads = { headThread: head.thread, seatThread: seat.thread }
      problems.push({ level: 'stop', code: 'thread-differs', head: head.name, ...threads })
    }
    if (head.kind !== 'broadhead') continue
    const { bevel } = head
    const { fletchSide: side } = sheet.plan
    if ((bevel === 'right' || bevel === 'left') && side !== 'straight' && side !== bevel) {
      problems.push({ level: 'stop', code: 'bevel-against-fletch', bevel, side })
    }
  }
  return problems
}

/** Two parts in the same place on the same side of the shaft wall. */
function overlaps(placed: readonly Placed[]): readonly PlanProblem[] {
  const inside: ReadonlySet<PartKind> = new Set(['insert', 'half-out', 'rear weight', 'bushing'])
  const around: ReadonlySet<PartKind> = new Set(['collar', 'sleeve', 'footing', 'outsert', 'vane', 'feather'])
  const clash = (kinds: ReadonlySet<PartKind>) => {
    const those = placed.filter(({ part }) => kinds.has(part.kind)).map(shaftSide)
    return those.flatMap((a, i) =>
      those.slice(i + 1).flatMap((b): readonly PlanProblem[] => {
        const byIn = Math.min(a.toIn, b.toIn) - Math.max(a.fromIn, b.fromIn)
        return byIn <= IN_HAIR || a.line.id === b.line.id
          ? []
          : [{ level: 'stop', code: 'parts-overlap', part: a.part.name, other: b.part.name, byIn }]
      }),
    )
  }
  return [...clash(inside), ...clash(around)]
}

/** What is left in the shaft of a post once it is trimmed: below its own least it stops, below what is customary it is said. */
const bonds = (placed: readonly Placed[]): readonly PlanProblem[] =>
  placed.flatMap(({ part, bond }): readonly PlanProblem[] => {
    if (bond === null || (part.kind !== 'insert' && part.kind !== 'half-out')) return []
    const bondMm = inMillimetres(inches(bond.toIn - bond.fromIn))
    const leastMm = Math.max(part.leastBondMm, LEAST_BOND_MM)
    if (bondMm >= leastMm - MM_HAIR) return []
    const level = bondMm < part.leastBondMm - MM_HAIR ? 'stop' : 'look'
    return [{ level, code: 'bond-too-short', part: part.name, bondMm, leastMm }]
  })

/** Only the stretch along the shaft counts: what stands ahead of it is another part's business. */
const shaftSide = (placed: Placed): Placed => (placed.bond === null ? placed : { ...placed, toIn: placed.bond.toIn })

function landing(
  sheet: Sheet,
  { trim, trimPlan, post, chance, landing: wanted }: SheetFigures,
): readonly PlanProblem[] {
  if (trim === undefined || wanted === undefined) return []
  // A light arrow has its trim in the finding; the value is negative then.
  const overGr = trim.ok ? inGrains(trim.value.value) : 0
  const { toleranceGr } = sheet.rules
  const problems: PlanProblem[] = []
  if (chance?.ok && (overGr < -toleranceGr || (chance.value < LEAST_CHANCE && overGr < toleranceGr * 4))) {
    problems.push({
      level: overGr < -toleranceGr ? 'stop' : 'look',
      code: 'below-target',
      byGr: -overGr,
      chance: chance.value,
    })
  }
  if (post === undefined && overGr > toleranceGr) problems.push({ level: 'stop', code: 'nothing-to-trim', overGr })
  if (trimPlan?.ok === false && overGr > toleranceGr) {
    problems.push({
      level: 'stop',
      code: 'trim-beyond-post',
      wantedGr: overGr,
      availableGr: inGrains(wanted.trimmable),
    })
  }
  return problems
}

function limits(sheet: Sheet, parts: readonly Part[], worked: SheetFigures | undefined): readonly PlanProblem[] {
  const problems: PlanProblem[] = []
  const { targetGr } = sheet.plan
  const { peakDrawWeightLb: drawLb } = sheet.bow
  // Of the target, not of what the parts weigh today: it is the target that the arrow is trimmed to. Without one only an arrow
  // that is all there is judged: a shaft by itself will be heavier.
  const isWhole = isWholeArrow(parts.map(({ kind }) => kind))
  const ofParts = isWhole ? worked?.figures?.grainsPerPound : undefined
  const gpp =
    targetGr === undefined || drawLb === undefined ? ofParts : grainsPerPound(grains(targetGr), poundsForce(drawLb))
  if (gpp?.ok) {
    const per = inUnit(gpp.value, 'gr/lb')
    const least = sheet.rules.leastGrainsPerLb
    if (per < least) problems.push({ level: 'stop', code: 'under-gpp', gpp: per, least })
  }
  const [shaft] = of(parts, 'shaft')
  if (shaft?.maxDrawWeightLb !== undefined && drawLb !== undefined && drawLb > shaft.maxDrawWeightLb) {
    problems.push({ level: 'stop', code: 'maker-draw-limit', drawLb, limitLb: shaft.maxDrawWeightLb })
  }
  if (shaft?.maxFrontWeightGr !== undefined && worked !== undefined) {
    const frontGr = worked.items
      .filter(({ at }) => at.kind === 'part' && at.placed.toIn >= worked.geometry.shaftFrontIn - IN_HAIR)
      .filter(({ part }) => part.kind !== 'shaft')
      .reduce((total, { item }) => total + inGrains(item.mean), 0)
    if (frontGr > shaft.maxFrontWeightGr) {
      problems.push({ level: 'stop', code: 'maker-front-limit', frontGr, limitGr: shaft.maxFrontWeightGr })
    }
  }
  const rearIn = worked?.geometry.shaftRearIn
  const tailIn = sheet.plan.vaneTailIn
  if (rearIn !== undefined && of(parts, 'vane', 'feather').length > 0 && tailIn < rearIn) {
    problems.push({ level: 'stop', code: 'vane-behind-shaft', tailIn, rearIn })
  }
  return problems
}

function cutting(sheet: Sheet, { fullDraw, shortest, stiff, rear }: CutFigures): readonly PlanProblem[] {
  const c2c = (length: Length) => inInches(difference(length, rear))
  if (shortest?.ok !== true) return []
  const shortestIn = c2c(shortest.value.length)
  if (stiff?.ok && shortest.value.length > stiff.value.longest) {
    return [{ level: 'look', code: 'no-length-fits', shortestIn, longestIn: c2c(stiff.value.longest) }]
  }
  const { c2cIn } = sheet.plan
  const isEstimated = fullDraw.ok && fullDraw.value.rest.how === 'estimated'
  return c2cIn !== undefined && c2cIn < shortestIn - IN_HAIR
    ? [{ level: isEstimated ? 'look' : 'stop', code: 'cut-too-short', c2cIn, shortestIn, isEstimated }]
    : []
}
