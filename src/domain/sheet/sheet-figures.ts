/**
 * Every figure of a sheet, from the sheet alone: what the arrow is expected to weigh, what must come off, and the finished
 * arrow's balance, speed, energy and stiffness as it will be once it is trimmed to its number.
 */
import type { ArrowFigures } from '../../core/arrow/arrow-figures'
import { arrowFigures } from '../../core/arrow/arrow-figures'
import type { Estimate, Outcome } from '../../core/outcome'
import { bounds } from '../../core/outcome'
import type { Mass, Ratio } from '../../core/quantity'
import { difference, grains, greatest, inches, inMillimetres, millimetres, ratio } from '../../core/quantity'
import { neededTrim } from '../../core/trim/needed-trim'
import type { TrimPlan } from '../../core/trim/plan-trim'
import { planTrim } from '../../core/trim/plan-trim'
import type { Post } from '../../core/trim/post'
import { postAvailable } from '../../core/trim/post-available'
import type { AllReach } from '../../core/weight/chance-all-reach'
import { chanceAllReach } from '../../core/weight/chance-all-reach'
import { chanceToReach } from '../../core/weight/chance-to-reach'
import type { Forecast } from '../../core/weight/forecast-weight'
import { forecastWeight } from '../../core/weight/forecast-weight'
import type { Landing } from '../../core/weight/landing'
import type { CallBow } from '../call/call-bow'
import { callBow } from '../call/call-bow'
import type { Origins } from '../call/follows'
import { tracedOutcome } from '../call/follows'
import type { Id } from '../records/scalars'
import { bowAnswers } from './bow-answers'
import type { Geometry } from './geometry'
import { geometryOf } from './geometry'
import type { LiftedArrow } from './lift-arrow'
import { liftArrow } from './lift-arrow'
import type { PlanItem } from './plan-items'
import { planItems } from './plan-items'
import { postOf } from './post-of'
import type { Sheet } from './sheet'
import { isHead } from '../stock/part-places'
import { isWholeArrow } from './whole-arrow'

export interface SheetFigures {
  /** With the post as it will be once trimmed. */
  readonly geometry: Geometry
  readonly items: readonly PlanItem[]
  /** Before anything is trimmed. */
  readonly forecast: Outcome<Forecast>
  readonly trim: Outcome<Estimate<Mass>> | undefined
  readonly trimPlan: Outcome<TrimPlan> | undefined
  readonly post: Post | undefined
  readonly landing: Landing | undefined
  readonly chance: Outcome<Ratio> | undefined
  readonly chanceAll: Outcome<AllReach> | undefined
  readonly expectedHead: Mass
  readonly lifted: Outcome<LiftedArrow>
  readonly bow: CallBow
  readonly figures: ArrowFigures | undefined
}

const partOfSheet = (sheet: Sheet) => {
  const parts = new Map(sheet.parts.map(({ id, part }) => [id, part]))
  return (id: Id) => parts.get(id)
}

export const reserveBandOf = (sheet: Sheet) => {
  const { min, max } = sheet.rules.reserve[sheet.bow.looseWith === 'fingers' ? 'fingers' : sheet.bow.kind]
  return bounds(ratio(min), ratio(max))
}

function trimOf(sheet: Sheet, items: readonly PlanItem[], forecast: Outcome<Forecast>) {
  const { targetGr } = sheet.plan
  if (targetGr === undefined || !forecast.ok) return undefined
  const front = items.filter(({ at }) => at.kind === 'glue' && at.joint.joint !== 'vanes').map(({ item }) => item)
  const dry = forecastWeight(items.map(({ item }) => item).filter((item) => !front.includes(item)))
  const glue = front.length === 0 ? undefined : forecastWeight(front)
  if (!dry.ok) return dry
  if (glue?.ok === false) return glue
  const none = { value: grains(0), sd: grains(0) }
  return neededTrim(dry.value.total, glue?.value.total ?? none, grains(targetGr))
}

/** @returns undefined while the plan has no shaft or no cut length */
export function sheetFigures(sheet: Sheet): SheetFigures | undefined {
  const partOf = partOfSheet(sheet)
  const whole = geometryOf(sheet.plan, partOf)
  if (whole === undefined) return undefined
  const { targetGr, quantity } = sheet.plan
  const items = planItems(sheet, whole)
  const forecast = forecastWeight(items.map(({ item }) => item))
  const post = postOf(whole)
  const trim = trimOf(sheet, items, forecast)
  const chamfer = millimetres(sheet.rules.chamferMm)
  const comesOff = trim?.ok ? greatest(grains(0), trim.value.value) : grains(0)
  const trimPlan = post === undefined || trim === undefined ? undefined : planTrim(comesOff, post, chamfer)
  const trimmedMm = trimPlan?.ok ? inMillimetres(trimPlan.value.length) : 0
  const edge = trimPlan?.ok && trimmedMm > 0 ? trimPlan.value.byChamfer : grains(0)
  const geometry = geometryOf(sheet.plan, partOf, trimmedMm) ?? whole
  const landing: Landing | undefined =
    targetGr === undefined
      ? undefined
      : {
          target: grains(targetGr),
          tolerance: grains(sheet.rules.toleranceGr),
          trimmable: post === undefined ? grains(0) : postAvailable(post).weight,
        }
  const one = forecast.ok && landing !== undefined ? { forecast: forecast.value, landing } : undefined
  const lifted = liftArrow(geometry, items, edge)
  const bow = callBow(bowAnswers(sheet.bow))
  const isWhole = isWholeArrow(items.map(({ part }) => part.kind))
  return {
    geometry,
    items,
    forecast,
    trim,
    trimPlan,
    post,
    landing,
    chance: one && chanceToReach(one.forecast, one.landing),
    chanceAll: one && chanceAllReach(Array.from({ length: quantity }, () => one)),
    expectedHead: headOf(items),
    lifted,
    bow,
    figures: lifted.ok ? traced(figuresOf(sheet, geometry, lifted.value, bow, isWhole), bow.origins) : undefined,
  }
}

const headOf = (items: readonly PlanItem[]): Mass =>
  items
    .filter(({ part }) => isHead(part.kind))
    .reduce((total, { item }) => difference(total, difference(grains(0), item.mean)), grains(0))

function figuresOf(
  sheet: Sheet,
  geometry: Geometry,
  { arrow, spread }: LiftedArrow,
  bow: CallBow,
  isWhole: boolean,
): ArrowFigures {
  // Without a draw weight, and with no reading of the bow, an assumed rating would say nothing of this bow.
  const { ratedSpeed, ...rest } = bow.known
  const known = bow.peak === undefined ? rest : { ...rest, ratedSpeed }
  const figures = arrowFigures({
    arrow,
    focLength: inches(geometry.focLengthIn),
    bow: known as CallBow['known'],
    spread,
    reserveBand: reserveBandOf(sheet),
  })
  const { grainsPerPound: gpp } = figures
  // A shaft by itself is no arrow too light for its bow.
  return isWhole || gpp?.ok !== true ? figures : { ...figures, grainsPerPound: { ...gpp, findings: [] } }
}

/** The figures with the true origin of the bow's numbers written on their inputs. */
function traced(figures: ArrowFigures, origins: Origins): ArrowFigures {
  const told = <T>(outcome: Outcome<T> | undefined) => outcome && tracedOutcome(outcome, origins)
  return {
    ...figures,
    grainsPerPound: told(figures.grainsPerPound),
    bowEnergy: told(figures.bowEnergy),
    virtualMass: told(figures.virtualMass),
    speed: told(figures.speed),
    kineticEnergy: told(figures.kineticEnergy),
    momentum: told(figures.momentum),
    columnReserve: told(figures.columnReserve),
  }
}
